/** A made clinic, the same for the same seed; every share below is invented and says nothing about real people. */
import { addDays, type Day } from '#core/time/day.ts';
import type { PersonRecord } from '#exchange/person-record.ts';

/** mulberry32, as published by its author into the public domain; from memory. */
const drawnFrom = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
};

type Draw = () => number;
const within = (draw: Draw, low: number, high: number): number => low + Math.floor(draw() * (high - low + 1));
const pick = <T>(draw: Draw, list: readonly T[]): T => list[Math.floor(draw() * list.length)]!;
const score = (value: number): number => Math.min(10, Math.max(0, Math.round(value)));

const joints = [
  'right-knee',
  'left-knee',
  'right-knee',
  'left-hip',
  'right-hip',
  'left-shoulder',
  'right-hand',
];
const groups = ['knee-osteoarthritis-mild', 'none-of-these', null] as const;

interface Course {
  readonly id: string;
  readonly draw: Draw;
  readonly joint: string;
  readonly usual: number;
  readonly firstDay: Day;
  readonly sessions: number;
}

const entryOf = (id: string, day: Day) => ({ id, entryId: id, amends: null, day, recordedAt: 0 });

const sessionsOf = ({ id, draw, joint, usual, firstDay, sessions }: Course) => {
  const rows = { training_session: [] as object[], session_joint: [] as object[], set_log: [] as object[] };
  let day = firstDay;
  let loadKg = within(draw, 4, 60) / 2;
  for (let number = 0; number < sessions; number += 1) {
    const sessionId = `${id}-s${number}`;
    const before = score(usual - number / 20 + draw() * 2);
    rows.training_session.push({ ...entryOf(sessionId, day), kind: draw() < 0.9 ? 'full' : 'bad-day' });
    const during = draw() < 0.05 ? null : score(before + draw() * 3);
    rows.session_joint.push({
      sessionId,
      joint,
      painBefore: before,
      painDuring: during,
      painAfter: score(before + draw()),
    });
    rows.set_log.push({
      id: `${sessionId}-1`,
      sessionId,
      prescriptionId: `${id}-dose`,
      itemId: `${id}-item`,
      loadKg,
    });
    if (draw() < 0.15) loadKg += 0.5 * within(draw, 1, 4);
    day = addDays(day, within(draw, 1, 5));
  }
  return { rows, lastDay: day };
};

const morningsOf = ({ id, draw, joint, usual, firstDay }: Course, lastDay: Day) => {
  const rows = { morning: [] as object[], morning_joint: [] as object[] };
  for (let day = firstDay, number = 0; day < lastDay; day = addDays(day, 1), number += 1) {
    if (draw() < 0.2) continue;
    const morningId = `${id}-m${number}`;
    const pain = score(usual - number / 50 + draw() * 2);
    rows.morning.push(entryOf(morningId, day));
    rows.morning_joint.push({
      morningId,
      joint,
      pain,
      stiffnessMinutes: within(draw, 0, 9) * 5,
      flare: draw() < 0.02,
    });
  }
  return rows;
};

const aroundOf = ({ id, draw, joint, sessions, firstDay }: Course) => ({
  decision: Array.from({ length: sessions }, (_, at) => ({
    ...{ id: `${id}-d${at}`, joint, day: addDays(firstDay, at * 3), cause: 'session' },
    decision: pick(draw, ['hold', 'hold', 'progress', 'progress', 'ease-back']),
  })),
  measurement: Array.from({ length: within(draw, 1, 5) }, (_, at) => ({
    ...{ id: `${id}-x${at}`, kind: pick(draw, ['body-weight', 'grip']), day: addDays(firstDay, at * 28) },
    ...{ figure: within(draw, 300, 1100) / 10, recordedAt: at },
  })),
  prescription: [
    { id: `${id}-dose`, method: pick(draw, ['low-load', 'low-load', 'variation', 'occlusion']) },
  ],
});

export const recordWith = (
  patient: Partial<PersonRecord['patient']>,
  filled: Readonly<Record<string, readonly object[]>>,
): PersonRecord => {
  const rows = new Proxy(filled, { get: (tables, name) => Reflect.get(tables, name) ?? [] });
  return { patient, rows } as unknown as PersonRecord;
};

const personOf = (number: number, draw: Draw): PersonRecord => {
  const id = `made-${number}`;
  const joint = pick(draw, joints);
  const firstDay = addDays('2024-01-01', within(draw, 0, 600));
  const course = { id, draw, joint, usual: within(draw, 1, 7), firstDay, sessions: within(draw, 3, 90) };
  const { rows, lastDay } = sessionsOf(course);
  const age = within(draw, 20, 50) + within(draw, 10, 45);
  const profile = {
    ...{ version: 1, followedJoints: [joint], formulaSex: pick(draw, ['female', 'female', 'male']) },
    ...{ inflammatoryArthritis: draw() < 0.1, errorGroup: pick(draw, groups), diagnosis: `Words on ${id}` },
  };
  return recordWith(
    {
      id,
      givenName: 'Given',
      familyName: `Family ${number}`,
      birthDay: addDays(firstDay, -Math.round(age * 365.25)),
    },
    { ...rows, ...morningsOf(course, lastDay), ...aroundOf(course), care_profile: [profile] },
  );
};

export const madeClinic = (people: number, seed: number): readonly PersonRecord[] => {
  const draw = drawnFrom(seed);
  return Array.from({ length: people }, (_, at) => personOf(at + 1, draw));
};
