/** A round of six at the desk, told through the functions the product uses: what each patient waits for. */
import type { Dose } from '#core/prescribing/dose.ts';
import type { Access } from '#data/access.ts';
import { reportSign } from '#data/danger/warning-signs.ts';
import { sendPatientMessage } from '#data/messages/patient-messages.ts';
import { addPatient } from '#data/patients/people.ts';
import { addVersion } from '#data/prescribing/prescribing.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { bookReview } from '#data/review/review-bookings.ts';
import type { Story } from '#demo/story.ts';
import { week } from '#demo/story.ts';
import { newPeople } from './desk-first-visit.ts';
import { trained } from './people.ts';

const twoItems = ['knee', 'chair'] as const;
const one = (id: string): Story => trained(id, ['knee'], ['right-knee']);

/** Answered up to the Thursday before: nobody knows how the last mornings were. */
const silent = (id: string): Story => ({
  ...one(id),
  weeks: [
    week(0, '. 3 2 2 3 2 2', 10, 'Mon 2 3 2, Thu 2 3 2'),
    week(7, '2 3 2 2', 10, 'Mon 2 3 2, Thu 2 3 2'),
  ],
});

export const deskPeople: readonly Story[] = [
  one('desk-sign'),
  silent('desk-silent'),
  one('desk-dose'),
  one('desk-dose-too'),
  one('desk-message'),
  one('desk-review'),
  trained('desk-week', twoItems, ['right-knee']),
  one('desk-known'),
];

/** One set more than what is in force. */
const oneSetMore = (dose: Dose): Dose =>
  dose.method === 'occlusion' ? dose : { ...dose, sets: dose.sets + 1 };

/** Every exercise in force waits with a new dose for its signature. */
const dosesWait = async (access: Access, patientId: string): Promise<void> => {
  for (const row of inForce(await prescriptionsOf(access, patientId)))
    await addVersion(access, patientId, { ...row, dose: oneSetMore(row.dose), origin: 'progress' });
};

export const whatWaits = async (access: Access): Promise<void> => {
  await reportSign(access, 'desk-sign', {
    source: 'telephone',
    flags: ['calf-pain-swelling'],
    joint: null,
    entryId: null,
    remark: null,
    reason: 'A warning sign was reported to the clinic.',
  });
  for (const id of ['desk-dose', 'desk-dose-too', 'desk-week']) await dosesWait(access, id);
  await sendPatientMessage(access, 'desk-message', 'May I do it in the evening?');
  for (const { id, person } of newPeople) await addPatient(access, person, id);
  await bookReview(access, 'desk-review', { day: access.day, time: null, place: null });
};
