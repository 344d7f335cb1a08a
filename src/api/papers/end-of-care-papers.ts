/** The discharge summary and the sheet for the patient: of the newest episode, or of the one that is named. */
import type { DocumentFacts } from '#core/episode/documents/document-facts.ts';
import { letterOf } from '#core/episode/documents/letter.ts';
import { selfManagementOf } from '#core/episode/documents/self-management.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Access } from '#data/access.ts';
import { documentFactsFor, newestDocumentFacts } from '#data/episode/documents.ts';
import type { Patient } from '#data/patients/people.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { sheetWords } from '#messages/papers/colleague-words.ts';
import { doseText, paperSpeech } from '#messages/papers/paper-speech.ts';
import { selfManagementIn } from '#messages/papers/self-management.ts';
import type { SheetPaper } from '#papers/sheet/sheet-paper.ts';
import { signsForColleagues } from '#papers/sheet/signs-for-colleagues.ts';
import { Problem } from '../errors.ts';

const say = sheetWords('en');

const factsFor = async (
  access: Access,
  patient: Patient,
  episodeId: string | null,
): Promise<DocumentFacts> => {
  const facts =
    episodeId === null
      ? await newestDocumentFacts(access, patient)
      : await documentFactsFor(access, patient, episodeId);
  if (!facts) throw new Problem('refused', say('none-at-end'));
  return facts;
};

export const dischargePaperFor = async (
  access: Access,
  patient: Patient,
  episodeId: string | null,
): Promise<SheetPaper> => {
  const facts = await factsFor(access, patient, episodeId);
  const speech = paperSpeech('en');
  const letter = letterOf(facts, access.day, {
    title: ({ exerciseId }) => exerciseTitle(exerciseId),
    dose: (dose) => doseText(dose, speech),
  });
  const inForce = facts.lines.filter(({ atEnd }) => atEnd);
  const hasCuff = inForce.some(({ last }) => last.dose.method === 'occlusion');
  const signs = inForce.length > 0 ? [signsForColleagues(facts.clinic, hasCuff, 'en')] : [];
  const parts = [...letter.parts.slice(0, -1), ...signs, ...letter.parts.slice(-1)];
  return { ...letter, parts, clinic: facts.clinic.name };
};

export const selfManagementPaperFor = async (
  access: Access,
  patient: Patient,
  episodeId: string | null,
  language: LanguageTag,
): Promise<SheetPaper> => {
  const facts = await factsFor(access, patient, episodeId);
  const sheet = selfManagementOf(facts);
  if (!sheet) throw new Problem('refused', say('handed-over'));
  return { ...selfManagementIn(language, sheet), clinic: facts.clinic.name };
};
