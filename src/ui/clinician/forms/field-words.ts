/** Labels of descriptor fields and of their options, in the words of the clinic. */
import type { Field, NumberField } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/clinic.ts';
import { capital } from '../capital.ts';

const unitEnding =
  /(MlPerMin|MgDl|PerWeek|PerDay|Mmhg|Percent|Seconds|Minutes|Years|Months|Kcal|Deg|Kg|Cm|Nm|[MNG])$/;

/** "painNextMorning" → "Pain next morning"; a unit at the end is shown beside the field instead. */
export const nameInWords = (name: string, unit = ''): string => {
  const bare = unit && unit !== '1' && !unit.startsWith('{') ? name.replace(unitEnding, '') || name : name;
  const spaced = bare
    .replace(/([a-z\d])([A-Z])/g, '$1 $2')
    .replace(/([a-z])(\d)/g, '$1 $2')
    .toLowerCase();
  return capital(spaced);
};

export const labelOf = (field: Field): string => {
  if (field.about) return capital(field.about.replace(/\.$/, ''));
  // What is chosen is the exercise; its id is the program's own business.
  return nameInWords(field.name.replace(/(?<=[a-z])Id$/, ''), 'unit' in field ? field.unit : '');
};

/** "0 to 10", "Up to 30". */
export const boundsInWords = ({ min, max, exclusiveMin, also }: NumberField): string => {
  const low = min === undefined ? '' : exclusiveMin ? say('over', { min }) : `${min}`;
  const range =
    max === undefined
      ? low
        ? say('from', { low })
        : ''
      : low
        ? say('range', { low, high: max })
        : say('up-to', { max });
  return [range, also?.length ? say('or', { also: also.join(', ') }) : ''].filter(Boolean).join(', ');
};

const named: Readonly<Record<string, string>> = {
  'low-load': say('low-load'),
  'pulse-oximeter': say('pulse-oximeter'),
  'elastic-wrap': say('elastic-wrap'),
  pneumatic: say('cuff-with-a-gauge'),
  'acc-aha-2025': 'ACC/AHA 2025',
  'esc-2024': 'ESC 2024',
  'esh-2023': 'ESH 2023',
  'das28-esr': say('das28-with-esr'),
  'das28-crp': say('das28-with-crp'),
  cdai: 'CDAI',
  rapid3: 'RAPID3',
  esr: 'ESR',
  crp: 'CRP',
  female: 'Female',
  male: 'Male',
  'ease-back': say('ease-back'),
};

/** "left-knee" → "Left knee". */
export const optionInWords = (value: string): string => named[value] ?? capital(value.replace(/-/g, ' '));
