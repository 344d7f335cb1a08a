/** The phone's day as it was: what it said of danger, each exercise with what was left of it, and what had changed. */
import { say } from '#messages/en/staff/review/known-then.ts';
import type { KnownThen } from '../../answers.ts';
import { TodayTag } from '../../danger/plan-view.tsx';
import { doseInWords } from '../../dose-words.ts';

type Phone = KnownThen['phone'];
type Exercise = Pick<
  Phone['exercises'][number],
  'itemId' | 'title' | 'dose' | 'badDay' | 'cautions' | 'today'
> &
  Partial<Pick<Phone['exercises'][number], 'planned'>>;

const ExerciseLine = ({ exercise }: { readonly exercise: Exercise }) => {
  const { title, dose, badDay, cautions, today, planned } = exercise;
  return (
    <li>
      <TodayTag today={today} /> <strong>{title.en}</strong>:{' '}
      {doseInWords(today === 'bad-day' ? badDay : dose)}
      {planned === false ? <span className="soft">, {say('phone.not-planned')}</span> : null}.
      {cautions.length > 0 ? (
        <ul className="small">
          {cautions.map(({ id, text }) => (
            <li key={id}>{text.en}</li>
          ))}
        </ul>
      ) : null}
    </li>
  );
};

const Exercises = ({ exercises }: { readonly exercises: readonly Exercise[] }) => (
  <ul className="plain-list">
    {exercises.map((exercise) => (
      <ExerciseLine key={exercise.itemId} exercise={exercise} />
    ))}
  </ul>
);

const morningInWords = ({ due, answered }: Phone['morning']): string =>
  answered ? say('phone.morning.answered') : say(due ? 'phone.morning.due' : 'phone.morning.none');

export const OnThePhone = ({ phone }: { readonly phone: Phone }) => {
  const atClinic = phone.atClinic ?? [];
  const told = [
    ...phone.danger,
    ...phone.changes,
    ...(phone.changesWithoutWhy ?? []),
    ...(phone.unchanged ?? []),
  ];
  return (
    <section className="stack-close" aria-labelledby="then-phone">
      <h3 id="then-phone">{say('phone')}</h3>
      <p className="soft small">{say('phone.lead')}</p>
      {told.map(({ en }) => (
        <p key={en}>
          <q>{en}</q>
        </p>
      ))}
      {phone.exercises.length + atClinic.length === 0 ? <p>{say('phone.nothing')}</p> : null}
      <Exercises exercises={phone.exercises} />
      {atClinic.length > 0 ? (
        <>
          <h4>{say('phone.at-clinic')}</h4>
          <Exercises exercises={atClinic} />
        </>
      ) : null}
      <p>{morningInWords(phone.morning)}</p>
    </section>
  );
};
