/** What happened to a patient, as a clinician reads it; without its day, which stands beside it. */
import { dayInWords } from '../review/plain-words.ts';
import type { CareEvent } from './care-event.ts';
import type { RecordedEvent } from './event-effects.ts';
import { treatmentTitle } from './treatment/treatment-classes.ts';

export const aboutEvent: Readonly<Record<CareEvent['kind'], string>> = {
  'medicine-change': 'A medicine was changed',
  'missed-dose': 'A dose was missed',
  'steroid-course': 'A course of steroid was begun',
  'joint-injection': 'A joint was injected',
  surgery: 'The patient had an operation',
  fall: 'The patient had a fall',
  illness: 'The patient had an illness',
};

const acts = { start: 'started', stop: 'stopped', change: 'changed' } as const;
const forms = { 'same-dose': 'the same dose throughout', taper: 'tapered' } as const;

type Told = Pick<RecordedEvent, 'kind' | 'medicine' | 'lastDay' | 'courseForm'>;

/** "Biologic: started", "Course of steroid to 12 Mar 2026, tapered". */
export const eventInWords = ({ kind, medicine, lastDay, courseForm }: Told): string => {
  if (kind === 'steroid-course' && lastDay)
    return `Course of steroid to ${dayInWords(lastDay)}${courseForm ? `, ${forms[courseForm]}` : ''}`;
  if (!medicine) return aboutEvent[kind];
  const title = treatmentTitle(medicine.medicineClass);
  return `${title}: ${medicine.act ? acts[medicine.act] : 'a dose was missed'}`;
};
