/** One setting as the page has it, and its values in words. */
import { withUnit } from '#api/inputs/unit-words.ts';
import { type ClinicSetting, isSwitch } from '#core/sources/clinic-setting.ts';
import { say } from '#messages/en/staff/administration/settings.ts';

interface SettingChange {
  readonly before: number;
  readonly after: number;
  readonly at: number;
  readonly by: string;
  readonly reason: string;
}

export interface Setting extends ClinicSetting {
  readonly value: number;
  /** Decisions on record were made with it and can be checked again. */
  readonly isOfDecisions: boolean;
  readonly history: readonly SettingChange[];
}

/** "5 days", "On". */
export const valueInWords = (setting: ClinicSetting, value: number): string =>
  isSwitch(setting) ? say(value === 1 ? 'on' : 'off') : withUnit(value, setting.unit);

/** The id of the field; refusals name it so. */
export const fieldOf = (id: string): string => `choices.${id}`;
export const reasonOf = (id: string): string => `reason-${id}`;
