/**
 * What a clinician enters, checked and kept: the same way for a first entry and for one that takes the
 * place of an entry in error. Each gives the id of the row it wrote and evaluates nothing.
 */
import { Problem } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { unknownItems } from '#api/inputs/screening-items.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measurementConsistent, unlikely } from '#core/assessment/measurements/measurement-checks.ts';
import { type MeasurementForm, measurementForm } from '#core/assessment/measurements/measurement-fields.ts';
import { assessmentSettings } from '#core/assessment/settings.ts';
import type { CorrectionSubject, StruckOutOnly } from '#core/corrections/correction.ts';
import { limitConsistent, limitFields } from '#core/episode/care-fields.ts';
import { eventConsistent, eventFields } from '#core/episode/event-fields.ts';
import { goalConsistent, goalFields } from '#core/episode/goals.ts';
import { visitNoteFields, visitNoteRefusals } from '#core/episode/visit-note.ts';
import type { Joint } from '#core/exercises/joints.ts';
import {
  baselineConsistent,
  baselineFields,
  clearanceFields,
  effusionFields,
  screeningFields,
} from '#core/record/staff-fields.ts';
import { jointBlocks } from '#core/screening/joint-blocks.ts';
import { isSameAnswer } from '#core/screening/pre-visit.ts';
import type { Screening, ScreeningItemAnswer } from '#core/screening/screening.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { setBaseline } from '#data/assessment/baselines.ts';
import { recordGoalStep } from '#data/assessment/goals.ts';
import { measurementsOf, recordEffusion, recordMeasurement } from '#data/assessment/measurements.ts';
import { settingValue } from '#data/clinic/clinic-settings.ts';
import { addEvent } from '#data/episode/care-events.ts';
import { addLimit } from '#data/episode/limits-and-pre-approvals.ts';
import { recordNote } from '#data/episode/visit-notes.ts';
import { visitOfMeasuring } from '#data/episode/visits.ts';
import type { Patient } from '#data/patients/people.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { recordClearance, recordScreening, screeningsOnRecord } from '#data/screening/screenings.ts';
import { requireHandsOnTest } from '../episode/hands-on-test.ts';
import { enterContact } from './enter-contact.ts';
import { enterSupervised, enterVisit } from './enter-visit.ts';

export interface Entering {
  readonly access: Access;
  readonly patient: Patient;
  /** Unlikely values were confirmed. */
  readonly confirmed: boolean;
  /** The entry it takes the place of, with the day that entry speaks of; null for a first entry. */
  readonly instead: { readonly id: string; readonly day: Day } | null;
}

type Enter = (entering: Entering, value: unknown) => Promise<string>;

const kindOf = (value: unknown): string =>
  typeof value === 'object' && value !== null && 'kind' in value ? String(value.kind) : '';

/** An entry that stands may be corrected; a new one needs the licence. */
const requireLicence = async (
  { access, instead }: Entering,
  { needsLicence, title }: MeasurementForm,
): Promise<void> => {
  if (!needsLicence || instead) return;
  if ((await settingValue(access, assessmentSettings, 'knee-hip-score-licence')) !== 1)
    throw new Problem(
      'refused',
      `${title}: this clinic has not said that it holds a licence. An administrator can say so under Settings.`,
    );
};

const measurement: Enter = async (entering, value) => {
  const { access, patient, confirmed, instead } = entering;
  const form = measurementForm(kindOf(value));
  if (!form) throw new Problem('refused', 'Choose what was measured from the list.');
  await requireLicence(entering, form);
  const row = checked(form.fields, value, (fields) =>
    measurementConsistent(fields as unknown as Measurement, access.day),
  ) as unknown as Measurement;
  await requireHandsOnTest(access, patient.id, row.kind);
  const before = await measurementsOf(access, patient.id);
  const known = before.filter(({ id }) => id !== instead?.id);
  const questions = unlikely(row, known);
  if (questions.length > 0 && !confirmed) {
    throw new Problem('not-confirmed', questions.join(' '), { questions });
  }
  const replaced = before.find(({ id }) => id === instead?.id);
  const visitId = replaced ? replaced.visitId : await visitOfMeasuring(access, patient.id, row.day);
  return recordMeasurement(access, patient.id, row, confirmed, { visitId });
};

