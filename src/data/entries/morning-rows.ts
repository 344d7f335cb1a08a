/** A morning with what it says of each joint, as it comes gathered from the file: columns, and how to read them. */
import { and, eq } from 'drizzle-orm';
import type { MorningVia, OtherJoint } from '#core/record/entry-words.ts';
import {
  absentAnswers,
  answerFields,
  type JointMorningAnswers,
  morningQuestions,
} from '#core/record/morning-questions.ts';
import type { MorningRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import {
  type Cell,
  type Cells,
  listIn,
  nestedRows,
  numberIn,
  rowsIn,
  yesIn,
} from '../database/nested-rows.ts';
import { morning, morningJoint } from '../schema/schema.ts';

const ofMorning = and(eq(morningJoint.patientId, morning.patientId), eq(morningJoint.morningId, morning.id))!;

const jointColumns = [morningJoint.joint, ...answerFields.map(({ name }) => morningJoint[name])] as const;

/** A cell's place in the row. */
const placeOf = (name: string): number => 1 + answerFields.findIndex((field) => field.name === name);

const readers = morningQuestions.map(({ answer, state }) => {
  const [place, statePlace] = [placeOf(answer.name), state ? placeOf(state.name) : null];
  const read = { integer: numberIn, flag: yesIn, enum: (cell: Cell) => cell }[answer.kind];
  return {
    name: answer.name,
    valueIn: (cells: Cells) =>
      statePlace !== null && cells[statePlace] === 'not-applicable' ? 'not-applicable' : read(cells[place]!),
  };
});

const wordings = morningQuestions.flatMap(({ wording }) =>
  wording ? [{ name: wording.name, place: placeOf(wording.name) }] : [],
);

const absent: Readonly<Record<string, unknown>> = absentAnswers;

/** A wording is named only where it is not the one that an entry without it has. */
const answersIn = (cells: Cells): JointMorningAnswers => {
  const read: Record<string, unknown> = { joint: cells[0] };
  for (const { name, valueIn } of readers) read[name] = valueIn(cells);
  for (const { name, place } of wordings) if (cells[place] !== absent[name]) read[name] = cells[place];
  return read as unknown as JointMorningAnswers;
};

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
  morning.otherJoint,
  morning.clockDoubtful,
  morning.late,
  morning.via,
  nestedRows(jointColumns, morningJoint, ofMorning),
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
  otherJoint,
  clockDoubtful,
  late,
  via,
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
    ...(otherJoint === null ? {} : { otherJoint: otherJoint as OtherJoint }),
    clockDoubtful: clockDoubtful === 1,
    ...(amends === null ? {} : { amended: true }),
    ...(via === null ? {} : { via: via as MorningVia }),
  },
});
