/** The cuff of a dose: a pressure from a measurement of this limb, or a wrap with a tightness and no pressure. */

import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { Limb, Side } from '#core/exercises/joints.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import type { Cuff } from '#core/prescribing/dose.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Day } from '#core/time/day.ts';
import { percentOfOcclusionPressure } from '../limits.ts';
import type { CuffRequest, WorkingLine } from '../occlusion-request.ts';
import { checkTightness } from './elastic-wrap.ts';
import { measuredPressureFor } from './measured-pressure.ts';
import { wholeTargetMmhg } from './occlusion-target.ts';

export interface CuffProposal {
  readonly cuff: Cuff;
  readonly working: WorkingLine;
}

type PneumaticRequest = Extract<CuffRequest, { kind: 'pneumatic' }>;

const pneumatic = (
  request: PneumaticRequest,
  site: { readonly limb: Limb; readonly side: Side },
  measurements: readonly Measurement[],
  today: Day,
  settings: SettingValues,
): Outcome<CuffProposal> => {
  const { low, high } = percentOfOcclusionPressure.value;
  if (!(request.percent >= low)) {
    return refuse(
      'request.cuff.percent',
      'too-low',
      `Use ${low} to ${high} % of the measured occlusion pressure.`,
    );
  }
  if (request.percent > high) {
    return refuse(
      'request.cuff.percent',
      'too-high',
      `Use ${low} to ${high} % of the measured occlusion pressure.`,
    );
  }
  const plan = { ...site, cuffWidthCm: request.widthCm, position: request.position };
  const measured = measuredPressureFor(measurements, plan, today, settings);
  if (!measured.ok) return measured;
  const { pressureMmhg: limbOcclusionPressureMmhg, measurement } = measured.result;
  const pressureMmhg = wholeTargetMmhg(limbOcclusionPressureMmhg, request.percent);
  return answer(
    {
      cuff: {
        kind: 'pneumatic',
        widthCm: request.widthCm,
        position: request.position,
        pressureMmhg,
        percentOfLimbOcclusionPressure: request.percent,
        limbOcclusionPressureMmhg,
        measuredOn: measurement.day,
      },
      working: {
        text: `${limbOcclusionPressureMmhg} mmHg (lower of ${measurement.firstMmhg} and ${measurement.secondMmhg}, ${site.side} ${site.limb}, ${request.widthCm} cm, ${request.position}, ${measurement.day}) × ${request.percent} % = ${pressureMmhg} mmHg.`,
        support: percentOfOcclusionPressure.citation.source,
      },
    },
    measured.notes,
  );
};

export const proposeCuff = (
  request: CuffRequest,
  site: { readonly limb: Limb; readonly side: Side },
  measurements: readonly Measurement[],
  today: Day,
  settings: SettingValues,
): Outcome<CuffProposal> => {
  if (request.kind === 'pneumatic') return pneumatic(request, site, measurements, today, settings);
  const checked = checkTightness(request.tightness);
  if (!checked.ok) {
    return {
      ok: false,
      refused: checked.refused.map((one) => ({ ...one, field: 'input.request.cuff.tightness' })),
    };
  }
  const target = settings['wrap-tightness-target']!;
  const aboveTarget: Note = {
    code: 'tightness-above-clinic-target',
    text: `Above the clinic's target of ${target}.`,
  };
  return answer(
    {
      cuff: { kind: 'elastic-wrap', tightness: request.tightness },
      working: {
        text: `Elastic wrap at tightness ${request.tightness} of 10, target ${target}; its pressure is not known.`,
        support: 'wrap-tightness-2018',
      },
    },
    request.tightness > target ? [...checked.notes, aboveTarget] : checked.notes,
  );
};
