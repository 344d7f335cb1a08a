/**
 * What is not recorded any more on a record that is marked merged: it belongs into the one shown. Whatever
 * makes care stricter or answers a danger stays open on both, and so does what alone ends a limit that goes
 * on binding the other record, so nothing of it is named here.
 */
import type { Access } from '#data/access.ts';
import { mergesOf } from '#data/patients/merges.ts';
import { Problem } from './errors.ts';

const recordedOnTheOther = new Set([
  'clinician.consents.record',
  'clinician.entries.send',
  'clinician.episodes.open',
  'clinician.letters.save',
  'clinician.letters.sign',
  'clinician.letters.summarise',
  'clinician.measurements.record',
  'clinician.measurements.recordEffusion',
  'clinician.people.changeDetails',
  'clinician.people.saveProfile',
  'clinician.phones.invite',
  'clinician.prescriptions.saveProgramme',
  'clinician.preVisits.confirm',
  'clinician.protocols.begin',
  'clinician.review.setBaseline',
  'clinician.screening.askAgain',
  'clinician.screening.changeAnswers',
  'clinician.screening.record',
  'clinician.nutrition.show',
  'clinician.visitNotes.record',
  'clinician.visits.saveFirstVisit',
]);

export const requireShown = async (access: Access, patientId: string, path: string): Promise<void> => {
  if (!recordedOnTheOther.has(path)) return;
  if ((await mergesOf(access, patientId)).mergedInto)
    throw new Problem(
      'conflict',
      'This record is merged into another record of the same person and can only be read. Open that one and enter it there.',
    );
};
