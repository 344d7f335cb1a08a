/**
 * A first visit: whatever was answered is saved, part by part, and what cannot be saved is named. A finding
 * that closes a method is a result and no refusal. The proposal is a step of its own, and so is the signature.
 */

import type { TRPCError } from '@trpc/server';
import { Problem } from '#api/errors.ts';
import { engineSettingValues } from '#core/decision/settings.ts';
import { exerciseById, exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Refusal } from '#core/outcome.ts';
import { prescriptionTemplates } from '#core/prescribing/templates.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';
import { ageYears } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import { draftOf, dropDraft } from '#data/patients/drafts.ts';
import { type Patient, patientOf } from '#data/patients/people.ts';
import { addVersion, endPrescription } from '#data/prescribing/prescribing.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { prescriptionsOf, unsigned } from '#data/prescribing/prescriptions.ts';
import { newestPreVisit } from '#data/screening/pre-visits.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import { withPatientWords } from '../caution-words.ts';
import { propose } from '../propose.ts';
import { inEnglish } from '../question-in-english.ts';
import { type FirstVisit, partsOf, type VisitPart } from './first-visit-parts.ts';

/** What the page shows: what to ask, where to begin, and what is on record beside each field. */
export const firstVisitPage = async (access: Access, patient: Patient) => ({
  items: minimumSet('low-load', ageYears(patient.birthDay, access.day)).map(inEnglish),
  templates: prescriptionTemplates.map((template) => ({
    ...template,
    exercise: exerciseTitle(template.request.exerciseId),
    limbsAtOnce: exerciseById(template.request.exerciseId)?.limbsAtOnce ?? 'one',
  })),
  profile: patient.profile,
  screening: await newestScreening(access, patient.id),
  baselines: await baselinesOf(access, patient.id),
  painLimitOverUsual: engineSettingValues(await settingsOf(access))['ceiling-over-usual'],
  preVisit: await newestPreVisit(access, patient.id),
  measurements: (await measurementsOf(access, patient.id)).filter(
    ({ kind }) => kind === 'blood-pressure' || kind === 'repetitions-to-failure',
  ),
  draft: await draftOf(access, patient.id, 'first-visit'),
});

export interface SavedPart {
  /** Such as "profile", or "joints.left-knee" for one of several. */
  readonly part: string;
  readonly title: string;
  /** "asked": unlikely, and saved once it is confirmed. */
  readonly outcome: 'saved' | 'unchanged' | 'refused' | 'asked';
  readonly refused: readonly Refusal[];
  readonly questions: readonly string[];
}

/** "input.systolicMmhg" of a part is "input.pressure.systolicMmhg" of the visit. */
const placed = (part: string, refusal: Refusal): Refusal => ({
  ...refusal,
  field: refusal.field.replace(/^input/, `input.${part}`),
});

const savePart = async (access: Access, { part, title, save }: VisitPart): Promise<SavedPart> => {
  try {
    const isChanged = await access.store.write(save);
    return { part, title, outcome: isChanged ? 'saved' : 'unchanged', refused: [], questions: [] };
  } catch (error) {
    if (!(error instanceof Problem)) throw error as TRPCError;
    const { questions, refusals, message: reason } = error;
    if (questions.length > 0) return { part, title, outcome: 'asked', refused: [], questions };
    const refused =
      refusals.length > 0 ? refusals : [{ field: 'input', code: 'inconsistent' as const, reason }];
    return {
      part,
      title,
      outcome: 'refused',
      refused: refused.map((one) => placed(part, one)),
      questions: [],
    };
  }
};

const named = (parts: readonly SavedPart[]): string => parts.map(({ title }) => title).join(', ');

const sentenceOf = (parts: readonly SavedPart[]): string => {
  const on = parts.filter(({ outcome }) => outcome === 'saved' || outcome === 'unchanged');
  const off = parts.filter(({ outcome }) => outcome === 'refused' || outcome === 'asked');
  return [
    on.length > 0 ? `Saved: ${named(on)}.` : 'Nothing was saved.',
    off.length > 0 ? `Not saved: ${named(off)}.` : '',
  ]
    .filter(Boolean)
    .join(' ');
};

/** Each part stands or falls by itself; what screening leaves of each method is told with it. */
export const saveFirstVisit = async (
  access: Access,
  patient: Patient,
  visit: FirstVisit,
  isConfirmed: boolean,
) => {
  const parts: SavedPart[] = [];
  for (const part of partsOf(access, patient, visit, isConfirmed)) parts.push(await savePart(access, part));
  const now = (await patientOf(access, patient.id)) ?? patient;
  const { outcomes } = await prescribingContextFor(access, now);
  return { parts, sentence: sentenceOf(parts), outcomes };
};

/** The unsigned version a new one takes the place of ends; a signed one is never ended by the way. */
const endReplaced = async (access: Access, patientId: string, replaces: string | null): Promise<void> => {
  const waiting = unsigned(await prescriptionsOf(access, patientId)).find((row) => row.id === replaces);
  if (waiting)
    await endPrescription(access, patientId, waiting.id, 'Changed and proposed anew before signing.');
};

/** One exercise from what is saved, kept unsigned; what stands in its way leaves the visit as it is. */
export const proposeFirstVisit = (
  access: Access,
  patient: Patient,
  request: unknown,
  replaces: string | null,
) =>
  access.store.write(async () => {
    const proposed = await propose(access, patient, request);
    await endReplaced(access, patient.id, replaces);
    const prescriptionId = await addVersion(access, patient.id, {
      ...proposed,
      working: [...proposed.working, ...proposed.notes].map((line) => line.text),
      origin: 'clinician',
    });
    await dropDraft(access, patient.id, 'first-visit');
    return { prescriptionId, ...withPatientWords(proposed) };
  });
