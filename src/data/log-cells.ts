/** Sets and answers as they come nested in the row of their session or morning: columns, and how to read them. */
import type { JointMorningAnswers, JointSessionAnswers, SetRecord } from '#core/model/record.ts';
import { morningJoint, sessionJoint, setLog } from './schema/schema.ts';
import { type Cell, numberIn, yesIn } from './store/nested-rows.ts';

export const setColumns = [
  setLog.lineId,
  setLog.prescriptionId,
  setLog.setNumber,
  setLog.repetitions,
  setLog.loadKg,
  setLog.reserve,
  setLog.stopReason,
  setLog.easier,
] as const;

export const setIn = ([
  lineId,
  prescriptionId,
  set,
  repetitions,
  load,
  reserve,
  stop,
  easier,
]: readonly Cell[]): SetRecord => ({
  lineId: lineId as string,
  prescriptionId: prescriptionId as string,
  set: set as number,
  repetitions: numberIn(repetitions!),
  loadKg: numberIn(load!),
  reserve: numberIn(reserve!),
  stopReason: stop as SetRecord['stopReason'],
  ...(easier === null ? {} : { easier: easier === 1 }),
});

export const answerColumns = [
  sessionJoint.joint,
  sessionJoint.painBefore,
  sessionJoint.painDuring,
  sessionJoint.painAfter,
  sessionJoint.painTwoHoursState,
  sessionJoint.gaveWay,
  sessionJoint.gaveWayUnanswered,
] as const;

/** Pain two hours later is filled in from the answers that came after. */
export const answerIn = ([
  joint,
  before,
  during,
  after,
  twoHoursState,
  gaveWay,
  gaveWayUnanswered,
]: readonly Cell[]): JointSessionAnswers => ({
  joint: joint as JointSessionAnswers['joint'],
  painBefore: numberIn(before!),
  painDuring: numberIn(during!),
  painAfter: numberIn(after!),
  painTwoHours: twoHoursState === 'not-applicable' ? 'not-applicable' : null,
  gaveWay: gaveWayUnanswered === 1 ? null : gaveWay === 1,
});

export interface LaterAnswer {
  readonly joint: string;
  readonly pain: number | null;
  readonly arrivedAt: number;
}

export const laterIn = ([joint, pain, arrivedAt]: readonly Cell[]): LaterAnswer => ({
  joint: joint as string,
  pain: numberIn(pain!),
  arrivedAt: arrivedAt as number,
});

export const morningColumns = [
  morningJoint.joint,
  morningJoint.pain,
  morningJoint.stiffnessMinutes,
  morningJoint.stiffnessState,
  morningJoint.swelling,
  morningJoint.swellingState,
  morningJoint.flare,
] as const;

export const morningIn = ([
  joint,
  pain,
  stiffnessMinutes,
  stiffnessState,
  swelling,
  swellingState,
  flare,
]: readonly Cell[]): JointMorningAnswers => ({
  joint: joint as JointMorningAnswers['joint'],
  pain: numberIn(pain!),
  stiffnessMinutes: stiffnessState === 'not-applicable' ? 'not-applicable' : numberIn(stiffnessMinutes!),
  swelling:
    swellingState === 'not-applicable' ? 'not-applicable' : (swelling as JointMorningAnswers['swelling']),
  flare: yesIn(flare!),
});
