/** Nutrition of one person: what closes it first, then the figures, then what the patient is shown. */
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/episode/nutrition.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import type { NutritionAnswer } from '../answers.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { AdviceForm, TakeBack } from './advice-form.tsx';
import { EnergyNeeded, LeanMass, Protein } from './figures.tsx';

interface NutritionProps {
  readonly patientId: string;
  readonly nutrition: NutritionAnswer;
  readonly signer: string;
  readonly clock: ClinicClock;
  readonly day: Day;
}

type Reason = Extract<Parameters<typeof say>[0], `reason.${string}`>;

const Record = ({ patientId, nutrition: { facts, measuredOn, picture }, day }: NutritionProps) => {
  const measured = (value: string | null, on: Day | null) =>
    value === null || on === null
      ? say('not-measured')
      : say('measured-on', { value, date: dayInWords(on, day) });
  const of = (value: number | null, unit: string) => (value === null ? null : `${value} ${unit}`);
  return (
    <section className="stack-close">
      <h2>{say('from-record')}</h2>
      <DefinitionList
        rows={[
          {
            key: 'body-mass',
            name: say('body-mass'),
            value: measured(of(facts.massKg, 'kg'), measuredOn.massKg),
          },
          {
            key: 'stature',
            name: say('stature'),
            value: measured(of(facts.statureCm, 'cm'), measuredOn.statureCm),
          },
          {
            key: 'body-fat',
            name: say('body-fat'),
            value: measured(of(facts.bodyFatPercent, '%'), measuredOn.bodyFatPercent),
          },
          {
            key: 'body-mass-index',
            name: say('body-mass-index'),
            value: picture.bodyMassIndex === null ? say('not-known') : picture.bodyMassIndex.toFixed(1),
          },
          { key: 'age', name: say('age'), value: say('years', { count: facts.ageYears }) },
          {
            key: 'formula-sex',
            name: say('formula-sex'),
            value: facts.formulaSex ?? say('formula-sex.none'),
          },
        ]}
      />
      <p className="screen-only">
        <a href={`/patients/${patientId}/measurements`}>{say('measure')}</a>
      </p>
    </section>
  );
};

/** What keeps every figure from being given, and what nobody has asked. */
const Closes = ({ nutrition: { picture, screenedOn }, day }: NutritionProps) => {
  const { lockReasons, notAsked, kidney } = picture;
  return (
    <section className="stack-close">
      <h2>{say('closes')}</h2>
      {lockReasons.length > 0 ? (
        <Notice tone="care" title={say('closed-because')}>
          <ul>
            {lockReasons.map((reason) => (
              <li key={reason}>{say(`reason.${reason}` as Reason)}</li>
            ))}
          </ul>
          {kidney ? (
            <p>
              {say('kidney-talk', {
                ceiling: Math.round(kidney.ceilingG),
                warn: Math.round(kidney.warnAboveG),
              })}
            </p>
          ) : null}
        </Notice>
      ) : (
        <p>{say('none-closes')}</p>
      )}
      <p className="soft">
        {screenedOn === null
          ? say('never-screened')
          : say('screened-on', { date: dayInWords(screenedOn, day) })}{' '}
        {notAsked.length > 0
          ? say('not-asked', { what: notAsked.map((one) => say(`question.${one}`)).join(', ') })
          : ''}{' '}
        {say('egfr-not-read')}
      </p>
    </section>
  );
};

const shownInWords = ({ nutrition: { steps, picture }, clock }: NutritionProps): string => {
  const [newest] = steps;
  if (!newest) return say('never-shown');
  const when = { at: momentInWords(newest.recordedAt, clock), name: newest.byName };
  if (!newest.advice) return say('taken-back', when);
  if (picture.lockReasons.length > 0) return say('shown-closed', when);
  const { proteinLowG, proteinHighG, meals, surplusKcal } = newest.advice;
  const figures = say('figures', { low: proteinLowG, high: proteinHighG, meals });
  return say('shown-now', {
    ...when,
    figures: surplusKcal === null ? figures : say('figures-energy', { figures, kcal: surplusKcal }),
  });
};

const Shown = (props: NutritionProps) => {
  const { patientId, nutrition, signer } = props;
  const advice = nutrition.steps[0]?.advice ?? null;
  const form = <AdviceForm patientId={patientId} signer={signer} notAsked={nutrition.picture.notAsked} />;
  return (
    <section className="stack-close">
      <h2>{say('show')}</h2>
      <p role="status">{shownInWords(props)}</p>
      {advice?.words ? <p className="typed-text">“{advice.words}”</p> : null}
      {advice ? <TakeBack patientId={patientId} /> : null}
      {nutrition.picture.lockReasons.length > 0 ? null : (
        <div className="screen-only">
          <Disclosure summary={say(advice ? 'show-other' : 'show-figures')}>{form}</Disclosure>
        </div>
      )}
    </section>
  );
};

export const NutritionScreen = (props: NutritionProps) => {
  const { picture } = props.nutrition;
  const isLocked = picture.lockReasons.length > 0;
  return (
    <div className="stack">
      <p className="soft">{say('about')}</p>
      <div className="side-by-side">
        <Closes {...props} />
        <Record {...props} />
      </div>
      {isLocked ? null : <Protein {...picture} />}
      <div className="side-by-side">
        <Shown {...props} />
        <LeanMass {...picture} />
        {isLocked ? null : <EnergyNeeded {...picture} />}
      </div>
    </div>
  );
};
