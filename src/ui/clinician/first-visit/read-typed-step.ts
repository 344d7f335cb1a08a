/** Reads what was typed into a step, and gathers what cannot be read. */
import type { Problem } from '#ui/design-system/error-summary.tsx';
import { fieldAt } from '../forms/submit-problems.ts';
import { numberAt } from '../forms/typed.ts';
import type { Typed } from './first-visit-state.ts';
import { stepFields } from './step-fields.ts';

export interface Reading {
  readonly problems: Problem[];
  readonly isTyped: (name: string) => boolean;
  readonly text: (name: string, why: string) => string;
  readonly numberOrNull: (name: string) => number | null;
}

export const reading = (typed: Typed): Reading => {
  const problems: Problem[] = [];
  return {
    problems,
    isTyped: (name) => (typed[name] ?? '').trim() !== '',
    text: (name, why) => {
      const value = (typed[name] ?? '').trim();
      if (value === '') problems.push({ field: name, text: why });
      return value;
    },
    numberOrNull: (name) => {
      const text = (typed[name] ?? '').trim();
      const field = fieldAt(stepFields, name);
      if (text === '' || !field) return null;
      const read = numberAt(field, name, text);
      problems.push(...read.problems);
      return read.problems.length > 0 ? Number.NaN : Number(read.value);
    },
  };
};

/** Both or neither: half of a pair is asked for. */
export const pair = (read: Reading, first: string, second: string, why: string) => {
  const [a, b] = [read.numberOrNull(first), read.numberOrNull(second)];
  if ((a === null) !== (b === null)) read.problems.push({ field: a === null ? first : second, text: why });
  return a === null || b === null || Number.isNaN(a + b) ? null : ([a, b] as const);
};

/** Runs one part; null when something in it could not be read, so that the part is left out. */
export const whole = <T>(read: Reading, part: () => T): T | null => {
  const before = read.problems.length;
  const value = part();
  return read.problems.length === before ? value : null;
};
