/** The record on one page: what needs attention, which decisions hold, what is prescribed, what is known. */

import { jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/record.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type {
  Decision,
  Patient,
  PatientDetails,
  Prescriptions,
  ReviewAnswer,
  WorklistItem,
} from '../answers.ts';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { agoInWords, type ClinicClock, momentInWords } from '../when.ts';
import { contactInWords, decisionStatus, itemStatusOf, methodInWords, todayInWords } from '../words.ts';
import { CareProfileForm } from './care-profile-form.tsx';
import { CareProfileList } from './care-profile-list.tsx';
import { PatientDetailsSection } from './patient-details-section.tsx';

export interface OverviewProps {
  readonly patient: Patient;
  readonly details: PatientDetails;
  readonly worklistItems: readonly WorklistItem[];
  /** The list goes on after what was read of it. */
  readonly isListCut: boolean;
  readonly review: ReviewAnswer;
  readonly prescriptions: Prescriptions;
  readonly clock: ClinicClock;
  readonly day: Day;
}

const NeedsAttention = ({
  worklistItems,
  clock,
  isListCut,
}: Pick<OverviewProps, 'worklistItems' | 'clock' | 'isListCut'>) =>
  worklistItems.length === 0 ? (
    <p className="soft">{isListCut ? say('not-among-first') : say('nothing-needed')}</p>
  ) : (
    <ul className="plain-list">
      {worklistItems.map((item) => {
        const { word, shape, tone } = itemStatusOf(item.kind);
        return (
          <li key={`${item.key} ${item.since}`} className="worklist-item">
            <StatusTag shape={shape} tone={tone}>
              {word}
            </StatusTag>{' '}
            {item.sentence} <span className="soft">{agoInWords(item.since, clock)}</span>
          </li>
        );
      })}
    </ul>
  );

/** The newest decision of each joint in the window, by joint. */
const inForce = (decisions: readonly Decision[]): readonly Decision[] => [
  ...new Map(decisions.map((row) => [row.joint, row])).values(),
];

const responseInWords = (response: ReviewAnswer['responses'][number] | undefined): string => {
  if (!response) return say('decision.unanswered');
  const { kind, decision, answeredName } = response;
  return kind === 'accept'
    ? say('decision.accepted', { name: answeredName })
    : say('decision.overridden', { word: decision ?? '', name: answeredName });
};

const DecisionsInForce = ({
  review,
  patient,
  clock,
}: Pick<OverviewProps, 'review' | 'patient' | 'clock'>) => {
  const rows = inForce(review.decisions);
  if (rows.length === 0) return <p className="soft">{say('no-decision')}</p>;
  return (
    <ul className="plain-list stack-close">
      {rows.map((row) => {
        const { word, shape, tone } = decisionStatus[row.decision];
        const answer = review.responses.find((one) => one.decisionId === row.id);
        return (
          <li key={row.id}>
            <StatusTag shape={shape} tone={tone}>
              {word}
            </StatusTag>{' '}
            <a href={`/patients/${patient.id}/review?joint=${row.joint}#decision-${row.id}`}>
              {jointInWords(row.joint)}
            </a>
            : {todayInWords[row.today]}, {contactInWords[row.contact]}.{' '}
            {momentInWords(row.evaluatedAt, clock)} · {responseInWords(answer)}
          </li>
        );
      })}
    </ul>
  );
};

const InForce = (props: OverviewProps) => (
  <>
    <DataTable
      caption={say('in-force.caption')}
      hidesCaption
      columns={[
        { key: 'exercise', title: 'Exercise' },
        { key: 'method', title: 'Method' },
        { key: 'dose', title: 'Dose' },
        { key: 'signed', title: 'Signed' },
      ]}
      rows={props.prescriptions.inForce.map((row) => ({
        key: row.id,
        cells: [
          doseTitle(row.dose),
          methodInWords[row.dose.method],
          doseInWords(row.dose),
          `${row.signedName}, ${row.signedAt === null ? '' : momentInWords(row.signedAt, props.clock)}`,
        ],
      }))}
      empty={say('in-force.none')}
    />
    {props.prescriptions.unsigned.length > 0 ? (
      <p>
        <a href={`/patients/${props.patient.id}/prescriptions#unsigned`}>
          {say('to-sign', { count: props.prescriptions.unsigned.length })}
        </a>
      </p>
    ) : null}
  </>
);

export const OverviewScreen = (props: OverviewProps) => (
  <div className="stack-wide">
    <section className="stack-close">
      <h2>{say('needs-attention')}</h2>
      <NeedsAttention {...props} />
    </section>
    <section className="stack-close">
      <h2>{say('decisions')}</h2>
      <DecisionsInForce {...props} />
    </section>
    <section className="stack-close">
      <h2>{say('in-force')}</h2>
      <InForce {...props} />
    </section>
    <PatientDetailsSection patientId={props.patient.id} details={props.details} clock={props.clock} />
    <section className="stack-close">
      <h2>{say('profile')}</h2>
      <CareProfileList {...props} />
      <Disclosure
        summary={props.patient.profile ? say('profile.change') : say('profile.enter')}
        isOpen={!props.patient.profile}
      >
        <CareProfileForm patient={props.patient} />
      </Disclosure>
    </section>
  </div>
);