/** An answer that was right in the sheet it corrects keeps the day on which it was asked. */
const withItsDay = (before: Screening | undefined, answer: ScreeningItemAnswer): ScreeningItemAnswer =>
  before?.answers.find((one) => one.item === answer.item && isSameAnswer(one, answer)) ?? answer;

const screening: Enter = async ({ access, patient, instead }, value) => {
  const sheet = checked(screeningFields, value, (fields) => unknownItems(fields.answers, access.day));
  const before = (await screeningsOnRecord(access, patient.id)).find(({ id }) => id === instead?.id);
  const answers = sheet.answers.map((answer) => withItsDay(before, answer));
  const version = await recordScreening(access, patient.id, {
    ...sheet,
    answers,
    ...(instead ? { day: instead.day } : {}),
  });
  return (await screeningsOnRecord(access, patient.id)).find((row) => row.version === version)!.id;
};

const event: Enter = ({ access, patient }, value) => {
  const row = checked(eventFields, value, (fields) => eventConsistent(fields, access.day));
  const { medicineAct, medicineClass, lastDay, courseForm, ...rest } = row;
  const medicine = medicineClass ? { act: medicineAct ?? null, medicineClass } : null;
  const course = lastDay && courseForm ? { lastDay: lastDay as Day, courseForm } : {};
  return addEvent(access, patient.id, { ...rest, ...course, joint: rest.joint as Joint | null, medicine });
};

const limit: Enter = ({ access, patient }, value) => {
  const row = checked(limitFields, value, limitConsistent);
  return addLimit(access, patient.id, { ...row, joint: row.joint as Joint });
};

const goal: Enter = ({ access, patient }, value) =>
  recordGoalStep(
    access,
    patient.id,
    checked(goalFields, value, (row) => goalConsistent(row, access.day)),
  );

const baseline: Enter = ({ access, patient, instead }, value) => {
  const { reason, joint, riseAcknowledged, ...values } = checked(baselineFields, value, baselineConsistent);
  const acknowledged = riseAcknowledged ? { riseAcknowledged } : {};
  const whole = { joint: joint as Joint, ...values, ...acknowledged };
  return setBaseline(access, patient.id, whole, reason, instead?.day);
};

const effusionTest: Enter = async ({ access, patient, instead }, value) => {
  const row = checked(effusionFields, value);
  await requireHandsOnTest(access, patient.id, 'effusion-test');
  return recordEffusion(access, patient.id, row.joint, row.grade, instead?.day);
};

const clearance: Enter = async ({ access, patient }, value) => {
  const row = checked(clearanceFields, value);
  const { outcomes, screening: sheet } = await prescribingContextFor(access, patient);
  const ofMethod = outcomes
    .filter((outcome) => outcome.method === row.method)
    .flatMap((outcome) => outcome.reasons);
  const reasons = [...ofMethod, ...jointBlocks(sheet).map((block) => block.reason)];
  const uncleared = row.findings.find(
    (code) => !reasons.some((reason) => reason.code === code && reason.clearedBy !== null),
  );
  if (uncleared) throw new Problem('refused', 'One of these findings cannot be cleared here.');
  return recordClearance(access, patient.id, row);
};

const note: Enter = ({ access, patient }, value) =>
  recordNote(
    access,
    patient.id,
    checked(visitNoteFields, value, (row) => visitNoteRefusals(row, access.day)),
  );

export const enter: Readonly<Record<Exclude<CorrectionSubject, StruckOutOnly>, Enter>> = {
  measurement,
  screening,
  event,
  limit,
  goal,
  baseline,
  'effusion-test': effusionTest,
  clearance,
  'supervised-session': enterSupervised,
  contact: enterContact,
  note,
  visit: enterVisit,
};

/** A first entry of whoever is calling. */
export const firstEntry = (
  { access, patient }: Pick<Entering, 'access' | 'patient'>,
  confirmed = false,
): Entering => ({ access, patient, confirmed, instead: null });
