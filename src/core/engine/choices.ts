/**
 * Every number of the decision rules that no source fixes. Each needs a physiotherapist's sign-off.
 * The values in force are stored with each decision, so that an old decision replays to the same answer.
 */
import type { ChoiceValues, ClinicChoice } from '../clinic-choice.ts';
import { doseChoices } from './dose-choices.ts';

const score = { unit: '1', whole: true } as const;
const days = { unit: 'd', whole: true } as const;
const minutes = { unit: 'min' } as const;

export const ruleChoices = [
  {
    id: 'severe-pain',
    title: 'Pain that eases the dose back and calls the clinic',
    ...score,
    min: 7,
    max: 9,
    default: 8,
    why: 'A published grouping calls 8 to 10 the top band. Lower asks for more calls.',
  },
  {
    id: 'pause-pain',
    title: 'Pain that pauses the plan by itself',
    ...score,
    min: 9,
    max: 10,
    default: 10,
    why: 'The top of the scale is never a load question.',
  },
  {
    id: 'pause-rise-pain',
    title: 'Pain that pauses the plan when it is far over usual',
    ...score,
    min: 8,
    max: 10,
    default: 9,
    why: 'A person whose usual pain is high should not be paused by one point.',
  },
  {
    id: 'pause-rise',
    title: 'Rise over usual pain that goes with it',
    unit: '1',
    min: 1,
    max: 4,
    default: 3,
    why: 'More than the two points within which one rating may stray.',
  },
  {
    id: 'pause-morning-pain',
    title: 'Next-morning pain that pauses the plan',
    ...score,
    min: 7,
    max: 9,
    default: 8,
    why: 'Severe pain that did not settle overnight needs a person to look.',
  },
  {
    id: 'pause-repeat-rise',
    title: 'Rise over usual pain for severe pain in the morning or twice running',
    unit: '1',
    min: 1,
    max: 3,
    default: 2,
    why: 'Two points exceed the measurement error of a rating in knee osteoarthritis.',
  },
  {
    id: 'baseline-expiry',
    title: 'Days after which frozen usual values must be set again',
    ...days,
    min: 14,
    max: 84,
    default: 42,
    why: 'Six weeks is about one block of training. Longer lets an old, high usual pain hide a worsening.',
  },
  {
    id: 'stiffness-ease-offset',
    title: 'Minutes over usual stiffness that ease the dose back',
    ...minutes,
    min: 15,
    max: 60,
    default: 45,
    why: 'A half hour over usual is common on a bad day in hand osteoarthritis.',
  },
  {
    id: 'stiffness-ease-factor',
    title: 'Multiple of usual stiffness that eases the dose back',
    unit: '1',
    min: 1.5,
    max: 3,
    default: 2,
    why: 'Long usual stiffness strays in proportion to its length.',
  },
  {
    id: 'stiffness-hold-offset',
    title: 'Minutes over usual stiffness that hold the dose',
    ...minutes,
    min: 5,
    max: 40,
    default: 20,
    why: 'People round minutes to tens; twenty is past rounding.',
  },
  {
    id: 'stiffness-hold-factor',
    title: 'Multiple of usual stiffness that holds the dose',
    unit: '1',
    min: 1.2,
    max: 2,
    default: 1.5,
    why: 'Long usual stiffness strays in proportion to its length.',
  },
  {
    id: 'inflammatory-flare-days',
    title: 'Flare days after which the clinic is told in inflammatory arthritis',
    ...days,
    min: 2,
    max: 7,
    default: 3,
    why: 'More than half of such flares last over two weeks, so asking early costs little.',
  },
  {
    id: 'early-stop-percent',
    title: 'Share of repetitions under which a stop for the joint eases the dose back',
    unit: '%',
    min: 40,
    max: 80,
    default: 60,
    why: 'Under this the session was not a session; higher cuts the dose after a small shortfall.',
  },
  {
    id: 'reserve-shortfall',
    title: 'Repetitions nearer to failure than prescribed that hold the dose',
    ...score,
    min: 1,
    max: 3,
    default: 2,
    why: 'People misjudge repetitions in reserve by about one.',
  },
  {
    id: 'sessions-on-target',
    title: 'Sessions on target in a row before more than repetitions may rise',
    ...score,
    min: 2,
    max: 4,
    default: 2,
    why: 'Two in a row is the usual trade rule. Fewer than two is not offered.',
  },
  {
    id: 'missed-sessions',
    title: 'Missed sessions in 14 days from which adherence is looked at',
    ...score,
    min: 1,
    max: 4,
    default: 2,
    why: 'One missed session says little.',
  },
  {
    id: 'adherence-percent',
    title: 'Share of planned sessions under which the dose is held',
    unit: '%',
    min: 50,
    max: 90,
    default: 75,
    why: 'Three of four keeps a person on two or three sessions a week in play.',
  },
  {
    id: 'gap-days',
    title: 'Days without a session after which the dose is eased back',
    ...days,
    min: 7,
    max: 28,
    default: 14,
    why: 'Tolerance to load is lost before strength is.',
  },
  {
    id: 'treatment-change-days',
    title: 'Days after a medicine change or joint injection during which the dose is held',
    ...days,
    min: 7,
    max: 42,
    default: 14,
    why: 'Pain scores speak of the treatment, not of the load, for about two weeks.',
  },
  {
    id: 'overdone-percent',
    title: 'Load over the prescription that counts as overdone',
    unit: '%',
    min: 5,
    max: 20,
    default: 10,
    why: 'The largest step the plan itself would take.',
  },
  {
    id: 'signal-interval',
    title: 'Height of the sum chart at which it signals, in standard deviations',
    unit: '1',
    min: 4,
    max: 8,
    default: 5,
    why: 'At 5 a diary of unchanged pain still alarms in about one of eight within 28 days.',
  },
  {
    id: 'signal-least-values',
    title: 'Baseline mornings the sum chart needs',
    ...score,
    min: 14,
    max: 28,
    default: 14,
    why: 'Fewer values misjudge the usual scatter and alarm too often.',
  },
  {
    id: 'signal-inflation',
    title: 'Factor on the baseline scatter for the sum chart',
    unit: '1',
    min: 1,
    max: 2,
    default: 1.5,
    why: 'Pain of neighbouring days is alike, which makes an uninflated chart alarm too often.',
  },
] as const satisfies readonly ClinicChoice[];

export const engineChoices = [...ruleChoices, ...doseChoices] as const satisfies readonly ClinicChoice[];

export type EngineChoiceId = (typeof engineChoices)[number]['id'];
export type EngineChoiceValues = Readonly<Record<EngineChoiceId, number>>;

export const engineDefaults = Object.fromEntries(
  engineChoices.map((choice) => [choice.id, choice.default]),
) as EngineChoiceValues;

const completed = new WeakMap<ChoiceValues, EngineChoiceValues>();

/**
 * The stored values with any choice added since then at its default, so that a decision stored
 * under an earlier list still replays.
 */
export const engineChoiceValues = (values?: ChoiceValues): EngineChoiceValues => {
  if (!values) return engineDefaults;
  let whole = completed.get(values);
  if (!whole) {
    whole = { ...engineDefaults, ...values };
    completed.set(values, whole);
  }
  return whole;
};
