/** The wording of each consent that holds now, with its words. */
import type { Access } from '#data/access.ts';
import { wordingsOf } from '#data/episode/consents.ts';
import { consentText } from '#messages/consents.ts';

export const wordingsForPatient = async (access: Pick<Access, 'store' | 'clinicId'>) =>
  (await wordingsOf(access)).map(({ ownText, ...wording }) => ({
    ...wording,
    text: consentText(wording.kind, ownText),
    /** Nobody of the clinic has written or approved it. */
    isProposal: ownText === null,
  }));

export const wordingsForStaff = async (access: Pick<Access, 'store' | 'clinicId'>) =>
  (await wordingsForPatient(access)).map(({ text, ...wording }) => ({ ...wording, text: text.en }));
