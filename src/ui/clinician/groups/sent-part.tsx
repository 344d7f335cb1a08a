'use client';
/** A session that is saved: what was entered, by whom, and the dose that follows by what the engine says. */
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import { Button } from '#ui/design-system/button.tsx';
import { wholeDayText } from '../../language/text-of-time.ts';
import type { GroupPerson } from '../answers.ts';
import { doseTitle } from '../dose-words.ts';
import type { ClinicClock } from '../when.ts';
import { momentInWords } from '../when.ts';
import { decisionStatus } from '../words.ts';
import { SignAdvice } from './danger-part.tsx';

type Session = NonNullable<GroupPerson['session']>;

const setText = ({ repetitions, reserve }: Session['entry']['sets'][number]): string =>
  `${repetitions ?? '–'}${reserve === null ? '' : ` (+${reserve})`}`;

type Done = Pick<Session, 'entry' | 'exercises'>;

/** Each exercise that was done, with its sets. */
const doneLines = ({ entry: { sets }, exercises }: Done) =>
  exercises.map(({ prescriptionId, dose }) => ({
    prescriptionId,
    text: say('sent.sets', {
      exercise: doseTitle(dose),
      sets: sets
        .filter((set) => set.prescriptionId === prescriptionId)
        .map(setText)
        .join(', '),
    }),
  }));

const DoneSets = ({ session }: { readonly session: Done }) =>
  session.entry.sets.length === 0 ? (
    <p className="small">{say('sent.no-sets')}</p>
  ) : (
    <ul className="small">
      {doneLines(session).map(({ prescriptionId, text }) => (
        <li key={prescriptionId}>{text}</li>
      ))}
    </ul>
  );

interface MovedProps {
  readonly sessions: GroupPerson['earlierSessions'];
  readonly patientId: string;
}

/** What was entered on a day from which the hour was moved. */
export const MovedSessions = ({ sessions, patientId }: MovedProps) =>
  sessions.map((session) => (
    <p key={session.day} className="small">
      {say('moved', {
        on: wholeDayText(session.day),
        sets:
          session.entry.sets.length === 0
            ? say('sent.no-sets')
            : doneLines(session)
                .map(({ text }) => `${text}.`)
                .join(' '),
      })}{' '}
      <a href={`/patients/${patientId}`}>{say('to-record')}</a>
    </p>
  ));

/** What follows for an exercise that was done: never more than the engine has said by now. */
const nextText = (exercise: GroupPerson['today']['exercises'][number], { next }: Session): string => {
  const title = doseTitle(exercise.dose);
  const made = next.find(({ itemId }) => itemId === exercise.itemId);
  if (!made) return say('next.waits', { exercise: title, dose: doseInShort(exercise.dose) });
  const decision = decisionStatus[made.decision].word.toLowerCase();
  const dose = doseInShort(made.dose);
  const key = made.isWaiting ? 'next.sign' : made.effect === 'acts-at-once' ? 'next.acts' : 'next.same';
  return say(key, { exercise: title, decision, dose });
};

const NextDoses = ({ person, session }: { readonly person: GroupPerson; readonly session: Session }) => {
  const done = person.today.exercises.filter(({ itemId }) =>
    session.entry.sets.some((set) => set.itemId === itemId),
  );
  return done.length === 0 ? null : (
    <>
      <h3>{say('next.title')}</h3>
      <ul className="small">
        {done.map((exercise) => (
          <li key={exercise.itemId}>
            {nextText(exercise, session)}
            {session.next.some((one) => one.itemId === exercise.itemId && one.isWaiting) ? (
              <>
                {' '}
                <a href={`/patients/${person.patientId}/prescriptions`}>{say('next.to-sign')}</a>
              </>
            ) : null}
          </li>
        ))}
      </ul>
    </>
  );
};

/** Who stood beside it, and who only put it right. */
const enteredText = ({ by, correctedBy }: Session, at: string): string => {
  if (by === null) return say('sent.unnamed', { at });
  const names = correctedBy.join(', ');
  return names === '' ? say('sent', { at, name: by }) : say('sent.corrected', { at, name: by, names });
};

interface SentProps {
  readonly person: GroupPerson;
  readonly session: Session;
  readonly clock: ClinicClock;
  readonly onCorrect: () => void;
}

export const SentPart = ({ person, session, clock, onCorrect }: SentProps) => {
  const { redFlags } = session.entry;
  const at = momentInWords(session.arrivedAt, clock);
  const isStopped = (redFlags ?? []).length > 0;
  return (
    <div className="stack-close">
      <p className="small soft">{enteredText(session, at)}</p>
      <DoneSets session={session} />
      {isStopped ? (
        <>
          {person.today.stop === null ? <SignAdvice person={person} flags={redFlags ?? []} /> : null}
          <p>{say('signs.reported')}</p>
        </>
      ) : (
        <>
          <NextDoses person={person} session={session} />
          <Button tone="quiet" onClick={onCorrect}>
            {say('correct')}
          </Button>
        </>
      )}
    </div>
  );
};
