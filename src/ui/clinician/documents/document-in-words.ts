/** The letter with the clinic's words for a dose. */
import type { DocumentFacts } from '#core/episode/documents/document-facts.ts';
import type { CareDocument } from '#core/episode/documents/document-words.ts';
import type { Day } from '#core/time/day.ts';
import { dischargeIn } from '#messages/papers/discharge.ts';
import { doseInWords, doseTitle } from '#ui/clinician/dose-words.ts';

export const letterInWords = (facts: DocumentFacts | null, day: Day): CareDocument | null =>
  facts === null ? null : dischargeIn('en', facts, day, { title: doseTitle, dose: doseInWords });
