/** The patient's day: what to do, with which load, and what changed. */

import { asksNothing, type Hold, takenBackLately } from '#core/care/holds.ts';
import { exerciseById } from '#core/catalogue/catalogue.ts';
import { addDays, type Day } from '#core/day.ts';
import type { Contact, Today } from '#core/engine/answers.ts';
import { contacts, todays } from '#core/engine/answers.ts';
import type { Standing } from '#core/engine/standing.ts';
import type { Joint } from '#core/joints.ts';
import { gateTable } from '#core/prescribing/gate-table.ts';
import { type ProgrammeChoiceId, programmeChoices } from '#core/programme/choices.ts';
import { type Weekday, weekdayOf, weekdaysOf } from '#core/programme/planned-sessions.ts';
import { isNewDose, urineAskedUntil } from '#core/programme/urine-question.ts';
import type { Access } from '#data/access.ts';
import { holdsOf } from '#data/care-around.ts';
import { choicesOf } from '#data/choices.ts';
import { proposalsOf } from '#data/decisions.ts';
import { morningsOf, sessionsOf } from '#data/logs.ts';
import { messagesOf } from '#data/messages.ts';
import { clinicOf, type Patient } from '#data/people.ts';
import { inForce, type Prescription, prescriptionsOf } from '#data/prescriptions.ts';
import { programmesOf } from '#data/programmes.ts';
import { recordOf } from '#data/record.ts';
import { standingOf } from '#data/standing.ts';
import { patientProcedure, router } from '../trpc.ts';
import { questionsWaitFor } from './questions-wait.ts';
import type { TodayExercise, TodayView } from './today-view.ts';

const mostUrgent = (all: readonly Contact[]): Contact =>
  all.reduce(
    (worst, next) => (contacts.indexOf(next) < contacts.indexOf(worst) ? next : worst),
    'none' as Contact,
  );

const mostCareful = (all: readonly Today[]): Today =>
  all.reduce(
    (worst, next) => (todays.indexOf(next) < todays.indexOf(worst) ? next : worst),
    'as-planned' as Today,
  );

/** What stands for the joints an exercise loads; a pause everywhere reaches every exercise. */
const todayOf = (row: Prescription, standing: readonly Standing[]): Today =>
  mostCareful(
    standing.filter((one) => one.everywhere || row.joints.includes(one.joint)).map((one) => one.today),
  );

interface Stand {
  readonly day: Day;
  /** null: every day. */
  readonly weekdays: readonly Weekday[] | null;
  readonly standing: readonly Standing[];
  readonly isNewDose: boolean;
}

const exerciseView = (row: Prescription, { day, weekdays, standing, ...rest }: Stand): TodayExercise => {
  const exercise = exerciseById(row.dose.exerciseId);
  return {
    prescriptionId: row.id,
    lineId: row.lineId,
    title: exercise?.title ?? row.dose.exerciseId,
    instructions: exercise?.instructions ?? [],
    joints: row.joints,
    dose: row.dose,
    badDay: row.badDay,
    cautions: row.cautions.map((caution) => ({ id: caution.id, text: caution.patientText })),
    planned: weekdays === null || weekdays.includes(weekdayOf(day)),
    weekdays,
    ...rest,
    today: todayOf(row, standing),
    signedName: row.signedName ?? '',
  };
};

/** What rests for a reason outside the engine rests at least; the engine may ask for more. */
const heldBack = (view: TodayExercise, hold: Hold | undefined): TodayExercise =>
  hold ? { ...view, today: mostCareful([view.today, hold.today]) } : view;

/** Something new was told today: the cuff stays off for the day, also where a second session is begun. */
const withoutCuff = (view: TodayExercise, isTold: boolean): TodayExercise =>
  isTold && view.dose.method === 'occlusion' ? { ...view, today: 'none' } : view;

const dayChoices = async (access: Access): Promise<Readonly<Record<ProgrammeChoiceId, number>>> => {
  const own = await choicesOf(access);
  const values = programmeChoices.map((choice) => [choice.id, own[choice.id] ?? choice.default]);
  return Object.fromEntries(values);
};

