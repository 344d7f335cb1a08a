/**
 * What a clinic decides about its records and the people who open them. No source fixes these;
 * local law may, and then it stands above the default.
 */
import type { ClinicSetting } from '../sources/clinic-setting.ts';

export const recordKeepingSettings: readonly ClinicSetting[] = [
  {
    id: 'care-team-restriction',
    title: 'Only the care team opens a record',
    unit: '1',
    min: 0,
    max: 1,
    whole: true,
    default: 0,
    why: 'In a small clinic colleagues cover for each other every day. Off, every clinician of the clinic opens it; on, a colleague outside the team gives a reason first and the team is told.',
  },
  {
    id: 'emergency-access-hours',
    title: 'Hours for which a record opened with a reason stays open',
    unit: 'h',
    min: 1,
    max: 24,
    whole: true,
    default: 4,
    why: 'Half a working day. Longer makes one reason cover work it was not given for.',
  },
  {
    id: 'staff-two-factor',
    title: 'Staff must use a one-time code with the passphrase',
    unit: '1',
    min: 0,
    max: 1,
    whole: true,
    default: 1,
    why: 'A passphrase alone is lost to the first convincing letter. Off, each person decides.',
  },
  {
    id: 'invitation-days',
    title: 'Days for which an invitation to a patient may be used',
    unit: 'd',
    min: 1,
    max: 30,
    whole: true,
    default: 7,
    why: 'Time to get home and find the phone. Longer leaves more paper about that still opens a record.',
  },
  {
    id: 'audit-retention-years',
    title: 'Years for which the list of who opened a record is shown',
    unit: 'a',
    min: 1,
    max: 30,
    whole: true,
    default: 8,
    why: 'As long as many clinics keep the record itself. Older lines are no longer shown, and whoever runs the server can move them out of the database (archive-audit); nothing moves by itself.',
  },
  {
    id: 'record-retention-years',
    title: 'Years for which a record is kept after care has ended',
    unit: 'a',
    min: 1,
    max: 50,
    whole: true,
    default: 10,
    why: 'What the law of the place asks for stands above this; ten years are common practice, no source. Nothing is erased by itself: whoever runs the server is shown which records are due (erase-person), and the clinic decides.',
  },
];
