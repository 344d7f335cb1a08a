/** The patient's day: what to do, with which load, and what changed. */

import { painLookup } from '#core/decision/pain-lookup.ts';
import { asksNothing, hasWithdrawnLately } from '#core/episode/suspensions.ts';
import { urgentNumberOf } from '#core/episode/urgent-number.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { openSigns, type Plan } from '#core/plan/plan.ts';
import { type ProgrammeSettingId, programmeSettings } from '#core/prescribing/programme/settings.ts';
import { urineAskedUntil } from '#core/prescribing/programme/urine-question.ts';
import { stillApplies } from '#core/screening/pre-visit.ts';
import { addDays, ageYears, type Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { flagsByEntry } from '#data/danger/danger-record.ts';
import { morningsOf, sessionsOf } from '#data/entries/logs.ts';
import { careAroundOf } from '#data/episode/care-around.ts';
import { type Clinic, clinicOf, type Patient } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { inForce, type Prescription, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { programmesOf } from '#data/prescribing/programmes.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import { hoursText } from '#messages/hours.ts';
import { patientProcedure, router } from '../trpc.ts';
import { questionsWaitFor } from './questions-wait.ts';
import { dangerTexts } from './today-danger.ts';
import { exercisesOn } from './today-exercise.ts';
import { holdTexts, newestMessages, recentChanges } from './today-news.ts';
import type { TodayView } from './today-view.ts';

const daySettings = async (access: Access): Promise<Readonly<Record<ProgrammeSettingId, number>>> => {
  const own = await settingsOf(access);
  const values = programmeSettings.map((choice) => [choice.id, own[choice.id] ?? choice.default]);
  return Object.fromEntries(values);
};

interface MorningContext {
  readonly access: Access;
  readonly mornings: readonly { readonly day: Day }[];
  /** Somebody is asked about a joint each morning, and care is not on a break. */
  readonly isAsked: boolean;
  readonly lateDays: number;
  readonly versions: readonly Prescription[];
}

/** A check is late only where the dose has stood since before yesterday. */
const settledMs = 36 * 3_600_000;

const morningView = (at: MorningContext): TodayView['morning'] => {
  const { access, mornings, isAsked } = at;
  const isAnswered = (day: Day) => mornings.some((morning) => morning.day === day);
  const canBeLate = at.lateDays > 0 && isAsked;
  const hasBegun = at.versions.some((row) => access.now - (row.signedAt ?? access.now) > settledMs);
  return {
    due: isAsked && !isAnswered(access.day),
    answered: isAnswered(access.day),
    yesterdayOpen: canBeLate && hasBegun && !isAnswered(addDays(access.day, -1)),
    canBeLate,
  };
};

/** A number is read in one go: it never breaks at the end of a line. */
const unbroken = (number: string): string => number.replaceAll(' ', '\u00a0');

const clinicView = (clinic: Clinic): TodayView['clinic'] => ({
  name: clinic.name,
  phone: unbroken(clinic.phone),
  emergencyNumber: clinic.emergencyNumber,
  urgentNumber: unbroken(urgentNumberOf(clinic)),
  monitoringHours: hoursText(clinic.monitoringHours),
});

const asksPregnancy = async (access: Access, { id, birthDay }: Patient): Promise<boolean> =>
  stillApplies('pregnancy-or-birth', await newestScreening(access, id), ageYears(birthDay, access.day));

const dangerView = async (access: Access, patientId: string, plan: Plan, clinic: Clinic) => ({
  contact: plan.contact,
  knownEntryIds: (await flagsByEntry(access, patientId)).flatMap(({ entryId }) => entryId ?? []),
  isStopped: openSigns(plan).length > 0,
  danger: dangerTexts(plan, clinic),
});

const todayFor = async (access: Access, patient: Patient, clockOffset: number): Promise<TodayView> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!clinic) throw new Error('The account names a clinic that does not exist.');
  const written = await prescriptionsOf(access, patient.id);
  const versions = inForce(written);
  const plan = await planOf(access, patient, versions);
  const care = await careAroundOf(access, patient.id, await newestScreening(access, patient.id));
  const programmes = await programmesOf(access, patient.id);
  const settings = await daySettings(access);
  const mornings = await morningsOf(access, patient.id, addDays(access.day, -1));
  const sessions = await sessionsOf(access, patient.id, addDays(access.day, -1));
  const followed: readonly Joint[] = patient.profile?.followedJoints ?? [];
  const record = await recordOf(access, patient.id, undefined, written);
  const isQuiet = asksNothing(care);
  const moment = { instant: access.now, day: access.day };
  return {
    day: access.day,
    clockOffset,
    givenName: patient.givenName,
    clinic: clinicView(clinic),
    followedJoints: followed,
    asksSwelling: true,
    swellingNotAsked: patient.profile?.swellingNotAsked ?? [],
    asksStiffness: true,
    asksTwoHours: settings['ask-two-hours'] === 1,
    oldPageDays: settings['old-page-days'],
    asksNothing: isQuiet,
    asksPregnancy: await asksPregnancy(access, patient),
    questionsWait: await questionsWaitFor(access, patient.id),
    urineAskedUntil: urineAskedUntil(record?.prescriptions ?? [], record?.sessions ?? [], access.day),
    exercises: exercisesOn(versions, { access, zone: clinic.zone, isQuiet, programmes, plan, record }),
    painLookups: record ? followed.map((joint) => painLookup(record, joint, moment)) : [],
    morning: morningView({
      access,
      mornings,
      isAsked: followed.length > 0 && !isQuiet,
      lateDays: settings['late-morning-days'],
      versions,
    }),
    sessionSent: sessions.some((session) => session.day === access.day),
    ...(await dangerView(access, patient.id, plan, clinic)),
    changes: [
      ...holdTexts(plan, hasWithdrawnLately(care.consents, access.now)),
      ...(await recentChanges(access, patient.id, versions, plan)),
    ],
    messages: await newestMessages(access, patient.id),
  };
};

export const todayRouter = router({
  get: patientProcedure.query(async ({ ctx }) => {
    return todayFor(ctx.access, ctx.patient, ctx.clockOffset);
  }),
});
