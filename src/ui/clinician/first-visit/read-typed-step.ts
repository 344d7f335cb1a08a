/** Reads what was typed into a step, and gathers what cannot be read. */
import { say } from '#messages/en/staff/first-visit.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import type { Typed } from './first-visit-state.ts';

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
      const value = readNumber(typed[name] ?? '');
      if (Number.isNaN(value)) problems.push({ field: name, text: say('type-a-number') });
      return value;
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
