/**
 * A patient's history turned into the facts of one joint at one moment. Pure; reads baseline values and
 * recorded prescription versions as they stand and estimates neither again.
 *
 * A question left open is never read as "no". Giving way and having done more than planned are asked after
 * the work: open after work they count as yes. Three more readings make a fact cautious where the record is silent: extra pain relief not said counts as
 * taken; the flare question left open counts with the red flag questions as one set not answered;
 * repetitions in reserve not said count as none left.
 */

import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { engineSettingValues } from '../settings.ts';
import { completionFacts } from './completion-facts.ts';
import { type EvaluationContext, evaluationContext } from './evaluation-context.ts';
import type { Facts } from './facts.ts';
import {
  baselineFacts,
  effusionFacts,
  hadSeverePain,
  otherJointsFlared,
  painFacts,
  stateFacts,
} from './joint-facts.ts';
import { type Moment, mornings } from './judged-session.ts';
import { flareDaysAt } from './morning-facts.ts';
import { morningPainMean7, morningsOverTop, previousMorningPain, twoOverBefore } from './morning-scores.ts';
import {
  adherenceFacts,
  fatigueRiseAt,
  gapDaysAt,
  mayHaveGivenWay,
  redFlagsAt,
  treatmentChangeDaysAt,
} from './patient-facts.ts';
import { symptomSignal } from './symptom-signal.ts';

const diaryFacts = (context: EvaluationContext, top: number) => {
  const { index, joint, instant, day, settings, judged, baseline } = context;
  const list = mornings(index, joint);
  const before = previousMorningPain(list, (judged.session?.day ?? day) + 1, instant, settings);
  return {
    morningPainMean7: morningPainMean7(list, day, instant, settings),
    previousMorningOverTop: before !== null && before >= top + 1,
    twoOverBefore: twoOverBefore(list, judged.session?.day ?? day, top, instant, settings),
    morningsOverTop: morningsOverTop(list, day, top, instant, settings),
    flareDays: flareDaysAt(list, day, instant),
    symptomSignal: baseline !== null && symptomSignal(list, baseline, day, instant, settings),
  };
};

/** Taken, or not said, at the session or the morning after it. */
const extraPainRelief = ({ judged }: EvaluationContext): boolean =>
  judged.session !== null &&
  (judged.session.session.extraPainRelief !== false ||
    (judged.nextMorning !== null && judged.nextMorning.morning.extraPainRelief !== false));

const hadSeverePainBefore = (context: EvaluationContext): boolean =>
  context.judged.previous !== null && hadSeverePain(context, context.judged.previous);

/** Written out field by field but for the last: spreading eight objects into one cost more than all the rules together. */
export const factsSeen = (context: EvaluationContext): Facts => {
  const { index, judged, day, instant, settings } = context;
  const pain = painFacts(context);
  const baselineValues = baselineFacts(context);
  const diary = diaryFacts(context, baselineValues.usualPainTop ?? 0);
  const state = stateFacts(context);
  const effusion = effusionFacts(context);
  const completion = completionFacts(index, context.joint, judged, instant, settings);
  const adherence = adherenceFacts(index, day);
  return {
    painBefore: pain.painBefore,
    painDuring: pain.painDuring,
    painAfter: pain.painAfter,
    painTwoHours: pain.painTwoHours,
    painNextMorning: pain.painNextMorning,
    painLaterMorning: pain.painLaterMorning,
    usualPain: baselineValues.usualPain,
    usualPainTop: baselineValues.usualPainTop,
    painCeiling: baselineValues.painCeiling,
    morningPainMean7: diary.morningPainMean7,
    previousMorningOverTop: diary.previousMorningOverTop,
    previousPeakEight: hadSeverePainBefore(context),
    twoOverBefore: diary.twoOverBefore,
    morningsOverTop: diary.morningsOverTop,
    usualPainProvisional: baselineValues.usualPainProvisional,
    usualPainRise: baselineValues.usualPainRise,
    swelling: state.swelling,
    usualSwelling: state.usualSwelling ?? baselineValues.usualSwelling,
    effusion: effusion.effusion,
    effusionRun: effusion.effusionRun,
    usualEffusion: baselineValues.usualEffusion,
    stiffnessMinutes: state.stiffnessMinutes,
    usualStiffnessMinutes: baselineValues.usualStiffnessMinutes,
    flareDays: diary.flareDays,
    inflammatoryArthritis: index.record.inflammatoryArthritis,
    otherJointsFlared: otherJointsFlared(context),
    fatigueRise: fatigueRiseAt(index, context.baseline?.usualFatigue ?? null, day, instant),
    redFlags: redFlagsAt(index, judged, state.flareOpen, day, instant),
    missedSessions14: adherence.missedSessions14,
    plannedSessions14: adherence.plannedSessions14,
    gapDays: gapDaysAt(index, judged, day),
    extraPainRelief: extraPainRelief(context),
    treatmentChangeDays: treatmentChangeDaysAt(index, context.joint, day),
    gaveWay: mayHaveGivenWay(judged),
    baselineAgeDays: baselineValues.baselineAgeDays,
    baselineLatched: baselineValues.baselineLatched,
    symptomSignal: diary.symptomSignal,
    ...completion,
  };
};

export const factsFor = (
  record: PatientRecord,
  joint: Joint,
  at: Moment,
  settingValues?: SettingValues,
): Facts => factsSeen(evaluationContext(record, joint, at, engineSettingValues(settingValues)));
