/** Every number a clinic may set, by what it is about. */

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
import { worklistSettings } from '#core/worklist/settings.ts';

export interface SettingArea {
  readonly id: string;
  readonly title: string;
  readonly settings: readonly ClinicSetting[];
}

export const settingAreas: readonly SettingArea[] = [
  { id: 'engine', title: 'Decisions', settings: engineSettings },
  { id: 'strength', title: 'Low load', settings: strengthSettings },
  { id: 'variation', title: 'Variations', settings: variationSettings },
  { id: 'occlusion', title: 'Occlusion', settings: occlusionSettings },
  { id: 'screening', title: 'Screening', settings: screeningSettings },
  { id: 'nutrition', title: 'Nutrition', settings: nutritionSettings },
  { id: 'programme', title: 'The patient’s day and week', settings: programmeSettings },
  { id: 'worklist', title: 'Worklist', settings: [...worklistSettings, ...dangerSettings] },
  { id: 'review', title: 'Review', settings: reviewSettings },
  { id: 'record-keeping', title: 'Records and access', settings: recordKeepingSettings },
];

/** One choice may serve two areas and then stands in both lists. */
const every: readonly ClinicSetting[] = [
  ...new Map(settingAreas.flatMap((area) => area.settings).map((setting) => [setting.id, setting])).values(),
];

export const effectiveSettings = (own: SettingValues): SettingValues => ({ ...defaultsOf(every), ...own });

export const refusedSettings = (values: SettingValues): readonly Refusal[] =>
  checkSettings(every, effectiveSettings(values)).map((refusal) =>
    refusal.code === 'unknown-field'
      ? { ...refusal, field: 'input.values', reason: 'One of these is not a clinic setting of this release.' }
      : { ...refusal, field: `input.${refusal.field}` },
  );

/** What differs from the defaults: a default that is mended later then reaches a clinic that never moved it. */
export const ownSettings = (values: SettingValues): SettingValues => {
  const defaults = defaultsOf(every);
  return Object.fromEntries(Object.entries(values).filter(([id, value]) => value !== defaults[id]));
};
