/** What the series says beyond the picture: plain sentences with figures, each with its source and working. */
import type { Finding } from '#core/review/findings/finding.ts';
import { say } from '#messages/en/staff/review.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { CitationNote } from '../support-note.tsx';

const rowsOf = ({ workings }: Pick<Finding, 'workings'>) => [
  ...new Map(workings.map(({ calculation }) => [calculation.id, calculation])).values(),
];

/** The rows of the registry behind the sentences, with where their figures come from. */
export const Sources = ({ workings }: Pick<Finding, 'workings'>) => (
  <ul className="plain-list stack-close">
    {rowsOf({ workings }).map((row) => (
      <li key={row.id}>
        <a href={`/calculations/${row.id}`}>{row.title}</a>
        {row.citations.map((citation) => (
          <CitationNote key={`${citation.source} ${citation.locator}`} citation={citation} />
        ))}
      </li>
    ))}
  </ul>
);

const FindingView = ({ finding }: { readonly finding: Finding }) => (
  <Disclosure
    summary={
      <span>
        <strong>{finding.title}:</strong> {finding.sentences[0]}
      </span>
    }
  >
    <ul className="review-words">
      {finding.sentences.slice(1).map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
    {finding.workings.length > 0 ? (
      <Disclosure summary={say('calculation')} isScreenOnly>
        <Sources workings={finding.workings} />
      </Disclosure>
    ) : null}
  </Disclosure>
);

export const FindingsView = ({ findings }: { readonly findings: readonly Finding[] }) => (
  <section className="stack">
    <h2>Trends</h2>
    <p className="soft">{say('trends-note')}</p>
    <div className="folded">
      {findings.map((finding) => (
        <FindingView key={finding.id} finding={finding} />
      ))}
    </div>
  </section>
);
