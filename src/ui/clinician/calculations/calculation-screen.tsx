/** One calculation: what it takes, who says so and how that was seen, its example worked, and a form to try it. */
import { calculationById } from '#core/calculations/registry.ts';
import { say } from '#messages/en/staff/calculations.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { CalculationRow } from '../answers.ts';
import { CitationNote } from '../support-note.tsx';
import { InputTable } from './input-table.tsx';
import { ResultView } from './result-view.tsx';
import { TryForm } from './try-form.tsx';

/** What the example answers, worked out by the calculation itself. */
const Example = ({ row }: { readonly row: CalculationRow }) => {
  const outcome = calculationById(row.id)?.calculate(row.example);
  if (!outcome?.ok) return <p className="soft">{say('no-result')}</p>;
  return (
    <>
      <ResultView result={outcome.result} fields={row.result} />
      <ul className="notes">
        {outcome.notes.map((note) => (
          <li key={`${note.code} ${note.text}`}>{note.text}</li>
        ))}
      </ul>
    </>
  );
};

export const CalculationScreen = ({ row }: { readonly row: CalculationRow }) => (
  <div className="stack-wide">
    <PageHeading caption={<a href="/calculations">Calculations</a>}>{row.title}</PageHeading>
    <section className="stack-close">
      <h2>Source</h2>
      {row.citations.map((citation) => (
        <CitationNote key={`${citation.source} ${citation.locator} ${citation.mark}`} citation={citation} />
      ))}
    </section>
    <section className="stack-close">
      <InputTable fields={row.input} />
    </section>
    <div className="side-by-side">
      <section className="stack">
        <h2>{say('try-it')}</h2>
        <p className="soft">{say('example-filled-in')}</p>
        <TryForm row={row} />
      </section>
      <section className="stack-close">
        <h2>{say('the-example-gives')}</h2>
        <Example row={row} />
      </section>
    </div>
  </div>
);
