/** What the patient said about one consent, written down by a clinician who read the wording out. */
import { Problem } from '#api/errors.ts';
import type { Access } from '#data/access.ts';
import { type ConsentAct, consentsOf, isCurrentWording, recordConsent } from '#data/episode/consents.ts';

type Said = Omit<ConsentAct, 'recordedVia'>;

/** Refused when the clinic has a newer wording than the one that was read out. */
export const writeConsentDown = async (access: Access, patientId: string, said: Said) => {
  if (said.act !== 'withdrawn' && !(await isCurrentWording(access, said))) {
    throw new Problem('conflict', 'The clinic has a newer wording. Read that one to the patient.');
  }
  return recordConsent(access, patientId, { ...said, recordedVia: 'clinician' });
};

/** The same, unless it is what the newest row says; false then. */
export const recordConsentOf = async (access: Access, patientId: string, said: Said): Promise<boolean> => {
  const newest = (await consentsOf(access, patientId)).findLast((row) => row.kind === said.kind);
  const isSame =
    newest?.act === said.act &&
    newest.wordingSource === said.wordingSource &&
    newest.wordingVersion === said.wordingVersion;
  if (isSame) return false;
  await writeConsentDown(access, patientId, said);
  return true;
};
