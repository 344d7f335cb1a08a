/**
 * A machine of the clinic, with the loads that exist on it. It is corrected by a later entry in its place and
 * retired rather than deleted, since signed doses name it.
 *
 * Kilograms are those that stand on the machine. Pulleys and levers make of them another force at the joint
 * (common knowledge of the trade, no source), so loads of two machines are never compared.
 */
import type { Field, InputOf } from '../calculations/describe.ts';
import { machineKinds } from '../exercises/machine-kinds.ts';
import type { Refusal } from '../outcome.ts';
import { kilogramsFromMilligrams, milligrams } from '../units/units.ts';

/** Common practice, no source: plates chosen by a pin, or discs put on a lever. */
export const machineLoadings = ['stack', 'lever'] as const;

const text = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 2, maxLength, about }) as const;

/** Bounds against slips of typing; no source. */
const load = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'number', unit: 'kg', min: 0.25, max: 300, about }) as const;

export const machineFields = [
  text('name', 60, 'Name'),
  { name: 'kind', kind: 'enum', values: machineKinds, about: 'Kind' },
  { name: 'loading', kind: 'enum', values: machineLoadings, about: 'How it is loaded' },
  text('place', 80, 'Where it stands'),
  load('firstKg', 'First load'),
  load('stepKg', 'Step'),
  load('lastKg', 'Last load'),
  { name: 'hasHalfStep', kind: 'flag', about: 'Half a step can be added' },
] as const satisfies readonly Field[];

export type MachineInput = InputOf<typeof machineFields>;

export interface ClinicMachine extends MachineInput {
  readonly id: string;
  /** 1, and one more with each entry that takes the place of the one before. */
  readonly version: number;
  readonly isRetired: boolean;
  /** Instant at which this version was entered; left out = not known. */
  readonly writtenAt?: number;
}

/** A choice of this project: more steps than any stack has. */
const mostLoads = 200;

const refusal = (field: 'stepKg' | 'lastKg', reason: string): Refusal => ({
  field: `input.${field}`,
  code: 'inconsistent',
  reason,
});

/** Steps lead from the first load exactly to the last one. */
export const machineRefusals = ({ firstKg, stepKg, lastKg }: MachineInput): readonly Refusal[] => {
  const way = milligrams(lastKg) - milligrams(firstKg);
  if (way < 0)
    return [refusal('lastKg', `The last load is lighter than the first, ${firstKg} kg: type the heaviest.`)];
  const steps = Math.floor(way / milligrams(stepKg));
  if (way % milligrams(stepKg) !== 0) {
    const reached = kilogramsFromMilligrams(milligrams(firstKg) + steps * milligrams(stepKg));
    const reason = `Steps of ${stepKg} kg lead from ${firstKg} kg to ${reached} kg and then past ${lastKg} kg. Type a last load that they reach.`;
    return [refusal('lastKg', reason)];
  }
  return steps >= mostLoads
    ? [refusal('stepKg', `That makes more than ${mostLoads} loads: type a larger step.`)]
    : [];
};

/** Every load that exists on it, lightest first: half a step lies between two of them and never over the last. */
export const machineLoadsKg = ({
  firstKg,
  stepKg,
  lastKg,
  hasHalfStep,
}: Pick<MachineInput, 'firstKg' | 'stepKg' | 'lastKg' | 'hasHalfStep'>): readonly number[] => {
  const [first, step, last] = [milligrams(firstKg), milligrams(stepKg), milligrams(lastKg)];
  const whole = Array.from({ length: Math.floor((last - first) / step) + 1 }, (_, at) => first + at * step);
  const half = hasHalfStep ? whole.slice(0, -1).map((load) => load + Math.round(step / 2)) : [];
  return [...whole, ...half].sort((a, b) => a - b).map(kilogramsFromMilligrams);
};

/** All of its loads lie as far apart. */
export const apartKg = ({ stepKg, hasHalfStep }: Pick<MachineInput, 'stepKg' | 'hasHalfStep'>): number =>
  hasHalfStep ? kilogramsFromMilligrams(Math.round(milligrams(stepKg) / 2)) : stepKg;
