/** Facts of one joint read straight from the context: its scores, its baseline values, its state, its tests. */

import { setByClinicianOn } from '#core/record/baseline-age.ts';
import type { Baseline } from '#core/record/record.ts';
import { dayNumber } from '#core/time/day.ts';
import { type EngineSettingValues, engineVersionOf, isOnSinceVersion2 } from '../settings.ts';
import { countUpTo } from './count-up-to.ts';
import type { EvaluationContext } from './evaluation-context.ts';
import type { Facts } from './facts.ts';
import type { JointSession } from './indexed-record.ts';
import { morningScoreOn, mornings } from './judged-session.ts';
import { flareDaysAt, hasToldSwellingSince, jointStateAt } from './morning-facts.ts';
import { laterMorningPain } from './morning-scores.ts';

const laterMorning = (context: EvaluationContext): Facts['painLaterMorning'] => {
  const { index, joint, day, instant, settings, judged } = context;
  const { session, nextMorning } = judged;
  if (!isOnSinceVersion2('later-morning-days', settings) || !session) return 'not-applicable';
  if (typeof nextMorning?.answers.pain === 'number') return 'not-applicable';
  return laterMorningPain(mornings(index, joint), session.day, day, instant, settings);
};

export const painFacts = (
  context: EvaluationContext,
): Pick<
  Facts,
  'painBefore' | 'painDuring' | 'painAfter' | 'painTwoHours' | 'painNextMorning' | 'painLaterMorning'
> => {
  const { judged } = context;
  const session = judged.session;
  const answers = session && !session.session.clockDoubtful ? session.answers : null;
  return {
    painBefore: answers?.painBefore ?? null,
    painDuring: answers?.painDuring ?? null,
    painAfter: answers?.painAfter ?? null,
    painTwoHours: answers
      ? answers.painTwoHours
      : session?.answers?.painTwoHours === 'not-applicable'
        ? 'not-applicable'
        : null,
    painNextMorning: judged.nextMorning?.answers.pain ?? null,
    painLaterMorning: laterMorning(context),
  };
};

type BaselineFacts = Pick<
  Facts,
  | 'usualPain'
  | 'usualPainTop'
  | 'painCeiling'
  | 'usualSwelling'
  | 'usualEffusion'
  | 'usualStiffnessMinutes'
  | 'baselineAgeDays'
  | 'baselineLatched'
  | 'usualPainProvisional'
  | 'usualPainRise'
>;

/** Told at a first visit and not yet shown by a diary, it counts only where the clinic lets it. */
const usualPainOf = (baseline: Baseline | null, settings: EngineSettingValues): number | null =>
  baseline?.provisional && engineVersionOf(settings) >= 2 && settings['provisional-usual'] === 0
    ? null
    : (baseline?.usualPain ?? null);

/** The top of the usual band in force: usual pain, or up to 2 over it where a clinician widened it. */
export const topOver = (usualPain: number, baseline: Baseline | null): number =>
  Math.min(usualPain + 2, Math.max(usualPain, baseline?.usualPainTop ?? usualPain));

export const baselineFacts = ({
  baseline,
  firstUsualPain,
  day,
  settings,
}: EvaluationContext): BaselineFacts => {
  const usualPain = usualPainOf(baseline, settings);
  return {
    usualPain,
    usualPainTop: usualPain === null ? null : topOver(usualPain, baseline),
    painCeiling: Math.min(7, Math.max(5, baseline?.acceptablePainLimit ?? 5)),
    usualSwelling: baseline?.usualSwelling ?? 'none',
    usualEffusion: baseline?.usualEffusion ?? 'zero',
    usualStiffnessMinutes: baseline?.usualStiffnessMinutes ?? 0,
    baselineAgeDays: baseline ? day - dayNumber(setByClinicianOn(baseline)) : 0,
    usualPainProvisional: usualPain !== null && (baseline?.provisional ?? false),
    usualPainRise: usualPain === null || firstUsualPain === null ? null : usualPain - firstUsualPain,
    baselineLatched: baseline?.dueForReview ?? false,
  };
};

/** Whether a session, or the morning after it, told of pain at the severe mark; what was left open says nothing. */
export const hadSeverePain = (context: EvaluationContext, session: JointSession): boolean => {
  const { index, joint, instant, settings } = context;
  const answers = session.session.clockDoubtful ? null : session.answers;
  const next = morningScoreOn(mornings(index, joint), session.day + 1, instant, settings)?.answers;
  const scores = [
    answers?.painBefore,
    answers?.painDuring,
    answers?.painAfter,
    answers?.painTwoHours,
    next?.pain,
  ];
  return scores.some((score) => typeof score === 'number' && score >= settings['severe-pain']);
};

/** Swelling and stiffness as last told; told before the judged session they speak only where they warn. */
export const stateFacts = (
  context: EvaluationContext,
): Pick<Facts, 'swelling' | 'stiffnessMinutes'> & {
  /** Set where the answer is against usual, which leaves no usual swelling to allow for. */
  usualSwelling: 'none' | null;
  flareOpen: boolean;
} => {
  const state = jointStateAt(mornings(context.index, context.joint), context.day, context.instant);
  if (!state) return { swelling: null, usualSwelling: null, stiffnessMinutes: null, flareOpen: false };
  const usualSwelling = state.isAgainstUsual ? 'none' : null;
  const isAfter = context.judged.session === null || state.day > context.judged.session.day;
  if (isAfter) {
    return {
      swelling: state.swelling,
      usualSwelling,
      stiffnessMinutes: state.stiffnessMinutes,
      flareOpen: !state.flareAnswered,
    };
  }
  const warns =
    state.swelling === 'clear' || state.swelling === 'severe' || state.swelling === 'not-applicable';
  return {
    swelling: warns ? state.swelling : null,
    usualSwelling,
    stiffnessMinutes: state.stiffnessMinutes === 'not-applicable' ? 'not-applicable' : null,
    flareOpen: false,
  };
};

const noEffusion = { effusion: 'not-applicable', effusionRun: 0 } as const;

/**
 * The newest knee test, for as long as it holds: once it is older than the clinic allows and the patient has
 * said since then how swollen the joint is, her own answer speaks and the old grade does not. Until she
 * has, the grade stays.
 */
export const effusionFacts = ({
  index,
  joint,
  day,
  instant,
  settings,
}: EvaluationContext): Pick<Facts, 'effusion' | 'effusionRun'> => {
  const all = index.effusionsOf.get(joint) ?? [];
  const tests = all.slice(
    0,
    countUpTo(all, day, (one) => one.number),
  );
  const last = tests.at(-1);
  if (!last) return noEffusion;
  const lastDay = last.number + settings['effusion-test-days'];
  if (hasToldSwellingSince(mornings(index, joint), lastDay, day, instant)) return noEffusion;
  const lastSmall = tests.findLastIndex(({ grade }) => grade !== '2+' && grade !== '3+');
  return { effusion: last.grade, effusionRun: tests.length - 1 - lastSmall };
};

export const otherJointsFlared = ({ index, joint, day, instant }: EvaluationContext): number => {
  let flared = 0;
  for (const [other, list] of index.morningsOf) {
    if (other !== joint && flareDaysAt(list, day, instant) > 0) flared++;
  }
  return flared;
};
