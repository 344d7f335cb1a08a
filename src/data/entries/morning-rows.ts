/** A morning with what it says of each joint, as it comes gathered from the file: columns, and how to read them. */
import { and, eq } from 'drizzle-orm';
import type { JointMorningAnswers, MorningRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import { type Cells, listIn, nestedRows, numberIn, rowsIn, yesIn } from '../database/nested-rows.ts';
import { morning, morningJoint } from '../schema/schema.ts';

const ofMorning = and(eq(morningJoint.patientId, morning.patientId), eq(morningJoint.morningId, morning.id))!;

const answerColumns = [
  morningJoint.joint,
  morningJoint.pain,
  morningJoint.stiffnessMinutes,
  morningJoint.stiffnessState,
  morningJoint.swelling,
  morningJoint.swellingState,
  morningJoint.swellingQuestion,
  morningJoint.flare,
] as const;

const answersIn = ([
  joint,
  pain,
  stiffnessMinutes,
  stiffnessState,
  swelling,
  swellingState,
  swellingQuestion,
  flare,
]: Cells): JointMorningAnswers => ({
  joint: joint as JointMorningAnswers['joint'],
  pain: numberIn(pain!),
  stiffnessMinutes: stiffnessState === 'not-applicable' ? 'not-applicable' : numberIn(stiffnessMinutes!),
  swelling:
    swellingState === 'not-applicable' ? 'not-applicable' : (swelling as JointMorningAnswers['swelling']),
  ...(swellingQuestion === 'more-than-usual' ? { swellingQuestion } : {}),
  flare: yesIn(flare!),
});

export const morningColumns = [
  morning.id,
  morning.entryId,
  morning.amends,
  morning.day,
  morning.zone,
  morning.answeredAt,
  morning.arrivedAt,
  morning.redFlags,
  morning.extraPainRelief,
  morning.fatigue,
  morning.fatigueState,
  morning.clockDoubtful,
  morning.late,
  nestedRows(answerColumns, morningJoint, ofMorning),
] as const;

/** A morning as it stands in the file; a later row may amend it, and its time is still to be judged. */
export interface MorningRow {
  readonly entryId: string;
  readonly amends: string | null;
  readonly zone: string;
  readonly answeredAt: number;
  readonly late: boolean;
  readonly record: MorningRecord;
}

export const morningIn = ([
  id,
  entryId,
  amends,
  day,
  zone,
  answeredAt,
  arrivedAt,
  redFlags,
  extraPainRelief,
  fatigue,
  fatigueState,
  clockDoubtful,
  late,
  joints,
]: Cells): MorningRow => ({
  entryId: entryId as string,
  amends: amends as string | null,
  zone: zone as string,
  answeredAt: answeredAt as number,
  late: late === 1,
  record: {
    id: id as string,
    day: day as Day,
    recordedAt: arrivedAt as number,
    joints: rowsIn(joints!, answersIn),
    redFlags: listIn(redFlags!),
    extraPainRelief: yesIn(extraPainRelief!),
    fatigue: fatigueState === 'not-applicable' ? 'not-applicable' : numberIn(fatigue!),
    clockDoubtful: clockDoubtful === 1,
    ...(amends === null ? {} : { amended: true }),
  },
});
