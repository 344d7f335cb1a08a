/** The discharge summary and the sheet for the patient: of the newest episode, or of the one that is named. */
import type { DocumentFacts } from '#core/episode/documents/document-facts.ts';
import type { Access } from '#data/access.ts';
import { documentFactsFor, newestDocumentFacts } from '#data/episode/documents.ts';
import type { Patient } from '#data/patients/people.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { sheetWords } from '#messages/papers/colleague-words.ts';
import { dischargeSheet, selfManagementSheet } from '#papers/end-of-care/end-of-care-sheets.ts';
import type { SheetPaper } from '#papers/sheet/sheet-paper.ts';
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
  language: LanguageTag,
): Promise<SheetPaper> =>
  dischargeSheet(await factsFor(access, patient, episodeId), access.day, { language });

export const selfManagementPaperFor = async (
  access: Access,
  patient: Patient,
  episodeId: string | null,
  language: LanguageTag,
): Promise<SheetPaper> => {
  const sheet = selfManagementSheet(await factsFor(access, patient, episodeId), { language });
  if (!sheet) throw new Problem('refused', say('handed-over'));
  return sheet;
};
