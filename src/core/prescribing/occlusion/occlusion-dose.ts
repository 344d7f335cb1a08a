/**
 * A proposed occlusion dose, with its working, or every reason why there is none.
 *
 * The pressure comes from a measured limb occlusion pressure of this limb, side, cuff width and
 * position, never from an estimate; an elastic wrap gets a tightness and no pressure. One limb at a
 * time, arms and legs only. It is a proposal: a licensed clinician and local rules decide.
 */

import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { Limb, Side } from '#core/exercises/joints.ts';
import { answer, type Note, type Outcome, type Refusal, refuse } from '#core/outcome.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { defaultsOf, type SettingValues } from '#core/sources/clinic-setting.ts';
import type { Day } from '#core/time/day.ts';
import type { Cuff, OcclusionDose } from '../dose.ts';
import { badDayOf } from './bad-day.ts';
import { unmetHomeConditions } from './home-conditions.ts';
import { exerciseCapSeconds, sessionsPerWeek } from './limits.ts';
import { loadWithinShare } from './occlusion-load.ts';
import type { OcclusionRequest, WorkingLine } from './occlusion-request.ts';
import { type CuffProposal, proposeCuff } from './pressure/cuff-proposal.ts';
import { type OcclusionScheme, occlusionScheme } from './schemes.ts';
import { occlusionSettings } from './settings.ts';
import { checkTiming, timingLine } from './timing.ts';

export interface OcclusionDoseInput {
  readonly request: OcclusionRequest;
  /** What screening leaves of occlusion on this limb and side; null when nobody has judged it. */
  readonly outcome: MethodOutcome | null;
  readonly measurements: readonly Measurement[];
  readonly today: Day;
  readonly settings: SettingValues;
}

export interface ProposedOcclusion {
  readonly dose: OcclusionDose;
  readonly badDay: OcclusionDose;
  readonly working: readonly WorkingLine[];
}

const refusal = (field: string, code: Refusal['code'], reason: string): Refusal => ({
  field: `input.${field}`,
  code,
  reason,
});

/** The limb the cuff may sit on, or why there is none: arms and legs only, one at a time. */
export const occlusionSite = (
  limb: Limb | 'trunk',
  side: Side | 'both',
): Outcome<{ readonly limb: Limb; readonly side: Side }> => {
  if (limb === 'trunk')
    return refuse('request.limb', 'not-listed', 'Occlusion work is for arms and legs only.');
  if (side === 'both') {
    return refuse('request.side', 'not-listed', 'One limb at a time: choose left or right.');
  }
  return answer({ limb, side });
};

const screeningRefusals = (outcome: MethodOutcome | null, limb: Limb, side: Side): readonly Refusal[] => {
  if (!outcome) return [refusal('outcome', 'missing', 'Screen the patient before occlusion is dosed.')];
  if (outcome.method !== 'occlusion' || outcome.limb !== limb || outcome.side !== side) {
    return [refusal('outcome', 'inconsistent', 'The screening outcome is of another method, limb or side.')];
  }
  if (outcome.eligibility === 'closed' || outcome.eligibility === 'closed-until-cleared') {
    const why = outcome.reasons
      .filter((reason) => reason.eligibility === 'closed' || reason.eligibility === 'closed-until-cleared')
      .map((reason) => reason.text);
    return [refusal('outcome', 'inconsistent', `Occlusion is closed on this limb: ${why.join(' ')}`)];
  }
  return [];
};

const weekRefusals = (perWeek: number): readonly Refusal[] => {
  const { low, high } = sessionsPerWeek.value;
  if (!Number.isInteger(perWeek)) {
    return [refusal('request.sessionsPerWeek', 'wrong-type', 'Sessions a week is a whole number.')];
  }
  if (perWeek < low)
    return [refusal('request.sessionsPerWeek', 'too-low', `${low} to ${high} sessions a week.`)];
  if (perWeek > high)
    return [refusal('request.sessionsPerWeek', 'too-high', `${low} to ${high} sessions a week.`)];
  return [];
};

const refusalsOf = (outcome: Outcome<unknown>): readonly Refusal[] => (outcome.ok ? [] : outcome.refused);
const notesOf = (outcome: Outcome<unknown>): readonly Note[] => (outcome.ok ? outcome.notes : []);

const build = (
  request: OcclusionRequest,
  site: { readonly limb: Limb; readonly side: Side },
  scheme: OcclusionScheme,
  cuff: Cuff,
): OcclusionDose => ({
  method: 'occlusion',
  exerciseId: request.exerciseId,
  limb: site.limb,
  side: site.side,
  sets: scheme.repetitions.length,
  scheme: [...scheme.repetitions],
  restSeconds: request.restSeconds,
  secondsPerRepetition: request.secondsPerRepetition,
  sessionsPerWeek: request.sessionsPerWeek,
  loadKg: request.loadKg,
  oneRepMaxKg: request.oneRepMaxKg,
  cuff,
  inflation: request.inflation ?? scheme.inflation,
  capSeconds: exerciseCapSeconds.value,
  supervised: request.supervised,
  ...(request.pulseShown === undefined ? {} : { pulseShown: request.pulseShown }),
});

const workingOf = (
  request: OcclusionRequest,
  scheme: OcclusionScheme,
  proposal: CuffProposal,
  loadLine: WorkingLine,
): readonly WorkingLine[] => [
  proposal.working,
  loadLine,
  {
    text: `Scheme ${scheme.repetitions.join('/')} (${scheme.citation.mark}).`,
    support: scheme.citation.mark === 'common-practice' ? 'common-practice' : scheme.citation.source,
  },
  timingLine(request, scheme),
  {
    text: `${request.sessionsPerWeek} sessions a week, within ${sessionsPerWeek.value.low} to ${sessionsPerWeek.value.high}.`,
    support: sessionsPerWeek.citation.source,
  },
];

export const proposeOcclusionDose = (input: OcclusionDoseInput): Outcome<ProposedOcclusion> => {
  const { request } = input;
  const settings = { ...defaultsOf(occlusionSettings), ...input.settings };
  const site = occlusionSite(request.limb, request.side);
  if (!site.ok) return site;
  const scheme = occlusionScheme(request.schemeId);
  if (!scheme) return refuse('request.schemeId', 'not-listed', 'Choose one of the listed schemes.');
  const cuff = proposeCuff(request.cuff, site.result, input.measurements, input.today, settings);
  const load = loadWithinShare(request.loadKg, request.oneRepMaxKg);
  const timing = checkTiming(request, scheme);
  const home = request.supervised
    ? []
    : unmetHomeConditions(request.home, request.cuff.kind === 'elastic-wrap');
  const refused = [
    ...screeningRefusals(input.outcome, site.result.limb, site.result.side),
    ...refusalsOf(cuff),
    ...refusalsOf(load),
    ...refusalsOf(timing),
    ...weekRefusals(request.sessionsPerWeek),
    ...home,
  ];
  if (refused.length > 0 || !cuff.ok || !load.ok) return { ok: false, refused };
  const dose = build(request, site.result, scheme, cuff.result.cuff);
  return answer(
    { dose, badDay: badDayOf(dose), working: workingOf(request, scheme, cuff.result, load.result) },
    [...notesOf(cuff), ...notesOf(load), ...notesOf(timing)],
  );
};