/**
 * Sentences about doses that changed within the last week. What brought the dose in force stays told
 * when a later decision repeats it: "do the same again" alone would hide that it was cut.
 */
const recentChanges = async (
  access: Access,
  patientId: string,
  versions: readonly Prescription[],
): Promise<readonly string[]> => {
  const told = new Map<string, string>();
  const recent = (await proposalsOf(access, patientId)).filter(
    (proposal) => proposal.effect !== 'awaits-signature' && access.now - proposal.madeAt < 7 * 86_400_000,
  );
  const madeInForce = recent.filter(
    ({ effect, lineId, decisionId }) =>
      effect === 'acts-at-once' &&
      versions.some((row) => row.lineId === lineId && row.decisionId === decisionId),
  );
  for (const { lineId, patientText } of [...madeInForce, ...recent])
    if (!told.has(lineId)) told.set(lineId, patientText);
  return [...new Set(told.values())];
};

export const todayFor = async (access: Access, patient: Patient, clockOffset: number): Promise<TodayView> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!clinic) throw new Error('The account names a clinic that does not exist.');
  const versions = inForce(await prescriptionsOf(access, patient.id));
  const { care, holds } = await holdsOf(access, patient.id, versions);
  const programmes = await programmesOf(access, patient.id);
  const choices = await dayChoices(access);
  const standing = [...(await standingOf(access, patient.id)).values()];
  const mornings = await morningsOf(access, patient.id, addDays(access.day, -1));
  const sessions = await sessionsOf(access, patient.id, addDays(access.day, -1));
  const followed: readonly Joint[] = patient.profile?.followedJoints ?? [];
  const record = await recordOf(access, patient.id);
  const isQuiet = asksNothing(care);
  const yesterday = addDays(access.day, -1);
  const isAnswered = (day: Day) => mornings.some((morning) => morning.day === day);
  const canBeLate = choices['late-morning-days'] > 0 && followed.length > 0 && !isQuiet;
  const hasBegun = versions.some((row) => access.now - (row.signedAt ?? access.now) > 36 * 3_600_000);
  const isTold = sessions.some((session) => session.day === access.day && session.toldNew);
  return {
    day: access.day,
    clockOffset,
    givenName: patient.givenName,
    clinic: {
      name: clinic.name,
      phone: clinic.phone,
      emergencyNumber: clinic.emergencyNumber,
      coverHours: clinic.coverHours,
    },
    followedJoints: followed,
    asksSwelling: true,
    asksStiffness: true,
    asksTwoHours: choices['ask-two-hours'] === 1,
    oldPageDays: choices['old-page-days'],
    asksNothing: isQuiet,
    questionsWait: await questionsWaitFor(access, patient.id),
    urineAskedUntil: urineAskedUntil(record?.prescriptions ?? [], record?.sessions ?? [], access.day),
    exercises: versions.map((row) => {
      const view = exerciseView(row, {
        day: access.day,
        weekdays: isQuiet ? [] : weekdaysOf(programmes, access.day, row.lineId),
        standing,
        isNewDose: isNewDose(row, record?.sessions ?? []),
      });
      return withoutCuff(heldBack(view, holds.get(row.id)), isTold);
    }),
    gates: record
      ? followed.map((joint) => gateTable(record, joint, { instant: access.now, day: access.day }))
      : [],
    morning: {
      due: followed.length > 0 && !isAnswered(access.day) && !isQuiet,
      answered: isAnswered(access.day),
      yesterdayOpen: canBeLate && hasBegun && !isAnswered(yesterday),
      canBeLate,
    },
    sessionSent: sessions.some((session) => session.day === access.day),
    contact: mostUrgent(standing.map((one) => one.contact)),
    changes: [
      ...new Set([...holds.values()].map((hold) => hold.patientText)),
      ...takenBackLately(care.consents, access.now),
      ...(await recentChanges(access, patient.id, versions)),
    ],
    messages: (await messagesOf(access, patient.id, 5)).map(({ text, sentName, sentAt }) => ({
      text,
      sentName,
      sentAt,
    })),
  };
};

export const todayRouter = router({
  get: patientProcedure.query(async ({ ctx }) => {
    return todayFor(ctx.access, ctx.patient, ctx.clockOffset);
  }),
});
