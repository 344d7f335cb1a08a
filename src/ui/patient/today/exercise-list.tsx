/** The exercises of today with their doses; how to do each one is a tap away. */
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import { isRest } from '#core/decision/left-of-today.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { doseLines, doseTitle } from '#ui/language/dose-text.ts';
import { t, translate } from '../words.ts';

const ExerciseEntry = ({ exercise }: { readonly exercise: TodayExercise }) => {
  const isEasierSession = exercise.today === 'bad-day';
  const dose = isEasierSession ? exercise.badDay : exercise.dose;
  return (
    <li className="exercise keep-together">
      <h2>{translate(exercise.title)}</h2>
      {isRest(exercise.today) ? (
        <p>{t('today.rest-some')}</p>
      ) : (
        <>
          <p className="dose figure">{doseTitle(dose)}</p>
          <p className="dose-line">{doseLines(dose).join(' · ')}</p>
        </>
      )}
      {exercise.weekdays === null ? (
        <p className="dose-line">{t('dose.weekly', { count: dose.sessionsPerWeek })}</p>
      ) : null}
      {isEasierSession ? <p className="soft">{t('today.easier-set')}</p> : null}
      <Disclosure summary={t('dose.how')}>
        <ol>
          {exercise.instructions.map(translate).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ol>
        {exercise.signedName ? (
          <p className="soft">{t('dose.signed', { name: exercise.signedName })}</p>
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
    <Disclosure summary={t('today.list-title')}>
      <ul className="exercises">
        {planned.map((exercise) => (
          <ExerciseEntry key={exercise.itemId} exercise={exercise} />
        ))}
      </ul>
      {elsewhere.length > 0 ? (
        <p className="soft">
          {t('today.elsewhere', { titles: elsewhere.map((one) => translate(one.title)).join('; ') })}
        </p>
      ) : null}
    </Disclosure>
  );
};
