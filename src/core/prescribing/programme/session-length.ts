/**
 * How long one exercise takes at home, roughly: the sets by their tempo, the rests between, and the time
 * to change to the next exercise. An estimate for planning; nobody is held to it.
 */
import { defaultsOf } from '#core/sources/clinic-setting.ts';
import type { Dose } from '../dose.ts';
import { type ProgrammeSettingId, programmeSettings } from './settings.ts';

export type ProgrammeValues = Readonly<Record<ProgrammeSettingId, number>>;

export const programmeDefaults = defaultsOf(programmeSettings) as ProgrammeValues;

/** Common practice after release, and part of every session with a cuff. */
const seatedSeconds = 120;

const repetitionsOf = (dose: Dose): number =>
  dose.method === 'occlusion'
    ? dose.scheme.reduce((sum, repetitions) => sum + repetitions, 0)
    : (dose.sets * (dose.repetitions.low + dose.repetitions.high)) / 2;

export const exerciseSeconds = (dose: Dose, values: ProgrammeValues = programmeDefaults): number =>
  repetitionsOf(dose) * dose.secondsPerRepetition +
  Math.max(0, dose.sets - 1) * dose.restSeconds +
  (dose.method === 'occlusion' ? seatedSeconds : 0) +
  values['exercise-change-seconds'];

/** Whole minutes, rounded up: a session announced as shorter than it is gets broken off. */
export const sessionMinutes = (doses: readonly Dose[], values: ProgrammeValues = programmeDefaults): number =>
  Math.ceil(doses.reduce((sum, dose) => sum + exerciseSeconds(dose, values), 0) / 60);
