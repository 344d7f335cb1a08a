/** The three sentences a record opens with: how the dose was answered, the last step, the open question. */

import { Problem } from '#api/errors.ts';
import { recordProcedure } from '#api/trpc.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { atUsualFact } from '#core/review/summary/at-usual.ts';
import { type InFocus, inFocus } from '#core/review/summary/in-focus.ts';
import { lastStepFact } from '#core/review/summary/last-step.ts';
import { type OpenWanted, openFact } from '#core/review/summary/open-question.ts';
import { summaryPicture } from '#core/review/summary/picture.ts';
import { type SummaryFacts, summaryInWords } from '#core/review/summary/words.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { onWholeRecord } from '#data/decision/decide-queries.ts';
import { proposalsOf } from '#data/decision/decisions.ts';
import { clinicOf, type Patient } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { engineWindowDays } from '#data/patients/record-queries.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { type Prescription, prescriptionsOf, unsigned } from '#data/prescribing/prescriptions.ts';
import { newestScreening, type RecordedScreening } from '#data/screening/screenings.ts';
import { itemsDueOf, itemsOfPatient } from '#data/worklist/items-of-patient.ts';
import { doseCourse } from './dose-review.ts';

const medicinesAskedOn = ({ answers, day }: RecordedScreening): Day | null => {
  const asked = answers.find(({ item }) => item === 'medicines');
  return asked ? (asked.askedOn ?? day) : null;
};

/** Civil days of the clinic. */
export const clinicDays = async ({ store, clinicId }: Access): Promise<(instant: number) => Day> => {
  const zone = (await clinicOf(store, clinicId))?.zone ?? 'UTC';
  return (instant) => dayAt(instant, zone);
};

const openOf = async (access: Access, patientId: string, waiting: OpenWanted['waiting']) => {
  const screening = await newestScreening(access, patientId);
  return openFact({
    due: (await itemsDueOf(access, patientId)).map((row) => ({ ...row, joint: row.joint as never })),
    waiting,
    screening: screening && { medicinesAskedOn: medicinesAskedOn(screening) },
    kept: (await itemsOfPatient(access, patientId)).map((row) => ({ ...row, joint: row.joint as never })),
    today: access.day,
  });
};

/** Twelve weeks, as the review shows them. */
const pictureDays = 84;

const courseOf = async (
  access: Access,
  patientId: string,
  record: PatientRecord,
  focus: InFocus,
  prescriptions: readonly Prescription[],
  dayOf: (instant: number) => Day,
) => {
  const today = access.day;
  const { itemId } = focus.version;
  const course = doseCourse({ record, proposals: await proposalsOf(access, patientId), itemId, dayOf });
  const waiting = unsigned(prescriptions).find((version) => version.itemId === itemId)?.dose ?? null;
  const since = addDays(today, -pictureDays);
  return summaryPicture({ record, focus, steps: course.steps, waiting, since, today });
};

const summaryOf = async (access: Access, patient: Patient) => {
  const prescriptions = await prescriptionsOf(access, patient.id);
  const record = await recordOf(access, patient.id);
  if (!record) throw new Problem('not-found', 'There is no such patient in your clinic.');
  const focus = inFocus(record);
  const { day: today, now: instant } = access;
  const dayOf = await clinicDays(access);
  const facts: SummaryFacts = {
    atUsual: atUsualFact({
      record,
      focus,
      at: { instant, day: today },
      settings: await settingsOf(access),
    }),
    lastStep: lastStepFact({
      record,
      focus,
      since: addDays(today, -engineWindowDays),
      today,
      dayOf,
    }),
    open: await openOf(
      access,
      patient.id,
      unsigned(prescriptions).map(({ dose }) => dose),
    ),
  };
  return {
    day: today,
    joint: focus?.joint ?? null,
    itemId: focus?.version.itemId ?? null,
    facts,
    sentences: summaryInWords(facts, today),
    baselines: record.baselines,
    plan: await planOf(access, patient),
    /** null = no dose is in force. */
    picture: focus && (await courseOf(access, patient.id, record, focus, prescriptions, dayOf)),
  };
};

export const summaryProcedure = recordProcedure.query(({ ctx: { access, patient } }) =>
  onWholeRecord(access, patient.id, () => summaryOf(access, patient)),
);
