/** The doses in force, each with the one that waits directly under it. */
import { setsInShort } from '#core/prescribing/dose-in-short.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/record/summary.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { Version } from '../answers.ts';
import { StandsNow } from '../danger/plan-view.tsx';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { dayAt } from '../when.ts';
import { methodInWords } from '../words.ts';
import { stepInWords } from '../worklist/dose-step.ts';
import type { SummaryProps } from './summary-props.ts';

const InForce = ({
  version,
  plan,
  clock,
  day,
}: Pick<SummaryProps, 'plan' | 'clock' | 'day'> & { readonly version: Version }) => (
  <li className="plan-line keep-together">
    <div>
      <p>
        <strong>{doseTitle(version.dose)}</strong>
      </p>
      <p className="soft">
        {methodInWords[version.dose.method]} · {doseInWords(version.dose)}
        {version.signedAt === null
          ? ''
          : ` · ${say('plan.signed', { date: dayInWords(dayAt(version.signedAt, clock.zone), day) })}`}
      </p>
      <StandsNow plan={plan} itemId={version.itemId} />
    </div>
    <p className="plan-dose">{setsInShort(version.dose)}</p>
  </li>
);

const Waiting = ({
  version,
  before,
  patientId,
}: {
  readonly version: Version;
  readonly before: Version | undefined;
  readonly patientId: string;
}) => (
  <li className="plan-line plan-waiting keep-together">
    <div>
      <p>
        <a href={`/patients/${patientId}/prescriptions`}>
          <StatusTag shape="pen" tone="accent">
            {say('plan.to-sign')}
          </StatusTag>
        </a>{' '}
        <span className="soft">{stepInWords(before?.dose ?? null, version.dose)}</span>
      </p>
    </div>
    <p className="plan-dose">{setsInShort(version.dose)}</p>
  </li>
);

export const PlanInForce = ({ patient, prescriptions, plan, clock, day }: SummaryProps) => {
  const { inForce, unsigned } = prescriptions;
  const waitingFor = (itemId: string) => unsigned.filter((version) => version.itemId === itemId);
  const isNew = (version: Version) => !inForce.some(({ itemId }) => itemId === version.itemId);
  const waiting = (version: Version) => (
    <Waiting
      key={version.id}
      version={version}
      before={inForce.find(({ itemId }) => itemId === version.itemId)}
      patientId={patient.id}
    />
  );
  return (
    <section className="stack-close">
      <div className="side-head">
        <h2>{say('plan')}</h2>
        <a href={`/patients/${patient.id}/prescriptions`}>Plan</a>
      </div>
      {inForce.length + unsigned.length === 0 ? <p className="soft">{say('plan.none')}</p> : null}
      <ul className="plain-list lined">
        {inForce.flatMap((version) => [
          <InForce key={version.id} {...{ version, plan, clock, day }} />,
          ...waitingFor(version.itemId).map(waiting),
        ])}
        {unsigned.filter(isNew).map(waiting)}
      </ul>
    </section>
  );
};
