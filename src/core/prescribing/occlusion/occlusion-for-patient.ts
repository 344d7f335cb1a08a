/** An occlusion dose for this patient, from the measured pressure of the very limb. */
import { homeConditionsOf } from '#core/episode/home-eligibility.ts';
import { answer, type Outcome, type Refusal, refuse } from '#core/outcome.ts';
import type { OcclusionDose } from '../dose.ts';
import type { OcclusionRequestInput } from '../dose-request.ts';
import { notOwnedInWords } from '../low-load/owned-load.ts';
import type { DosedOutcome, PrescribingContext } from '../prescribing-context.ts';
import { proposeOcclusionDose } from './occlusion-dose.ts';
import type { CuffRequest } from './occlusion-request.ts';

const cuffOf = (request: OcclusionRequestInput): Outcome<CuffRequest> => {
  if (request.cuffKind === 'elastic-wrap') {
    return request.tightness === undefined
      ? refuse('tightness', 'missing', 'Give the tightness of the wrap, 0 to 10. A wrap has no pressure.')
      : answer({ kind: 'elastic-wrap', tightness: request.tightness });
  }
  const { cuffWidthCm, position, percent } = request;
  if (cuffWidthCm === undefined)
    return refuse('cuffWidthCm', 'missing', 'Give the width of the cuff in centimetres.');
  if (position === undefined)
    return refuse('position', 'missing', 'Give the position the pressure was measured in.');
  if (percent === undefined)
    return refuse('percent', 'missing', 'Give the share of the measured occlusion pressure.');
  return answer({ kind: 'pneumatic', widthCm: cuffWidthCm, position, percent });
};

/** At home the weight is one that is there; with a clinician present the clinic has its own. */
const weightRefusals = (ownedKg: readonly number[], request: OcclusionRequestInput): readonly Refusal[] => {
  const { supervised, loadKg } = request;
  if (supervised || !(loadKg > 0)) return [];
  const reason =
    ownedKg.length === 0
      ? 'Enter the loads at home first, or work without a weight: 0 kg.'
      : notOwnedInWords(loadKg, ownedKg);
  return reason === null ? [] : [{ field: 'input.loadKg', code: 'not-listed', reason }];
};

export const dosedOcclusion = (
  context: PrescribingContext,
  request: OcclusionRequestInput,
): DosedOutcome<OcclusionDose> => {
  const cuff = cuffOf(request);
  if (!cuff.ok) return cuff;
  const { limb, side, schemeId, exerciseId, loadKg, knownOneRepMaxKg } = request;
  const { supervised, pulseShown, secondsPerRepetition, restSeconds, sessionsPerWeek } = request;
  const newest = context.outcomes.find(
    (row) => row.method === 'occlusion' && row.limb === limb && row.side === side,
  );
  const outcome = proposeOcclusionDose({
    request: {
      exerciseId,
      limb,
      side,
      schemeId,
      secondsPerRepetition,
      restSeconds,
      sessionsPerWeek,
      loadKg,
      oneRepMaxKg: knownOneRepMaxKg ?? null,
      cuff: cuff.result,
      supervised,
      ...(pulseShown === undefined ? {} : { pulseShown }),
      home: limb === 'trunk' || side === 'both' ? null : homeConditionsOf(context.home, { limb, side }),
    },
    outcome: newest ?? null,
    measurements: context.measurements,
    today: context.today,
    settings: context.settings,
  });
  const refused = [...weightRefusals(context.ownedLoadsKg, request), ...(outcome.ok ? [] : outcome.refused)];
  if (!outcome.ok || refused.length > 0) return { ok: false, refused };
  return answer({ ...outcome.result, notes: outcome.notes }, outcome.notes);
};
