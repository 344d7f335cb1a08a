/** A letter as it is begun, written, signed, and marked void. */
import { letterFields } from '#api/inputs/letter-fields.ts';
import type { PostedTexts } from '#api/inputs/posted-form.ts';
import { signatureFields, summaryFields, voidFields } from '#core/episode/letters/letter.ts';
import { say } from '#messages/en/staff/papers/letters.ts';
import { listFrom, ofPatient, type SentForm } from './sent-form.ts';

const place = (about: PostedTexts): string => `/patients/${ofPatient(about)}/care/letters`;

const ofLetter: Pick<SentForm, 'page'> = { page: (about) => `${place(about)}/${about.letterId}` };

/** `seen`: the version that the page showed. */
const seenLetter = ({ letterId = '', seen }: PostedTexts) => ({ letterId, seen: Number(seen) });

/** `notes`: those chosen for it. */
export const beginLetter: SentForm = {
  name: 'letter',
  about: ['patientId', 'notes'],
  prefix: () => 'letter-',
  fields: () => letterFields,
  page: place,
  next: ({ letterId }: { readonly letterId: string }, about) => `${place(about)}/${letterId}`,
  taken: say('begun'),
  send: ({ clinician }, { about, value: letter }) =>
    clinician.letters.save.mutate({
      patientId: ofPatient(about),
      at: null,
      letter,
      notes: listFrom(about.notes),
    }),
};

export const changeLetter: SentForm = {
  ...ofLetter,
  name: 'letter-to',
  about: ['patientId', 'letterId', 'seen'],
  prefix: () => 'letter-',
  fields: () => letterFields,
  taken: say('saved-to'),
  send: ({ clinician }, { about, value: letter }) =>
    clinician.letters.save.mutate({ patientId: ofPatient(about), at: seenLetter(about), letter }),
};

export const writeSummary: SentForm = {
  ...ofLetter,
  name: 'letter-summary',
  about: ['patientId', 'letterId', 'seen'],
  prefix: () => 'summary-',
  fields: () => summaryFields,
  taken: say('saved-sentences'),
  send: ({ clinician }, { about, value: summary }) =>
    clinician.letters.summarise.mutate({ patientId: ofPatient(about), at: seenLetter(about), summary }),
};

/** `digest`: the words that the page showed. */
export const signLetter: SentForm = {
  ...ofLetter,
  name: 'letter-sign',
  about: ['patientId', 'letterId', 'seen', 'digest'],
  prefix: () => 'sign-',
  fields: () => signatureFields,
  taken: say('signed'),
  send: ({ clinician }, { about, value: signature, isConfirmed: confirmed }) =>
    clinician.letters.sign.mutate({
      patientId: ofPatient(about),
      at: seenLetter(about),
      digest: about.digest ?? '',
      signature,
      confirmed,
    }),
};

export const voidLetter: SentForm = {
  ...ofLetter,
  name: 'letter-void',
  about: ['patientId', 'letterId'],
  prefix: () => 'void-',
  fields: () => voidFields,
  taken: say('voided'),
  send: ({ clinician }, { about, value: voiding }) =>
    clinician.letters.declareVoid.mutate({
      patientId: ofPatient(about),
      letterId: about.letterId ?? '',
      voiding,
    }),
};
