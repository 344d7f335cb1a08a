/** An occlusion dose for this patient, from the measured pressure of the very limb. */
import { homeConditionsOf } from '#core/episode/home-eligibility.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';
import type { OcclusionDose } from '../dose.ts';
import type { OcclusionRequestInput } from '../dose-request.ts';
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
  if (!outcome.ok) return outcome;
  return answer({ ...outcome.result, notes: outcome.notes }, outcome.notes);
};
