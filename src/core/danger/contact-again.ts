/** How long a contact that reached nobody may wait for the next: the most urgent matter it was about decides. */
import type { Contact } from '../decision/answers.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { defaultsOf } from '../sources/clinic-setting.ts';
import { dangerSettings } from './settings.ts';

type Urgency = Exclude<Contact, 'none'>;
export type MostHours = Readonly<Record<Urgency, number>>;

/** Longest wait for whatever is not of the same day, as the field of the form has it. */
const routineHours = 24;

export const mostAgainHours = (settings: SettingValues): MostHours => {
  const values = { ...defaultsOf(dangerSettings), ...settings };
  return {
    emergency: values['contact-again-most-emergency-hours']!,
    'same-day': values['contact-again-most-same-day-hours']!,
    routine: routineHours,
  };
};

/** Of several matters the shortest. */
export const mostHoursOf = (urgencies: readonly Contact[], most: MostHours): number =>
  Math.min(routineHours, ...urgencies.map((one) => (one === 'none' ? routineHours : most[one])));
