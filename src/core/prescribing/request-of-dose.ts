/** A dose as the request that asks for it again, so that a form starts from what is in force. */
import { heldSeconds } from '../decision/dose/volume.ts';
import type { Cuff, Dose, OcclusionDose, VariationDose } from './dose.ts';
import { occlusionSchemes } from './occlusion/schemes.ts';
import { newestTest, type PrescribingContext } from './prescribing-context.ts';

/** By the names of the fields of a request; what a dose does not tell is left out and asked anew. */
export type RequestValues = Readonly<Record<string, string | number | boolean>>;

const cuffValues = (cuff: Cuff): RequestValues =>
  cuff.kind === 'elastic-wrap'
    ? { cuffKind: cuff.kind, tightness: cuff.tightness }
    : {
        cuffKind: cuff.kind,
        cuffWidthCm: cuff.widthCm,
        position: cuff.position,
        percent: cuff.percentOfLimbOcclusionPressure,
      };

/** A scheme that was changed since is no scheme of the list, and is asked anew. */
const schemeOf = ({ scheme, inflation }: OcclusionDose): RequestValues => {
  const found = occlusionSchemes.filter(
    (one) => one.repetitions.join() === scheme.join() && one.inflation === inflation,
  );
  return found.length === 1 ? { schemeId: found[0]!.id } : {};
};

const knownMaximum = (oneRepMaxKg: number | null): RequestValues =>
  oneRepMaxKg === null ? {} : { knownOneRepMaxKg: oneRepMaxKg };

const variationValues = ({ addedKg, hold, mark }: VariationDose): RequestValues => ({
  ...(addedKg > 0 ? { addedKg } : {}),
  ...(hold ? { holdSeconds: hold.seconds, mostHoldSeconds: hold.mostSeconds } : {}),
  ...(mark === undefined ? {} : { mark }),
});

const methodValues = (context: Pick<PrescribingContext, 'measurements'>, dose: Dose): RequestValues => {
  if (dose.method === 'occlusion') {
    const { limb, loadKg, oneRepMaxKg, cuff, supervised, pulseShown } = dose;
    return {
      limb,
      loadKg,
      ...schemeOf(dose),
      ...knownMaximum(oneRepMaxKg),
      ...cuffValues(cuff),
      supervised,
      ...(pulseShown === undefined ? {} : { pulseShown }),
    };
  }
  const { sets, repetitions, reserve } = dose;
  const work = { sets, repetitionsLow: repetitions.low, repetitionsHigh: repetitions.high, reserve };
  if (dose.method === 'variation') return { ...variationValues(dose), ...work };
  // A test is read anew; a maximum somebody gave is given again.
  const isTested = newestTest(context, dose) !== undefined;
  const machine: RequestValues = dose.machine ? { machineId: dose.machine.id } : {};
  return { ...machine, loadKg: dose.loadKg, ...work, ...(isTested ? {} : knownMaximum(dose.oneRepMaxKg)) };
};

export const requestOfDose = (
  context: Pick<PrescribingContext, 'measurements'>,
  dose: Dose,
): RequestValues => ({
  exerciseId: dose.exerciseId,
  side: dose.side,
  ...methodValues(context, dose),
  restSeconds: dose.restSeconds,
  ...(heldSeconds(dose) === null ? { secondsPerRepetition: dose.secondsPerRepetition } : {}),
  sessionsPerWeek: dose.sessionsPerWeek,
});
