/**
 * A number no source fixes: named, bounded, editable by the clinic, stored with every decision it
 * helped to make. Lists of choices stand beside the rules that use them (engine, occlusion, …).
 */
import type { Refusal } from '../outcome.ts';

export interface ClinicSetting {
  /** Kebab-case, fixed once published; the key under which its value is stored. */
  readonly id: string;
  readonly title: string;
  /** UCUM code, '1' for a pure number. */
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
  readonly default: number;
  /** Why this default, and what happens when it is moved. */
  readonly why: string;
}

/** Yes or no: on a screen a switch, 1 is on. */
export const isSwitch = ({ min, max, whole }: Pick<ClinicSetting, 'min' | 'max' | 'whole'>): boolean =>
  whole === true && min === 0 && max === 1;

export type SettingValues = Readonly<Record<string, number>>;

export const defaultsOf = (settings: readonly ClinicSetting[]): SettingValues =>
  Object.fromEntries(settings.map((setting) => [setting.id, setting.default]));

/** Every value out of bounds, unknown or missing, with how to put it right. Empty when all is well. */
export const checkSettings = (
  settings: readonly ClinicSetting[],
  values: SettingValues,
): readonly Refusal[] => {
  const known = new Map(settings.map((setting) => [setting.id, setting]));
  const refusals: Refusal[] = [];
  for (const id of Object.keys(values)) {
    if (!known.has(id)) {
      refusals.push({
        field: `choices.${id}`,
        code: 'unknown-field',
        reason: `There is no clinic choice named ${id}.`,
      });
    }
  }
  for (const setting of settings) {
    const value = values[setting.id];
    const field = `choices.${setting.id}`;
    if (value === undefined || Number.isNaN(value)) {
      refusals.push({ field, code: 'missing', reason: `Give a value for "${setting.title}".` });
    } else if (setting.whole && !Number.isInteger(value)) {
      refusals.push({ field, code: 'wrong-type', reason: `"${setting.title}" is a whole number.` });
    } else if (value < setting.min) {
      refusals.push({ field, code: 'too-low', reason: `"${setting.title}" is at least ${setting.min}.` });
    } else if (value > setting.max) {
      refusals.push({ field, code: 'too-high', reason: `"${setting.title}" is at most ${setting.max}.` });
    }
  }
  return refusals;
};
