/**
 * An elastic wrap gives a felt tightness 0-10 and never a pressure.
 *
 * There is no gauge: the pressure depends on material, width, layers and the limb. At a felt 7 of 10
 * the group means were 81 % (arm) and 70 % (leg) of occlusion pressure, and for one person the same
 * feeling varied by about a fifth to a quarter between days, arms often above occlusion. So nothing
 * here converts a tightness into mmHg or into a share of occlusion pressure.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';

const wrapTightness = { warnFrom: 8, reject: 10 } as const;

const wrapPressureUnknown: Note = {
  code: 'pressure-unknown',
  text: 'An elastic wrap has no known pressure, neither in mmHg nor as a share of occlusion pressure.',
};

export const checkTightness = (tightness: number): Outcome<{ readonly tightness: number }> => {
  if (!Number.isInteger(tightness))
    return refuse('tightness', 'wrong-type', 'Tightness is a whole number from 0 to 10.');
  if (tightness < 0) return refuse('tightness', 'too-low', 'Tightness is a whole number from 0 to 10.');
  if (tightness >= wrapTightness.reject) {
    return refuse(
      'tightness',
      'too-high',
      'Ten of ten is as tight as can be and may close the artery; aim for 7.',
    );
  }
  const high: Note = {
    code: 'tightness-high',
    text: 'Above the target of 7: loosen unless a clinician stands beside it.',
  };
  return answer(
    { tightness },
    tightness >= wrapTightness.warnFrom ? [high, wrapPressureUnknown] : [wrapPressureUnknown],
  );
};

/** Length to which a wrap is drawn around the limb, as one reading of "restraint per cent". */
export const elasticWrapLength = calculation({
  id: 'elastic-wrap-length',
  title: 'Length of an elastic wrap at a given restraint',
  area: 'occlusion',
  input: [
    {
      name: 'circumferenceCm',
      kind: 'number',
      unit: 'cm',
      min: 15,
      max: 100,
      about: 'Resting limb where the wrap sits.',
    },
    { name: 'restraintPercent', kind: 'number', unit: '%', min: 0, max: 30, about: '10-30 % is described.' },
  ],
  result: [{ name: 'lengthCm', unit: 'cm' }],
  citations: [
    { source: 'wrap-stretch-2022', locator: 'restraint of 10-30 % of resting circumference', mark: 'seen' },
    {
      source: 'wrap-tightness-2018',
      locator: 'own reading: length = circumference × (1 − restraint)',
      mark: 'computed',
    },
  ],
  calculate: ({ circumferenceCm, restraintPercent }) =>
    answer({ lengthCm: (circumferenceCm * (100 - restraintPercent)) / 100 }, [wrapPressureUnknown]),
  example: { circumferenceCm: 55, restraintPercent: 15 },
});
