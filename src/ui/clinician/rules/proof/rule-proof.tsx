/** One rule with all that is behind it, from the last run of its tests and generated cases, and what is not proven. */
import { say } from '#messages/en/staff/review/proof.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { RulesTable } from '../../answers.ts';
import { CitationNote } from '../../support-note.tsx';
import { Setting, whenInWords } from '../rules-screen.tsx';

type Rule = RulesTable['rules'][number];
type Run = RulesTable['proofRun'];

interface Props {
  readonly rule: Rule;
  readonly run: Run;
}

const RestsOn = ({ rule }: Pick<Props, 'rule'>) => (
  <section className="stack-close">
    <h2>{say('rests')}</h2>
    <p>{say(`rests.${rule.restsOnWhat}`)}</p>
    {rule.citations.map((citation) => (
      <div key={`${citation.source} ${citation.locator}`} className="stack-close">
        <CitationNote citation={citation} />
        <p>
          {say('studied', { studied: citation.studied })} {say(`number.${citation.number}`)}
        </p>
      </div>
    ))}
  </section>
);

const percent = (count: number, of: number): string => String(Math.round((1000 * count) / of) / 10);

const Unchanged = ({ rule: { proof }, run }: Props) => (
  <section className="stack-close">
    <h2>{say('unchanged')}</h2>
    <p className="soft">{say('unchanged.what', { people: run.people, looks: run.looks })}</p>
    <p>
      {say('unchanged.decided', {
        decided: proof.decidedUnchanged,
        looks: run.looks,
        share: percent(proof.decidedUnchanged, run.looks),
        fired: proof.firedUnchanged,
      })}
    </p>
    <p className="soft small">{say(proof.firedUnchanged > 0 ? 'unchanged.false' : 'unchanged.never')}</p>
  </section>
);

const Tests = ({ rule: { proof }, run }: Props) => (
  <section className="stack-close">
    <h2>{say('tests')}</h2>
    <p>{say('tests.own', { count: proof.tests, file: proof.file })}</p>
    <p>
      {say('tests.generated', { facts: run.facts, disagreements: run.disagreements, fired: proof.fired })}
    </p>
    <p className="soft small">
      {say('tests.run', { date: run.ranOn, seed: String(run.seed), version: run.version })}
    </p>
  </section>
);

export const RuleProofView = ({ rule, run }: Props) => (
  <div className="stack-wide">
    <div className="stack">
      <PageHeading caption={<a href="/rules">{say('back')}</a>}>
        {say('title', { id: rule.id })}: {rule.title}
      </PageHeading>
      <p className="lead">{whenInWords(rule)}</p>
    </div>
    <RestsOn rule={rule} />
    <section className="stack-close">
      <h2>{say('settings')}</h2>
      {rule.settings.length === 0 ? <p>{say('settings.none')}</p> : null}
      <ul className="plain-list">
        {rule.settings.map((setting) => (
          <Setting key={setting.id} setting={setting} />
        ))}
      </ul>
    </section>
    <Unchanged rule={rule} run={run} />
    <Tests rule={rule} run={run} />
    <section className="stack-close">
      <h2>{say('not-proven')}</h2>
      <ul>
        {rule.notProven.map((one) => (
          <li key={one}>{say(`np.${one}`)}</li>
        ))}
      </ul>
    </section>
  </div>
);
