/** The discharge summary and the sheet for the patient, from what the record holds of one episode of care. */
import type { DocumentFacts } from '#core/episode/documents/document-facts.ts';
import { selfManagementOf } from '#core/episode/documents/self-management.ts';
import type { Day } from '#core/time/day.ts';
import { dischargeIn } from '#messages/papers/discharge.ts';
import { selfManagementIn } from '#messages/papers/self-management.ts';
import type { Look } from '../look.ts';
import type { SheetPaper } from '../sheet/sheet-paper.ts';
import { signsForColleagues } from '../sheet/signs-for-colleagues.ts';

export const dischargeSheet = (
  facts: DocumentFacts,
  today: Day,
  { language }: Pick<Look, 'language'>,
): SheetPaper => {
  const discharge = dischargeIn(language, facts, today);
  const inForce = facts.lines.filter(({ atEnd }) => atEnd);
  const hasCuff = inForce.some(({ last }) => last.dose.method === 'occlusion');
  const signs = inForce.length > 0 ? [signsForColleagues(facts.clinic, hasCuff, language)] : [];
  const parts = [...discharge.parts.slice(0, -1), ...signs, ...discharge.parts.slice(-1)];
  return { ...discharge, parts, clinic: facts.clinic.name };
};

/** null for those who were handed to others. */
export const selfManagementSheet = (
  facts: DocumentFacts,
  { language }: Pick<Look, 'language'>,
): SheetPaper | null => {
  const sheet = selfManagementOf(facts);
  return sheet && { ...selfManagementIn(language, sheet), clinic: facts.clinic.name };
};
