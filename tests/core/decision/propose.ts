/** Asks for the dose after a decision, with everything but the question at its plainest. */
import type { DecisionWord, Step } from '#core/decision/answers.ts';
import type { Ladder } from '#core/decision/dose/proposal.ts';
import { type DoseQuestion, nextDose } from '#core/decision/next-dose.ts';
import type { Dose, OcclusionDose, VariationDose } from '#core/prescribing/dose.ts';
import type { Limit } from '#core/record/limit.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import {
  instantOn,
  judgedMorning,
  knee,
  kneeDose,
  lastSession,
  noonOf,
  record,
  session,
  version,
} from './small-record.ts';

const noLadder: Ladder = { harder: () => null, easier: () => null };
export const today = judgedMorning;
export const daysAgo = (days: number): number => instantOn(addDays(today, -days), 12);

interface Asked {
  readonly decision: DecisionWord;
  readonly largestStep?: Step;
  readonly dose?: Dose;
  readonly history?: readonly PrescriptionVersion[];
  readonly owned?: readonly number[];
  readonly limits?: readonly Limit[];
  /** Whether a session was done at the version in force. */
  readonly tried?: boolean;
  readonly more?: Partial<DoseQuestion>;
}

export const propose = ({
  decision,
  largestStep,
  dose = kneeDose,
  history,
  owned,
  limits,
  tried = true,
  more,
}: Asked) => {
  const versions = history ?? [version({ dose, signedAt: daysAgo(40) })];
  const current = versions.at(-1)!;
  const plain = record();
  // The newest session was done at the version in force, unless a test says that nobody has done it.
  const sessions = tried
    ? [...plain.sessions.slice(0, -1), session(lastSession, {}, {}, [current])]
    : plain.sessions;
  return nextDose({
    record: record({
      sessions,
      prescriptions: versions,
      ownedLoadsKg: owned ?? [8, 9, 10, 11, 12.5],
      limits: limits ?? [],
    }),
    item: {
      itemId: current.itemId,
      version: current,
      limitingJoints: [knee],
      decision,
      largestStep: decision === 'progress' ? (largestStep ?? 'load') : null,
      today: 'as-planned',
      contact: 'none',
      reasons: [],
    },
    at: noonOf(today),
    flareDays: 0,
    easeBacksBefore: 0,
    tolerated: [],
    ladder: noLadder,
    ...more,
  });
};

export const top = { ...kneeDose, repetitions: { low: 20, high: 20 } };
/** The band a clinician signed, now worked up to its top. */
export const atTop: readonly PrescriptionVersion[] = [
  version({ signedAt: daysAgo(60), endedAt: daysAgo(40) }),
  version({ id: 'knee-2', version: 2, dose: top, signedAt: daysAgo(40), origin: 'progress' }),
];

export const occlusion: OcclusionDose = {
  method: 'occlusion',
  exerciseId: 'seated-leg-straightening',
  side: 'left',
  limb: 'leg',
  sets: 4,
  scheme: [20, 15, 15, 15],
  restSeconds: 30,
  secondsPerRepetition: 4,
  sessionsPerWeek: 2,
  loadKg: 10,
  oneRepMaxKg: 30,
  cuff: { kind: 'elastic-wrap', tightness: 5 },
  inflation: 'continuous',
  capSeconds: 600,
  supervised: true,
};

export const variation: VariationDose = {
  method: 'variation',
  exerciseId: 'wall-push',
  side: 'both',
  sets: 3,
  restSeconds: 60,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  repetitions: { low: 15, high: 15 },
  reserve: 2,
  effectiveLoadKg: 20,
  addedKg: 0,
};
