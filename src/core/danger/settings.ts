/** When somebody is to speak with the patient about a warning sign. No source fixes these. */
import type { ClinicSetting } from '../sources/clinic-setting.ts';

export const dangerSettings: readonly ClinicSetting[] = [
  {
    id: 'same-day-contact-hours',
    title: 'Hours within which a same-day warning sign is answered by a contact',
    unit: 'h',
    min: 1,
    max: 12,
    whole: true,
    default: 4,
    why: 'Half a working day, so that a sign told in the morning is answered before the evening. An emergency is due at once and has no setting.',
  },
  {
    id: 'routine-contact-hours',
    title: 'Hours within which any other warning sign is answered by a contact',
    unit: 'h',
    min: 12,
    max: 120,
    whole: true,
    default: 48,
    why: 'Two days; a weekend may pass. Exercise stays paused until then, whatever the number.',
  },
  {
    id: 'contact-again-hours',
    title: 'Hours after which a contact that reached nobody is tried again',
    unit: 'h',
    min: 1,
    max: 24,
    whole: true,
    default: 2,
    why: 'The time proposed with each failed attempt; the clinician who tried can choose another within a day.',
  },
];
