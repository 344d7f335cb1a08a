/** The engine over every stored session against reading them. */
import { say } from '#commands/say.mjs';
import { evaluate } from '#core/decision/scope.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { addDays, daysBetween } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { openStore } from '#data/open-store.ts';
import { recordOf } from '#data/patients/record.ts';
import { gatherAnew } from '#data/replay/gather-anew.ts';
import { accessTo, groupFile } from '../group/make-group.ts';
import { dayOf, type GroupPlan, intake, now, patientId } from '../group/plan.ts';
import { leastPairs, pairedOf } from '../pairs.ts';
import { type Measured, type Part, rounded } from '../part.ts';
import { type RawReader, rawRecord } from '../raw-record.ts';

/** Back to before the first session of the group, and no further: every day of a record is looked at. */
const daysOfRecord = (plan: GroupPlan): number => daysBetween(dayOf(intake(plan)), dayOf(now)) + 1;

const bar = 2;
/** A look at each morning and each session, about three where the part above has one: told without a bar. */
const gatheredBar = null;
/** Hours after a session at which its decision is made: the morning after is in by then. */
const untilDecided = 16 * 3_600_000;

/** One evaluation for each session, as it was made on the morning after. */
const evaluateAll = (record: PatientRecord): number => {
  for (const session of record.sessions) {
    evaluate(record, { instant: session.beganAt + untilDecided, day: addDays(session.day, 1) });
  }
  return record.sessions.length;
};

const replayPatients = async (access: Access, days: number, from: number, until: number): Promise<number> => {
  let sessions = 0;
  for (let patient = from; patient < until; patient++) {
    const record = await recordOf(access, patientId(patient), days);
    if (record) sessions += evaluateAll(record);
  }
  return sessions;
};

const readPatients = (raw: RawReader, access: Access, days: number, from: number, until: number): number => {
  let rows = 0;
  for (let patient = from; patient < until; patient++) rows += raw.read(access, patientId(patient), days);
  return rows;
};

const clocked = async <T>(work: () => Promise<T> | T): Promise<readonly [T, number]> => {
  const began = performance.now();
  const value = await work();
  return [value, performance.now() - began];
};

type Replay = (access: Access, days: number, from: number, until: number) => Promise<number>;

/** Every look of each patient as it was known then: at each entry that arrived and each decision that was stored. */
const gatherPatients =
  (plan: GroupPlan): Replay =>
  async (access, _days, from, until) => {
    let looks = 0;
    for (let patient = from; patient < until; patient++)
      looks += (await gatherAnew(access, patientId(patient), dayOf(intake(plan)))).length;
    return looks;
  };

/** Patients in groups, each replayed and read once, whichever first changing from group to group. */
const wholeGroup = async (access: Access, plan: GroupPlan, how: Replay) => {
  const { patients } = plan;
  const days = daysOfRecord(plan);
  const raw = rawRecord(access.store.reader.client);
  const size = Math.max(1, Math.floor(patients / (leastPairs + 20)));
  const times: [number, number][] = [];
  const found = { replayed: 0, rows: 0 };
  for (let from = 0; from < patients; from += size) {
    const until = Math.min(patients, from + size);
    const replay = () => clocked(() => how(access, days, from, until));
    const read = () => clocked(() => readPatients(raw, access, days, from, until));
    const isReplayFirst = times.length % 2 === 0;
    const early = isReplayFirst ? await replay() : await read();
    const late = isReplayFirst ? await read() : await replay();
    const [[replayed, replayMs], [rows, readMs]] = isReplayFirst ? [early, late] : [late, early];
    found.replayed += replayed;
    found.rows += rows;
    times.push([replayMs, readMs]);
    if (times.length % 10 === 0) say(`  ${found.replayed} replayed`);
  }
  return { times, found };
};

export const replayPart: Part = {
  name: 'replay',
  about: 'engine over every stored session ÷ reading them raw',
  run: async (settings): Promise<readonly Measured[]> => {
    const { plan } = settings;
    const store = openStore(await groupFile(plan));
    const measured = async (title: string, atMost: number | null, how: Replay): Promise<Measured> => {
      const { times, found } = await wholeGroup(accessTo(store), plan, how);
      const total = (side: 0 | 1) => times.reduce((sum, pair) => sum + pair[side], 0) / 1000;
      const figures = {
        ...found,
        'replay s': rounded(total(0)),
        'reading s': rounded(total(1)),
        'replayed per s': Math.round(found.replayed / total(0)),
      };
      return { part: 'replay', title, bar: atMost, paired: pairedOf(times), figures };
    };
    try {
      return [
        await measured(replayPart.about, bar, replayPatients),
        await measured(
          'facts of every look gathered anew ÷ reading them raw',
          gatheredBar,
          gatherPatients(plan),
        ),
      ];
    } finally {
      store.close();
    }
  },
};
