/** When the worklist speaks up. No source fixes these. */
import type { ClinicChoice } from '../clinic-choice.ts';

export const worklistChoices: readonly ClinicChoice[] = [
  {
    id: 'worklist-missing-mornings',
    title: 'Days without a morning answer before the patient is listed',
    unit: 'd',
    min: 1,
    max: 14,
    whole: true,
    default: 3,
    why: 'Three days tell a forgotten evening from silence; fewer lists people who had a busy weekend.',
  },
];
