/** The guide of an appointment by video or telephone, and what was found by it, joint by joint. */
import { jointInWords, listed } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/episode/distance.ts';
import { optionInWords } from '#ui/clinician/forms/field-words.ts';
import { type ClinicClock, momentInWords } from '#ui/clinician/when.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { DistanceAnswer } from '../episode/answers.ts';
import { listText } from '../forms/sent/sent-form.ts';
import { DistanceForm } from './distance-form.tsx';

type Now = NonNullable<DistanceAnswer['now']>;
type Found = DistanceAnswer['found'];

interface GuideProps {
  readonly patientId: string;
  readonly now: Now;
  readonly found: Found;
}

type Steps = Now['joints'][number]['steps'];

/** What is asked stands at the field that keeps the answer. */
const hintsOf = (steps: Steps) => Object.fromEntries(steps.map(({ part, ask }) => [`${part}By`, `${ask}.`]));

/** What a limit leaves out is said, and kept as not done. */
const LeftOut = ({ steps }: { readonly steps: Steps }) =>
  steps.map(({ part, locked }) =>
    locked === null ? null : (
      <p key={part}>
        <strong>{say(`by-${part}`)}</strong>: {say('locked', { reason: locked })}
      </p>
    ),
  );

const typedOf = (found: Found) =>
  Object.fromEntries(
    found.flatMap(({ part, by, found: text }) => [
      [`${part}By`, by],
      [`${part}Found`, text ?? ''],
    ]),
  );

const OneJoint = ({ patientId, now, found, at }: GuideProps & { readonly at: Now['joints'][number] }) => {
  const { joint, steps } = at;
  const kept = found.filter((one) => one.visitId === now.visitId && one.joint === joint);
  const locked = steps.filter((step) => step.locked !== null).map(({ part }) => part);
  const camera = steps[0]?.camera ?? null;
  return (
    <Disclosure
      summary={
        kept.length === 0 ? jointInWords(joint) : say('joint-kept', { 'joint-name': jointInWords(joint) })
      }
      isOpen={kept.length === 0}
    >
      {camera ? <p>{say('camera', { text: camera })}</p> : null}
      <LeftOut steps={steps} />
      <DistanceForm
        about={{ patientId, visitId: now.visitId, joint, place: now.place, locked: listText(locked) }}
        start={typedOf(kept)}
        hints={hintsOf(steps)}
        label={say('keep', { 'joint-name': jointInWords(joint) })}
      />
    </Disclosure>
  );
};

export const DistanceGuide = (props: GuideProps) => {
  const { patientId, now } = props;
  return (
    <section className="stack-close screen-only">
      <h2>{say('title')}</h2>
      <p>
        {say('signs-first')} <a href={`/patients/${patientId}/warning-signs`}>{say('signs-link')}</a>
      </p>
      {now.joints.length === 0 ? <p>{say('no-joint')}</p> : null}
      {now.joints.map((at) => (
        <OneJoint key={at.joint} {...props} at={at} />
      ))}
      <p className="soft">{say('missing', { list: listed(now.notAtADistance, 10) })}</p>
    </section>
  );
};

interface FoundProps {
  readonly found: Found;
  readonly clock: ClinicClock;
}

export const FoundAtADistance = ({ found, clock }: FoundProps) =>
  found.length === 0 ? null : (
    <DataTable
      caption={say('found')}
      columns={[
        { key: 'when', title: say('when') },
        { key: 'joint', title: say('joint-head') },
        { key: 'part', title: say('part') },
        { key: 'how', title: say('how') },
        { key: 'what', title: say('what') },
      ]}
      rows={found.toReversed().map((one) => ({
        key: `${one.visitId} ${one.joint} ${one.part}`,
        cells: [
          `${momentInWords(one.recordedAt, clock)}, ${one.byName}`,
          jointInWords(one.joint),
          say(`by-${one.part}`),
          optionInWords(one.by),
          [one.found ?? say('nothing'), ...one.before.map((text) => say('before', { text }))].join('; '),
        ],
      }))}
      empty={say('none-found')}
    />
  );
