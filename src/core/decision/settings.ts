/**
 * Every number of the decision rules that no source fixes. Each needs a physiotherapist's sign-off.
 * The values in force are stored with each decision, so that an old decision replays to the same answer.
 */
import type { ClinicSetting, SettingValues } from '../sources/clinic-setting.ts';
import { doseSettings } from './dose-settings.ts';
import { ruleSettings } from './rule-settings.ts';

export const engineSettings = [...ruleSettings, ...doseSettings] as const satisfies readonly ClinicSetting[];

export type EngineSettingId = (typeof engineSettings)[number]['id'];
export type EngineSettingValues = Readonly<Record<EngineSettingId, number>>;

export const engineDefaults = Object.fromEntries(
  engineSettings.map((setting) => [setting.id, setting.default]),
) as EngineSettingValues;

const completed = new WeakMap<SettingValues, EngineSettingValues>();

/**
 * The stored values with any choice added since then at its default, so that a decision stored
 * under an earlier list still replays.
 */
export const engineSettingValues = (values?: SettingValues): EngineSettingValues => {
  if (!values) return engineDefaults;
  let whole = completed.get(values);
  if (!whole) {
    whole = { ...engineDefaults, ...values };
    completed.set(values, whole);
  }
  return whole;
};
