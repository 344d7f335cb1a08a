/** How English writes joints, limbs and days inside a sentence. */
import type { Grammar } from '../translate.ts';

/** "left-knee" → "left knee". As a label the back is named as in the record: "low back". */
const joint = (value: string, form: string): string =>
  value === 'low-back' && form !== 'label' ? 'lower back' : value.replaceAll('-', ' ');

/** "2026-02-03" → "3 Feb 2026". */
const day = (value: string): string => new Date(value).toUTCString().slice(5, 16).replace(/^0/, '');

export const forms: Grammar['forms'] = { joint, limb: (value) => value.replace('-', ' '), day };
