/**
 * A patient's history turned into the facts of one joint at one moment. Pure; reads frozen values and
 * recorded prescription versions as they stand and estimates neither again.
 *
 * Three readings make a fact cautious where the record is silent: extra pain relief not said counts as
 * taken; the flare question left open counts with the red flag questions as one set not answered;
 * repetitions in reserve not said count as none left.
 */
import type { ChoiceValues } from '../clinic-choice.ts';
import { dayNumber } from '../day.ts';
import type { Joint } from '../joints.ts';
import type { Baseline, PatientRecord } from '../model/record.ts';
import { type EngineChoiceValues, engineChoiceValues } from './choices.ts';
import { completionFacts } from './completion-facts.ts';
import type { Facts } from './facts.ts';
import { type Judged, judgedSession, type Moment, morningScoreOn, mornings } from './judged-session.ts';
import { flareDaysAt, jointStateAt, morningPainMean7, previousMorningPain } from './morning-facts.ts';
import { adherenceFacts, eventFacts, fatigueRiseAt, gapDaysAt, redFlagsAt } from './patient-facts.ts';
import { countUpTo, indexRecord, type JointSession, type RecordIndex } from './record-index.ts';
import { symptomSignal } from './symptom-signal.ts';

interface Look {
  readonly index: RecordIndex;
  readonly joint: Joint;
  readonly instant: number;
  readonly day: number;
  readonly choices: EngineChoiceValues;
  readonly judged: Judged;
  readonly baseline: (Baseline & { readonly frozenDay: number }) | null;
}

const painFacts = ({
  judged,
}: Look): Pick<Facts, 'painBefore' | 'painDuring' | 'painAfter' | 'painTwoHours' | 'painNextMorning'> => {
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
  };
};

type FrozenFacts = Pick<
  Facts,
  | 'usualPain'
  | 'usualPainTop'
  | 'painCeiling'
  | 'usualSwelling'
  | 'usualEffusion'
  | 'usualStiffnessMinutes'
  | 'baselineAgeDays'
  | 'baselineLatched'
>;

const frozenFacts = ({ baseline, day }: Look): FrozenFacts => {
  const usualPain = baseline?.usualPain ?? null;
  const top = baseline?.usualPainTop ?? usualPain;
  return {
    usualPain,
    usualPainTop:
      usualPain === null || top === null ? null : Math.min(usualPain + 2, Math.max(usualPain, top)),
    painCeiling: Math.min(7, Math.max(5, baseline?.painCeiling ?? 5)),
    usualSwelling: baseline?.usualSwelling ?? 'none',
    usualEffusion: baseline?.usualEffusion ?? 'zero',
    usualStiffnessMinutes: baseline?.usualStiffnessMinutes ?? 0,
    baselineAgeDays: baseline ? day - baseline.frozenDay : 0,
    baselineLatched: baseline?.latched ?? false,
  };
};

const peakOf = (look: Look, session: JointSession): number => {
  const { answers } = session;
  const next = morningScoreOn(mornings(look.index, look.joint), session.day + 1, look.instant, look.choices)
    ?.answers.pain;
  if (!answers || session.session.clockDoubtful) return next ?? -1;
  const twoHours = typeof answers.painTwoHours === 'number' ? answers.painTwoHours : null;
  return Math.max(
    answers.painBefore ?? -1,
    answers.painDuring ?? -1,
    answers.painAfter ?? -1,
    twoHours ?? -1,
    next ?? -1,
  );
};

/** Swelling and stiffness as last told; told before the judged session they speak only where they warn. */
const stateFacts = (look: Look): Pick<Facts, 'swelling' | 'stiffnessMinutes'> & { flareOpen: boolean } => {
  const state = jointStateAt(mornings(look.index, look.joint), look.day, look.instant);
  if (!state) return { swelling: null, stiffnessMinutes: null, flareOpen: false };
  const isAfter = look.judged.session === null || state.day > look.judged.session.day;
  if (isAfter) {
    return {
      swelling: state.swelling,
      stiffnessMinutes: state.stiffnessMinutes,
      flareOpen: !state.flareAnswered,
    };
  }
  const warns =
    state.swelling === 'clear' || state.swelling === 'severe' || state.swelling === 'not-applicable';
  return {
    swelling: warns ? state.swelling : null,
    stiffnessMinutes: state.stiffnessMinutes === 'not-applicable' ? 'not-applicable' : null,
    flareOpen: false,
  };
};

