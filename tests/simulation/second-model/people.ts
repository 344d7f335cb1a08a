/** Arms that only look on, so that what befalls the people of the second model can be counted. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { MorningRecord, SessionRecord } from '#core/record/record.ts';
import { followSecond } from '#simulation/second-model/course.ts';
import { secondPeople } from '#simulation/second-model/model.ts';
import { type Arm, noActs, type PlannedWork, type TrueJoint } from '#simulation/trial/arm.ts';

export const dose: LowLoadDose = {
  method: 'low-load',
  exerciseId: 'leg-press',
  side: 'left',
  sets: 3,
  repetitions: { low: 12, high: 15 },
  restSeconds: 60,
  secondsPerRepetition: 4,
  reserve: 2,
  sessionsPerWeek: 3,
  loadKg: 20,
  oneRepMaxKg: null,
};
export const easier: LowLoadDose = { ...dose, sets: 2, loadKg: 12 };

export interface Seen {
  readonly mornings: (MorningRecord | null)[];
  readonly sessions: SessionRecord[];
  readonly joints: TrueJoint[];
  readonly told: unknown[];
  readonly calls: string[];
}

/** Gives `of(day)` on each training day; null = no session at all. */
export const onlooker = (of: (day: number) => LowLoadDose | null, seen: Seen, talks = false): Arm => ({
  id: 'onlooker',
  title: 'Looks on',
  treat: (person) => {
    seen.told.push(person);
    return {
      morning: (day, entry) => {
        seen.calls.push(`morning ${day}`);
        seen.mornings.push(entry);
      },
      look: (day) => void seen.calls.push(`look ${day}`),
      planned: (day) => void seen.calls.push(`planned ${day}`),
      work: (day, _pain, joint): PlannedWork | null => {
        seen.joints.push(joint);
        const given = of(day);
        return given && { kind: 'full', prescriptionId: 'line-1', dose: given, easier };
      },
      session: (day, entry) => {
        seen.calls.push(`session ${day}`);
        seen.sessions.push(entry);
      },
      dose: () => dose,
      acts: () => ({ ...noActs, talkedAboutOverdoing: talks }),
    };
  },
});

export const nothing = (): Seen => ({ mornings: [], sessions: [], joints: [], told: [], calls: [] });

export const follow = (
  type: string,
  { people = 150, weeks = 13, seed = 41, given = null as LowLoadDose | null, talks = false } = {},
) =>
  secondPeople(type, { people, weeks: [weeks], seed }).map((person) => {
    const seen = nothing();
    return {
      person,
      seen,
      days: followSecond(
        person,
        onlooker(() => given, seen, talks),
      ),
    };
  });

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export const deviation = (values: readonly number[]): number => {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
};

export const quantile = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))]!;
