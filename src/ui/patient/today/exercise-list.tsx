/** The exercises of today with their doses; how to do each one is a tap away. */
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { doseLines, doseTitle } from '#ui/language/dose-text.ts';
import { doableToday } from '../session/doable.ts';
import { t, translate } from '../words.ts';

const ExerciseEntry = ({ exercise }: { readonly exercise: TodayExercise }) => {
  const isResting = exercise.today === 'none' || exercise.today === 'rest-this-joint';
  const isEasierSession = exercise.today === 'bad-day';
  const dose = isEasierSession ? exercise.badDay : exercise.dose;
  return (
    <li className="exercise keep-together">
      <h2>{translate(exercise.title)}</h2>
      {isResting ? (
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
      <Disclosure summary={t('item.how')}>
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

type Cautions = readonly TodayExercise['cautions'][number][];

const CautionLines = ({ cautions }: { readonly cautions: Cautions }) => (
  <ul>
    {cautions.map(({ id, text }) => (
      <li key={id}>{translate(text)}</li>
    ))}
  </ul>
);

/** The cautions of today's exercises, each said once; a limit, which bounds today's dose, is never folded away. */
export const CautionList = ({ view }: { readonly view: TodayView }) => {
  const doable = doableToday(view);
  const all = [...new Map(doable.flatMap(({ cautions }) => cautions.map((one) => [one.id, one]))).values()];
  const limits = all.filter(({ isLimit }) => isLimit);
  const others = all.filter(({ isLimit }) => !isLimit);
  return (
    <>
      {limits.length > 0 ? <CautionLines cautions={limits} /> : null}
      {others.length > 0 ? (
        // Open while something is new; afterwards one press away, and in full on the plan.
        <Disclosure summary={t('today.cautions')} isOpen={doable.some((one) => one.isNewDose)}>
          <CautionLines cautions={others} />
        </Disclosure>
      ) : null}
    </>
  );
};