const effusionFacts = ({ index, joint, day }: Look): Pick<Facts, 'effusion' | 'effusionRun'> => {
  const list = index.effusionsOf.get(joint) ?? [];
  const last = countUpTo(list, day, (one) => one.number) - 1;
  let effusionRun = 0;
  while (last - effusionRun >= 0 && ['2+', '3+'].includes(list[last - effusionRun]!.grade)) effusionRun++;
  return { effusion: list[last]?.grade ?? 'not-applicable', effusionRun };
};

const otherJointsFlared = ({ index, joint, day, instant }: Look): number => {
  let flared = 0;
  for (const [other, list] of index.morningsOf) {
    if (other !== joint && flareDaysAt(list, day, instant) > 0) flared++;
  }
  return flared;
};

const diaryFacts = (look: Look, top: number) => {
  const { index, joint, instant, day, choices, judged, baseline } = look;
  const list = mornings(index, joint);
  const before = previousMorningPain(list, (judged.session?.day ?? day) + 1, instant, choices);
  return {
    morningPainMean7: morningPainMean7(list, day, instant, choices),
    previousMorningOverTop: before !== null && before >= top + 1,
    flareDays: flareDaysAt(list, day, instant),
    symptomSignal: baseline !== null && symptomSignal(list, baseline, day, instant, choices),
  };
};

const lookAt = (record: PatientRecord, joint: Joint, at: Moment, choices: EngineChoiceValues): Look => {
  const index = indexRecord(record);
  const day = dayNumber(at.day);
  const baselines = index.baselinesOf.get(joint) ?? [];
  return {
    index,
    joint,
    instant: at.instant,
    day,
    choices,
    judged: judgedSession(index, joint, at, choices),
    baseline: baselines[countUpTo(baselines, day, (one) => one.frozenDay) - 1] ?? null,
  };
};

/** Taken, or not said, at the session or the morning after it. */
const extraPainRelief = ({ judged }: Look): boolean =>
  judged.session !== null &&
  (judged.session.session.extraPainRelief !== false ||
    (judged.nextMorning !== null && judged.nextMorning.morning.extraPainRelief !== false));

export const factsFor = (
  record: PatientRecord,
  joint: Joint,
  at: Moment,
  choiceValues?: ChoiceValues,
): Facts => {
  const choices = engineChoiceValues(choiceValues);
  const look = lookAt(record, joint, at, choices);
  const { index, judged, day, instant } = look;
  const frozen = frozenFacts(look);
  const { flareOpen, ...state } = stateFacts(look);
  return {
    ...painFacts(look),
    ...frozen,
    ...diaryFacts(look, frozen.usualPainTop ?? 0),
    previousPeakEight: judged.previous !== null && peakOf(look, judged.previous) >= choices['severe-pain'],
    ...state,
    ...effusionFacts(look),
    inflammatoryArthritis: record.inflammatoryArthritis,
    otherJointsFlared: otherJointsFlared(look),
    fatigueRise: fatigueRiseAt(index, look.baseline?.usualFatigue ?? null, day, instant),
    redFlags: redFlagsAt(index, judged, flareOpen, day, instant),
    ...completionFacts(index, joint, judged, instant, choices),
    ...adherenceFacts(index, day),
    gapDays: gapDaysAt(index, judged, day),
    extraPainRelief: extraPainRelief(look),
    treatmentChangeDays: eventFacts(index, joint, day),
    gaveWay: judged.session?.answers?.gaveWay ?? false,
  };
};
