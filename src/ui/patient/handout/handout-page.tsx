'use client';
/** The whole plan on one page, to read through or to print: every exercise in force, cautions, whom to call. */
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import { Button } from '#ui/design-system/button.tsx';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import './words.ts';
import { doseLines, doseTitle, loadText } from '#ui/language/dose-text.ts';
import { RingText } from '#ui/language/ring-text.tsx';
import { dayText, weekdayText } from '#ui/language/text-of-time.ts';
import { t, translate } from '#ui/language/words.ts';
import { Drawn, Steps } from '../figures/how-to.tsx';
import { flagOptions, hasCuffIn } from '../questions/flag-list.ts';

/** "On Monday, Wednesday, Friday." */
const daysText = ({ weekdays }: Pick<TodayExercise, 'weekdays'>): string =>
  weekdays === null
    ? t('handout.every-day')
    : weekdays.length === 0
      ? t('handout.no-days')
      : t('handout.days', { days: weekdays.map(weekdayText).join(', ') });

const isResting = ({ today }: TodayExercise): boolean => today === 'none' || today === 'rest-this-joint';

const Exercise = ({ exercise }: { readonly exercise: TodayExercise }) => (
  <li className="exercise keep-together stack-close">
    <h2>{translate(exercise.title)}</h2>
    {isResting(exercise) ? (
      <p>{t('handout.resting')}</p>
    ) : (
      <>
        <p className="dose figure">{doseTitle(exercise.dose)}</p>
        <p className="dose-line">{doseLines(exercise.dose).join(' · ')}</p>
        <p>{daysText(exercise)}</p>
        <p>{t('handout.easier', { dose: `${doseTitle(exercise.badDay)}, ${loadText(exercise.badDay)}` })}</p>
      </>
    )}
    <Drawn dose={exercise.dose} />
    <Steps instructions={exercise.instructions} />
    {exercise.signedName ? <p className="soft">{t('dose.signed', { name: exercise.signedName })}</p> : null}
  </li>
);

const Cautions = ({ exercises }: Pick<TodayView, 'exercises'>) => {
  const texts = [
    ...new Set(exercises.flatMap((one) => one.cautions.map((caution) => translate(caution.text)))),
  ];
  return texts.length === 0 ? null : (
    <section className="stack-close keep-together">
      <h2>{t('handout.keep')}</h2>
      <ul>
        {texts.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  );
};

const Signs = ({ clinic, exercises }: Pick<TodayView, 'clinic' | 'exercises'>) => (
  <section className="stack-close keep-together">
    <h2>{t('handout.stop')}</h2>
    <p>
      <RingText
        text={t('handout.stop-call', {
          emergency: clinic.emergencyNumber,
          clinic: clinic.name,
          phone: clinic.phone,
        })}
        clinic={clinic}
      />
    </p>
    <ul>
      {flagOptions(hasCuffIn(exercises)).map(({ value, label }) => (
        <li key={value}>{label}</li>
      ))}
    </ul>
  </section>
);

export const HandoutPage = ({ view }: { readonly view: TodayView }) => (
  <div className="stack-wide">
    <PageHeading caption={t('handout.for', { name: view.givenName, date: dayText(view.day) })}>
      {t('handout.title')}
    </PageHeading>
    <p className="screen-only">
      <Button tone="plain" onClick={() => window.print()}>
        {t('handout.print')}
      </Button>
    </p>
    {view.exercises.length === 0 ? (
      <Notice title={t('handout.none')} />
    ) : (
      <ul className="exercises">
        {view.exercises.map((exercise) => (
          <Exercise key={exercise.itemId} exercise={exercise} />
        ))}
      </ul>
    )}
    <Cautions exercises={view.exercises} />
    <Signs clinic={view.clinic} exercises={view.exercises} />
    <MonitoringHours clinic={view.clinic} />
  </div>
);
