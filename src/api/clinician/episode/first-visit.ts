/**
 * A first visit: whatever was answered is saved, part by part, and what cannot be saved is named. A finding
 * that closes a method is a result and no refusal. The proposal is prescribing's own, and so is the signature.
 */

import type { TRPCError } from '@trpc/server';
import { wordingsForStaff } from '#api/consent-wordings.ts';
import { Problem } from '#api/errors.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { engineSettingValues } from '#core/decision/settings.ts';
import { consentState } from '#core/episode/consent.ts';
import { firstVisitConsents } from '#core/episode/first-visit/first-visit-steps.ts';
import { goalsFrom } from '#core/episode/goals.ts';
import type { Refusal } from '#core/outcome.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';
import type { Access } from '#data/access.ts';
import { goalStepsOf } from '#data/assessment/goals.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { consentsOf } from '#data/episode/consents.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import { type Patient, patientOf } from '#data/patients/people.ts';
import { eligibilityBasisFor, prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { newestPreVisit } from '#data/screening/pre-visits.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import { inEnglish } from '../question-in-english.ts';
import { firstVisitStatesOf } from './first-visit-facts.ts';
import { type FirstVisit, partsOf, type VisitPart } from './first-visit-parts.ts';

/** Kinds of measurements a first visit asks for. */
const asked: readonly Measurement['kind'][] = [
  'blood-pressure',
  'body-mass',
  'stature',
  'repetitions-to-failure',
];

const goalsOf = async (access: Access, patientId: string) => {
  const episode = (await episodesOf(access, patientId)).at(-1);
  return goalsFrom(episode?.goals ?? [], await goalStepsOf(access, patientId), access.day).map(
    ({ goal }) => goal,
  );
};

const consentsAsked = async (access: Access, patientId: string) => {
  const rows = await consentsOf(access, patientId);
  return (await wordingsForStaff(access))
    .filter(({ kind }) => firstVisitConsents.some((one) => one === kind))
    .map((wording) => ({ ...wording, state: consentState(rows, wording.kind) }));
};

/** What the steps show: what to ask, what is on record beside each field, and where the visit stands. */
export const firstVisitPage = async (access: Access, patient: Patient) => {
  const basis = await eligibilityBasisFor(access, patient);
  return {
    states: await firstVisitStatesOf(access, patient),
    consents: await consentsAsked(access, patient.id),
    items: minimumSet('low-load', basis.ageYears).map(inEnglish),
    profile: patient.profile,
    goals: await goalsOf(access, patient.id),
    screening: await newestScreening(access, patient.id),
    basis,
    baselines: await baselinesOf(access, patient.id),
    painLimitOverUsual: engineSettingValues(basis.settings)['ceiling-over-usual'],
    preVisit: await newestPreVisit(access, patient.id),
    measurements: (await measurementsOf(access, patient.id)).filter(({ kind }) => asked.includes(kind)),
  };
};

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
