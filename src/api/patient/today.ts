/** The patient's day: what to do, with which load, and what changed. */

import { nextLimitFrom } from '#core/decision/dose/limits.ts';
import { painLookup } from '#core/decision/pain-lookup.ts';
import { engineSettingValues } from '#core/decision/settings.ts';
import { asksNothing } from '#core/episode/suspensions.ts';
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
import { shortSignsFor } from '#data/danger/short-signs.ts';
import { onWholeRecord } from '#data/decision/decide-queries.ts';
import { morningsOf, sessionsOf } from '#data/entries/logs.ts';
import { morningsOfDay } from '#data/entries/mornings-of-day.ts';
import { careAroundOf } from '#data/episode/care-around.ts';
import { type Clinic, clinicOf, type Patient } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { programmesOf } from '#data/prescribing/programmes.ts';
import { noteHandedOver } from '#data/prescribing/withdraw-signature.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import { hoursText } from '#messages/hours.ts';
import { patientProcedure, router } from '../trpc.ts';
import { questionsDueView } from './questions-due.ts';
import { questionsWaitFor } from './questions-wait.ts';
import { appointmentView } from './today-appointment.ts';
import { dangerTexts } from './today-danger.ts';
import { exercisesByPlace, type Whereabouts } from './today-exercise.ts';
import { morningView } from './today-morning.ts';
import { newsOf } from './today-news.ts';
import { sentView } from './today-sent.ts';
import type { TodayView } from './today-view.ts';

const daySettings = async (access: Access): Promise<Readonly<Record<ProgrammeSettingId, number>>> => {
  const own = await settingsOf(access);
  const values = programmeSettings.map((choice) => [choice.id, own[choice.id] ?? choice.default]);
  return Object.fromEntries(values);
};

/** A number is read in one go: it never breaks at the end of a line. */
const unbroken = (number: string): string => number.replaceAll(' ', '\u00a0');

const daysOf = (rows: readonly { readonly day: Day }[]): readonly Day[] => [
  ...new Set(rows.map(({ day }) => day)),
];

const momentOf = ({ now, day }: Access) => ({ instant: now, day });

const recorded = (
  day: Day,
  sessions: readonly { readonly day: Day }[],
  mornings: readonly { readonly day: Day }[],
): Pick<TodayView, 'sessionSent' | 'recordedDays'> => ({
  sessionSent: sessions.some((session) => session.day === day),
  recordedDays: { sessions: daysOf(sessions), mornings: daysOf(mornings) },
});

const clinicView = (clinic: Clinic): TodayView['clinic'] => ({
  name: clinic.name,
  zone: clinic.zone,
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

/** What is asked each day, by the person and by what the clinic has set. */
const askedEachDay = (
  { profile }: Patient,
  settings: Readonly<Record<ProgrammeSettingId, number>>,
): Pick<
  TodayView,
  | 'asksSwelling'
  | 'swellingNotAsked'
  | 'asksStiffness'
  | 'asksFatigue'
  | 'asksOtherJoint'
  | 'asksTwoHours'
  | 'oldPageDays'
> => ({
  asksSwelling: true,
  swellingNotAsked: profile?.swellingNotAsked ?? [],
  asksStiffness: true,
  asksFatigue: profile?.asksFatigue ?? false,
  // Inflammation moves from joint to joint; elsewhere the followed ones speak.
  asksOtherJoint: profile?.inflammatoryArthritis ?? false,
  asksTwoHours: settings['ask-two-hours'] === 1,
  oldPageDays: settings['old-page-days'],
});

interface Asking {
  readonly clockOffset: number;
  readonly where: Whereabouts;
}

export const todayFor = async (access: Access, patient: Patient, asked: Asking): Promise<TodayView> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!clinic) throw new Error('The account names a clinic that does not exist.');
  const { zone } = clinic;
  const written = await prescriptionsOf(access, patient.id);
  const versions = inForce(written);
  const plan = await planOf(access, patient, versions);
  const care = await careAroundOf(access, patient.id, await newestScreening(access, patient.id));
  const programmes = await programmesOf(access, patient.id);
  const settings = await daySettings(access);
  const mornings = await morningsOf(access, patient.id, addDays(access.day, -7));
  const sessions = await sessionsOf(access, patient.id, addDays(access.day, -1));
  const followed: readonly Joint[] = patient.profile?.followedJoints ?? [];
  const record = await recordOf(access, patient.id);
  const isQuiet = asksNothing(care);
  return {
    day: access.day,
    changesOn: nextLimitFrom(record?.limits ?? [], access.day),
    clockOffset: asked.clockOffset,
    givenName: patient.givenName,
    clinic: clinicView(clinic),
    followedJoints: followed,
    ...askedEachDay(patient, settings),
    asksNothing: isQuiet,
    asksPregnancy: await asksPregnancy(access, patient),
    questionsWait: await questionsWaitFor(access, patient.id),
    urineAskedUntil: urineAskedUntil(record?.prescriptions ?? [], record?.sessions ?? [], access.day),
    ...exercisesByPlace(asked.where, versions, { access, zone, isQuiet, programmes, plan, record }),
    painLookups: record ? followed.map((joint) => painLookup(record, joint, momentOf(access))) : [],
    shortSignsUntil: await shortSignsFor(access, patient.id, settings['whole-sign-list'] === 1, written),
    morning: morningView({
      access,
      zone,
      mornings,
      ofToday: await morningsOfDay(access, patient.id, access.day, mornings),
      followed,
      baselines: record?.baselines ?? [],
      isAsked: followed.length > 0 && !isQuiet,
      lateDays: settings['late-morning-days'],
      settings: engineSettingValues(await settingsOf(access)),
      versions,
    }),
    ...recorded(access.day, sessions, mornings),
    ...(await sentView(access, patient.id, zone, written)),
    ...(await questionsDueView(access, patient.id, plan, isQuiet)),
    ...(await appointmentView(access, patient.id, zone)),
    ...(await dangerView(access, patient.id, plan, clinic)),
    ...(await newsOf(access, { patientId: patient.id, plan, record, versions, written }, care.consents)),
  };
};

export const todayRouter = router({
  get: patientProcedure.query(async ({ ctx: { access, patient, clockOffset } }) => {
    await noteHandedOver(access, patient.id, inForce(await prescriptionsOf(access, patient.id)));
    return onWholeRecord(access, patient.id, () => todayFor(access, patient, { clockOffset, where: 'home' }));
  }),
});
