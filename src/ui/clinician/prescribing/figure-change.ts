/** What a figure typed changes from the one in force, in words, as it is typed. */
import { unitWords } from '#api/inputs/unit-words.ts';
import type { NumberField } from '#core/calculations/describe.ts';
import { largeStepPercent } from '#core/decision/dose/volume.ts';
import { nearestOwnedKg } from '#core/prescribing/low-load/owned-load.ts';
import { figure } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { readNumber } from '#ui/design-system/read-number.ts';

/** Beside a figure a second is an s. */
export const shortUnit = (unit: string): string => (unit === 's' ? unit : unitWords(unit));

interface FigureChange {
  readonly text: string;
  /** It is large, or cannot be done with what is at home or on the machine. */
  readonly isCare: boolean;
}

/** A hair over 10 % as a quotient is still 10 to 11 kg. */
const isLarge = (percent: number): boolean => percent - largeStepPercent > 1e-9;

const stepInWords = (field: NumberField, now: number, value: number): FigureChange => {
  const step = value - now;
  const sign = step > 0 ? '+' : '−';
  const shown = { sign, step: String(Math.abs(Math.round(step * 100) / 100)), unit: shortUnit(field.unit) };
  if (field.unit !== 'kg' || now <= 0) return { text: say('figures.step', shown).trim(), isCare: false };
  const percent = (Math.abs(step) / now) * 100;
  const withPercent = { ...shown, percent: figure(percent) };
  return step > 0 && isLarge(percent)
    ? { text: say('figures.step-large', withPercent), isCare: true }
    : { text: say('figures.step-percent', withPercent), isCare: false };
};

/** null = nothing to say: the same as now, nothing in force, or no number yet. `ownedKg`: of the load alone. */
export const figureChange = (
  field: NumberField,
  now: string | undefined,
  typed: string,
  ownedKg: readonly number[] | null,
  isOnMachine = false,
): FigureChange | null => {
  const value = readNumber(typed);
  if (value === null) return now ? { text: say('figures.empty-now'), isCare: false } : null;
  if (Number.isNaN(value)) return null;
  const nearest = ownedKg && ownedKg.length > 0 ? nearestOwnedKg(value, ownedKg) : null;
  const notThere = isOnMachine ? 'figures.not-of-machine' : 'figures.not-owned';
  if (nearest) return { text: say(notThere, { loads: nearest.join(', ') }), isCare: true };
  const before = now === undefined ? null : readNumber(now);
  return before === null || before === value ? null : stepInWords(field, before, value);
};
