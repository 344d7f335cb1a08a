/** The exercises of today with their doses; how to do each one is a tap away. */
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import { Disclosure } from '#ui/shared/disclosure.tsx';
import { say, tell } from '#ui/words.ts';
import { doableToday } from '../session/begin.ts';
import { doseLines, doseTitle } from './dose-text.ts';

const ExerciseEntry = ({ exercise }: { readonly exercise: TodayExercise }) => {
  const isResting = exercise.today === 'none' || exercise.today === 'rest-this-joint';
  const isLighter = exercise.today === 'bad-day';
  const dose = isLighter ? exercise.badDay : exercise.dose;
  return (
    <li className="exercise keep-together">
      <h3>{tell(exercise.title)}</h3>
      {isResting ? (
        <p>{say('today.rest-some')}</p>
      ) : (
        <>
          <p className="dose figure">{doseTitle(dose)}</p>
          <p className="dose-line">{doseLines(dose).join(' · ')}</p>
        </>
      )}
      {exercise.weekdays === null ? (
        <p className="dose-line">{say('dose.weekly', { count: dose.sessionsPerWeek })}</p>
      ) : null}
      {isLighter ? <p className="soft">{say('today.lighter-set')}</p> : null}
      <Disclosure summary={say('line.how')}>
        <ol>
          {exercise.instructions.map((text) => (
            <li key={text}>{tell(text)}</li>
          ))}
        </ol>
        {exercise.signedName ? (
          <p className="soft">{say('today.approved', { name: exercise.signedName })}</p>
        ) : null}
      </Disclosure>
    </li>
  );
};

export const ExerciseList = ({ view }: { readonly view: TodayView }) => {
  const planned = view.exercises.filter((exercise) => exercise.planned);
  const elsewhere = view.exercises.filter((exercise) => !exercise.planned);
  if (planned.length === 0) return null;
  return (
    <section className="stack-close">
      <h2>{say('today.list-title')}</h2>
      <ul className="exercises">
        {planned.map((exercise) => (
          <ExerciseEntry key={exercise.itemId} exercise={exercise} />
        ))}
      </ul>
      {elsewhere.length > 0 ? (
        <p className="soft">
          {say('today.elsewhere', { titles: elsewhere.map((one) => tell(one.title)).join('; ') })}
        </p>
      ) : null}
    </section>
  );
};

/** The cautions of today's exercises, each said once. */
export const CautionList = ({ view }: { readonly view: TodayView }) => {
  const doable = new Map(
    doableToday(view).flatMap((exercise) => exercise.cautions.map(({ id, text }) => [id, text] as const)),
  );
  if (doable.size === 0) return null;
  return (
    <section className="stack-close">
      <h2>{say('today.cautions')}</h2>
      <ul>
        {[...doable].map(([id, text]) => (
          <li key={id}>{tell(text)}</li>
        ))}
      </ul>
    </section>
  );
};
