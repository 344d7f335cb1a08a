/** Every number a clinic may set, checked and read as one list. */

import { assessmentSettings } from '#core/assessment/settings.ts';
import { dangerSettings } from '#core/danger/settings.ts';
import { engineSettings } from '#core/decision/settings.ts';
import { nutritionSettings } from '#core/nutrition/settings.ts';
import type { Refusal } from '#core/outcome.ts';
import { strengthSettings } from '#core/prescribing/low-load/settings.ts';
import { occlusionSettings } from '#core/prescribing/occlusion/settings.ts';
import { programmeSettings } from '#core/prescribing/programme/settings.ts';
import { variationSettings } from '#core/prescribing/variation/settings.ts';
import { recordKeepingSettings } from '#core/record/settings.ts';
import { reviewSettings } from '#core/review/settings.ts';
import { screeningSettings } from '#core/screening/settings.ts';
import {
  type ClinicSetting,
  checkSettings,
  defaultsOf,
  type SettingValues,
} from '#core/sources/clinic-setting.ts';
import { orderRefusals } from '#core/sources/setting-order.ts';
import { worklistSettings } from '#core/worklist/settings.ts';
import type { SettingEntries } from '#data/clinic/clinic-settings.ts';

/** In the order in which their lists stand beside the rules that use them; one setting may serve two lists. */
const lists: readonly (readonly ClinicSetting[])[] = [
  engineSettings,
  strengthSettings,
  variationSettings,
  occlusionSettings,
  screeningSettings,
  nutritionSettings,
  programmeSettings,
  worklistSettings,
  dangerSettings,
  reviewSettings,
  recordKeepingSettings,
  assessmentSettings,
];

export const every: readonly ClinicSetting[] = [
  ...new Map(lists.flat().map((setting) => [setting.id, setting])).values(),
];

/** Whose value a decision was made with, so that stored decisions can be checked again with another. */
export const isOfDecisions = (id: string): boolean => engineSettings.some((setting) => setting.id === id);

export const effectiveSettings = (own: SettingValues): SettingValues => ({ ...defaultsOf(every), ...own });

export const titleOf = (id: string): string => every.find((setting) => setting.id === id)?.title ?? id;

/** @param stored what the clinic has set so far: a new end of a band is held against the other end as it stands */
export const refusedSettings = (values: SettingValues, stored: SettingValues = {}): readonly Refusal[] =>
  [
    ...checkSettings(every, effectiveSettings(values)),
    ...orderRefusals(effectiveSettings({ ...stored, ...values }), Object.keys(values), titleOf),
  ].map((refusal) =>
    refusal.code === 'unknown-field'
      ? { ...refusal, field: 'input.values', reason: 'One of these is not a clinic setting of this release.' }
      : { ...refusal, field: `input.${refusal.field}` },
  );

/** Null where it is the default: a default that is mended later then reaches a clinic that never moved it. */
export const asEntries = (values: SettingValues): SettingEntries => {
  const defaults = defaultsOf(every);
  return Object.fromEntries(
    Object.entries(values).map(([id, value]) => [id, value === defaults[id] ? null : value]),
  );
};
