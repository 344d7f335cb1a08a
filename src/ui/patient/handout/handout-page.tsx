'use client';
/** The whole plan on one page, to read through or to print: every exercise in force, cautions, whom to call. */
import type { NutritionView } from '#api/patient/nutrition.ts';
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import { isRest } from '#core/decision/left-of-today.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { doseDetails } from '#messages/papers/dose-details.ts';
import { LinkButton } from '#ui/design-system/button.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import './words.ts';
import { doseLines, doseTitle, loadText, speech } from '#ui/language/dose-text.ts';
import { RingText } from '#ui/language/ring-text.tsx';
import { dayText, weekdayText } from '#ui/language/text-of-time.ts';
import { listText, spokenLanguage, t, translate } from '#ui/language/words.ts';
import { AtClinic } from '../at-clinic.tsx';
import { Drawn, Steps } from '../figures/how-to.tsx';
import { KeepInMind, LimitLines } from '../keep-in-mind.tsx';
import { flagOptions, hasCuffIn } from '../questions/flag-list.ts';
import { PainLimits } from '../questions/pain-limit.tsx';

/** "On Monday, Wednesday and Friday." */
const daysText = ({ weekdays }: Pick<TodayExercise, 'weekdays'>): string =>
  weekdays === null
    ? t('handout.every-day')
    : weekdays.length === 0
      ? t('handout.no-days')
      : t('handout.days', { days: listText(weekdays.map(weekdayText)) });

const inShort = (dose: Dose): string => `${doseTitle(dose)}, ${loadText(dose)}`;

/** What is done now stands large; the other session of the two beside it. */
const Doses = ({ exercise }: { readonly exercise: TodayExercise }) => {
  const isEasierNow = exercise.today === 'bad-day';
  const [now, other] = isEasierNow ? [exercise.badDay, exercise.dose] : [exercise.dose, exercise.badDay];
  return (
    <>
      {isEasierNow ? <p>{t('handout.easier-now')}</p> : null}
      <p className="dose figure">{doseTitle(now)}</p>
      <p className="dose-line">{doseLines(now).join(' · ')}</p>
      <p>{doseDetails(now, speech).join(' ')}</p>
      <p>{daysText(exercise)}</p>
      <p>{t(isEasierNow ? 'handout.whole' : 'handout.easier', { dose: inShort(other) })}</p>
    </>
  );
};

/** On the phone a line tells how; on paper it stands in full. */
const Exercise = ({ exercise }: { readonly exercise: TodayExercise }) => (
  <li className="exercise keep-together stack-close">
    <h2>{translate(exercise.title)}</h2>
    {isRest(exercise.today) ? <p>{t('handout.resting')}</p> : <Doses exercise={exercise} />}
    <Disclosure summary={t('dose.how')}>
      <Drawn dose={exercise.dose} />
      <Steps instructions={exercise.instructions} />
    </Disclosure>
    {exercise.signedName ? <p className="soft">{t('dose.signed', { name: exercise.signedName })}</p> : null}
  </li>
);

const Signs = ({ clinic, exercises }: Pick<TodayView, 'clinic' | 'exercises'>) => (
  <section className="stack-close">
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
    <Disclosure summary={t('handout.signs')}>
      <ul>
        {flagOptions(hasCuffIn(exercises)).map(({ value, label }) => (
          <li key={value}>{label}</li>
        ))}
      </ul>
    </Disclosure>
  </section>
);

/** Of protein and energy only what a clinician has signed for this patient. */
const Nutrition = ({ nutrition }: { readonly nutrition: NutritionView }) =>
  nutrition === null ? null : (
    <section className="stack-close keep-together">
      <h2>{t('handout.protein')}</h2>
      <p>
        {t('handout.protein-figures', {
          low: nutrition.proteinLowG,
          high: nutrition.proteinHighG,
          meals: nutrition.meals,
        })}
      </p>
      {nutrition.surplusKcal ? <p>{t('handout.energy', { kcal: nutrition.surplusKcal })}</p> : null}
      {nutrition.words ? <p className="typed-text">{nutrition.words}</p> : null}
      <p className="soft">{t('handout.protein-about', { name: nutrition.byName })}</p>
    </section>
  );

/** The same as a file, laid out for paper with room to fill in; it is made at the clinic and needs signal. */
const Papers = () => {
  const address = `/papers/plan?language=${spokenLanguage().tag}`;
  return (
    <p className="screen-only row">
      <LinkButton tone="plain" href={address}>
        {t('handout.print')}
      </LinkButton>
      <LinkButton tone="plain" href={`${address}&large=1`}>
        {t('handout.print-large')}
      </LinkButton>
    </p>
  );
};

export const HandoutPage = ({
  view,
  nutrition,
}: {
  readonly view: TodayView;
  readonly nutrition: NutritionView;
}) => (
  <div className="stack">
    <PageHeading caption={t('handout.for', { name: view.givenName, date: dayText(view.day) })}>
      {t('handout.title')}
    </PageHeading>
    <Papers />
    {view.exercises.length === 0 && !view.atClinic ? (
      <Notice title={t('handout.none')} />
    ) : (
      <ul className="exercises">
        {view.exercises.map((exercise) => (
          <Exercise key={exercise.itemId} exercise={exercise} />
        ))}
      </ul>
    )}
    <AtClinic view={view} beside={view.exercises} resting={t('handout.resting')} />
    <PainLimits lookups={view.painLookups} />
    <LimitLines exercises={view.exercises} />
    <KeepInMind exercises={view.exercises} />
    <Nutrition nutrition={nutrition} />
    <Signs clinic={view.clinic} exercises={view.exercises} />
    <MonitoringHours clinic={view.clinic} isFolded />
  </div>
);
