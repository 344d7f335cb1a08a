/**
 * The cautions of one prescription version: what every prescription carries, then method, joints,
 * screening, medicines and exercise. The list can be added to and nothing is ever taken out of it;
 * two cautions with one id are said once, and the first stands.
 */

import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Screening } from '#core/screening/screening.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Dose } from '../dose.ts';
import { alwaysCautions, notChecked } from './always.ts';
import { jointCautions } from './by-joint.ts';
import { medicineCautions } from './by-medicine.ts';
import { methodCautions } from './by-method.ts';
import type { Caution } from './caution.ts';
import { screeningCautions } from './from-screening.ts';

export interface CautionsInput {
  readonly dose: Dose;
  readonly screening: Screening | null;
  readonly measurements: readonly Measurement[];
  /** Joints the exercise loads on this patient. */
  readonly joints: readonly Joint[];
  readonly exerciseCautions: readonly Caution[];
  /** The clinic's numbers; what is left out stands at its default. */
  readonly settings: SettingValues;
}

/** Adds cautions to a list; what was there stays, in its order. */
export const withCautions = (present: readonly Caution[], added: readonly Caution[]): readonly Caution[] => {
  const ids = new Set(present.map((caution) => caution.id));
  const list = [...present];
  for (const caution of added) {
    if (ids.has(caution.id)) continue;
    ids.add(caution.id);
    list.push(caution);
  }
  return list;
};

export const cautionsFor = (input: CautionsInput): readonly Caution[] =>
  [
    methodCautions(input.dose),
    jointCautions(input.joints),
    screeningCautions(input.screening, input.dose.method, input.joints, input.settings),
    medicineCautions(input.screening),
    input.exerciseCautions,
    [notChecked(input.dose, input.screening, input.measurements)],
  ].reduce(withCautions, withCautions([], alwaysCautions));
