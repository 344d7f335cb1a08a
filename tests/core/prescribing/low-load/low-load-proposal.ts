/** A low-load proposal under the clinic's default choices, for the tests of the dose. */
import { type LowLoadProposal, lowLoadWork } from '#core/prescribing/low-load/low-load-dose.ts';
import type { LowLoadInput } from '#core/prescribing/low-load/low-load-input.ts';
import { strengthSettings } from '#core/prescribing/low-load/settings.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';
import { resultOf } from '../../assessment/strength/result-of.ts';

export const settings = defaultsOf(strengthSettings);

export const propose = (input: LowLoadInput, other: Record<string, number> = {}) =>
  lowLoadWork(input, { ...settings, ...other });

export const proposal = (input: LowLoadInput): LowLoadProposal => resultOf(propose(input));

export const warned = (input: LowLoadInput): readonly string[] =>
  proposal(input).warnings.map(({ code }) => code);

/** A maximum of ten, so that kilograms read as tenths of it. */
export const knownTen = { knownOneRepMaxKg: 10, availableKg: [1, 2, 3, 4, 5, 6] };
