/** An invented patient for tests of the plan: three signed exercises, nothing against any of them. */

import type { DangerRecord } from '#core/danger/danger.ts';
import { proposedWording } from '#core/episode/consent.ts';
import type { PlanInputs } from '#core/plan/plan-for.ts';
import type { LowLoadDose, OcclusionDose, VariationDose } from '#core/prescribing/dose.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import { outcomesInput, screeningWith } from '../screening/answers.ts';

export const day = '2026-03-09';
/** Noon of that day. */
export const noon = Date.parse('2026-03-09T12:00:00Z');
export const hour = 3_600_000;
export const hoursAfter = (hours: number): number => noon + hours * hour;

const noDanger: DangerRecord = {
  signs: [],
  acknowledgements: [],
  contacts: [],
  pauses: [],
  resumptions: [],
};

const base = { sets: 3, restSeconds: 90, secondsPerRepetition: 4, sessionsPerWeek: 2 } as const;

export const curl: LowLoadDose = {
  ...base,
  method: 'low-load',
  exerciseId: 'curl-seated-two-kilos',
  side: 'right',
  repetitions: { low: 15, high: 20 },
  reserve: 2,
  loadKg: 2,
  oneRepMaxKg: 6,
};
export const chair: VariationDose = {
  ...base,
  method: 'variation',
  exerciseId: 'sit-to-stand-chair',
  side: 'both',
  repetitions: { low: 8, high: 12 },
  reserve: 2,
  effectiveLoadKg: 30,
  addedKg: 0,
};
const cuff: OcclusionDose = {
  ...base,
  method: 'occlusion',
  exerciseId: 'knee-extension-seated',
  limb: 'leg',
  side: 'right',
  sets: 4,
  scheme: [30, 15, 15, 15],
  loadKg: 1,
  oneRepMaxKg: 5,
  cuff: { kind: 'elastic-wrap', tightness: 5 },
  inflation: 'continuous',
  capSeconds: 900,
  supervised: true,
};

type Dose = PrescriptionVersion['dose'];

export const version = (
  itemId: string,
  dose: Dose,
  joints: PrescriptionVersion['joints'],
  badDay: Dose = { ...dose, sets: 1 } as Dose,
): PrescriptionVersion => ({
  id: `prescription-${itemId}`,
  itemId,
  version: 1,
  dose,
  badDay,
  joints,
  signedAt: noon - 14 * 24 * hour,
  endedAt: null,
  origin: 'clinician',
});

export const versions: readonly PrescriptionVersion[] = [
  version('curl', curl, ['right-elbow', 'right-wrist']),
  version('chair', chair, ['left-knee', 'right-knee', 'left-hip', 'right-hip']),
  version('cuff', cuff, ['right-knee', 'right-hip']),
];

export const inputs = (more: Partial<PlanInputs> = {}): PlanInputs => {
  const screening = screeningWith([], day);
  return {
    versions,
    written: [],
    decisions: [],
    answers: [],
    danger: noDanger,
    limits: [],
    ownedLoadsKg: [0.5, 1, 2],
    lastLoadedAt: new Map(),
    care: {
      episodeStatus: { state: 'not-recorded', change: null, returned: null },
      consents: [
        {
          kind: 'occlusion-supervised',
          act: 'given',
          ...proposedWording,
          at: 0,
          by: 'N. Derravane',
          reason: null,
        },
      ],
      events: [],
      screening: { day, recordedAt: 0 },
    },
    screened: {
      screening,
      clearances: [],
      today: day,
      outcomes: methodOutcomes(outcomesInput({ screening, today: day, measurements: [] })),
    },
    newsToday: false,
    lastSessionOn: null,
    settings: {},
    at: { instant: noon, day },
    ...more,
  };
};
