/**
 * Every number of the decision rules that no source fixes. Each needs a physiotherapist's sign-off.
 * The values in force are stored with each decision, so that an old decision replays to the same answer.
 */
import type { ClinicSetting, SettingValues } from '../sources/clinic-setting.ts';
import { doseSettings } from './dose-settings.ts';
import { morningSettings } from './morning-settings.ts';
import { ruleSettings } from './rule-settings.ts';
import { version3Settings } from './version-3-settings.ts';

/** Versions of the rules that can decide, the newest last. */
export const engineVersions = [1, 2] as const;
export type EngineVersion = (typeof engineVersions)[number];
export const newestVersion: EngineVersion = 2;

const versionSetting = {
  id: 'engine-version',
  title: 'Version of the decision rules',
  unit: '1',
  whole: true,
  min: 1,
  max: newestVersion,
  default: newestVersion,
  why: 'Version 2 cut the dose of invented people less often for ordinary scatter. Decisions already made keep the version they were made with.',
} as const satisfies ClinicSetting;

export const engineSettings = [
  versionSetting,
  ...ruleSettings,
  ...morningSettings,
  ...doseSettings,
  ...version3Settings,
] as const satisfies readonly ClinicSetting[];

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

export const engineVersionOf = (settings: EngineSettingValues): EngineVersion =>
  engineVersions.find((version) => version === settings['engine-version']) ?? newestVersion;

/** A clinic choice that exists since version 2: switched off under version 1. */
export const isOnSinceVersion2 = (id: EngineSettingId, settings: EngineSettingValues): boolean =>
  engineVersionOf(settings) >= 2 && settings[id] > 0;

const moved = new WeakMap<SettingValues, SettingValues>();

/** The choices with the version of the rules that a stored decision names. */
export const underVersion = (values: SettingValues, version: EngineVersion): SettingValues => {
  if (values['engine-version'] === version) return values;
  let under = moved.get(values);
  if (under?.['engine-version'] !== version) {
    under = { ...values, 'engine-version': version };
    moved.set(values, under);
  }
  return under;
};
