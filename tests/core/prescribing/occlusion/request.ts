/** An invented request for an occlusion exercise, with the measurement and screening outcome that allow it. */
import type { HomeConditions } from '#core/prescribing/occlusion/home-conditions.ts';
import { type OcclusionDoseInput, proposeOcclusionDose } from '#core/prescribing/occlusion/occlusion-dose.ts';
import type { OcclusionRequest } from '#core/prescribing/occlusion/occlusion-request.ts';
import type { OcclusionPressureMeasurement } from '#core/prescribing/occlusion/pressure/measured-pressure.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';

export const measured: OcclusionPressureMeasurement = {
  kind: 'limb-occlusion-pressure',
  day: '2026-02-23',
  limb: 'leg',
  side: 'left',
  cuffWidthCm: 18,
  position: 'seated',
  method: 'doppler',
  firstMmhg: 205,
  secondMmhg: 203,
};
export const outcome: MethodOutcome = {
  method: 'occlusion',
  limb: 'leg',
  side: 'left',
  eligibility: 'open',
  reasons: [],
};
const request: OcclusionRequest = {
  exerciseId: 'knee-extension-cuff-weight',
  limb: 'leg',
  side: 'left',
  schemeId: 'thirty-then-fifteens',
  secondsPerRepetition: 4,
  restSeconds: 30,
  sessionsPerWeek: 2,
  loadKg: 12,
  oneRepMaxKg: 40,
  cuff: { kind: 'pneumatic', widthCm: 18, position: 'seated', percent: 60 },
  supervised: true,
  home: null,
};
export const propose = (changed: Partial<OcclusionRequest> = {}, around: Partial<OcclusionDoseInput> = {}) =>
  proposeOcclusionDose({
    request: { ...request, ...changed },
    outcome,
    measurements: [measured],
    today: '2026-03-02',
    settings: {},
    ...around,
  });
export const proposed = (...args: Parameters<typeof propose>) => {
  const answered = propose(...args);
  if (!answered.ok) throw new Error(answered.refused.map(({ reason }) => reason).join(' '));
  return answered.result;
};
export const refused = (...args: Parameters<typeof propose>) => {
  const answered = propose(...args);
  return answered.ok ? [] : answered.refused.map(({ field, code }) => `${field} ${code}`);
};
export const notes = (...args: Parameters<typeof propose>) => {
  const answered = propose(...args);
  return answered.ok ? answered.notes.map(({ code }) => code) : [];
};

/** Every condition of work at home met, the wrap not opened. */
export const home: HomeConditions = {
  observedSessions: 2,
  releasesWithEitherHand: true,
  feelingIntact: true,
  knowsToRelease: true,
  wrapOpenedForLimb: false,
};
