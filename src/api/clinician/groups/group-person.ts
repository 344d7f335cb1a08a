/** One person of a group hour: today's plan as the phone shows it, what was entered, and what the engine says after it. */
import { todayFor } from '#api/patient/today.ts';
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import { requirePatient } from '#api/patient-of-clinic.ts';
import { beginOf, type GroupHourOnRecord } from '#core/clinic/group-hour.ts';
import { asksShort } from '#core/danger/signs-asked.ts';
import { isDoable } from '#core/decision/left-of-today.ts';
import type { Plan } from '#core/plan/plan.ts';
import { askedInSession } from '#core/record/followed-joints.ts';
import type { Access } from '#data/access.ts';
import { onWholeRecord } from '#data/decision/decide-queries.ts';
import { proposalsOf } from '#data/decision/decisions.ts';
import { entryIdOfHour, type SupervisedSession, sessionOfHour } from '#data/entries/supervised-sessions.ts';
import { draftOf } from '#data/patients/drafts.ts';
import type { Patient } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { inForce, prescriptionsOf, unsigned } from '#data/prescribing/prescriptions.ts';

const exerciseView = (one: TodayExercise, plan: Plan) => {
  const { prescriptionId, itemId, joints, dose, badDay, today, signedName } = one;
  return {
    prescriptionId,
    itemId,
    joints,
    dose,
    badDay,
    today,
    signedName,
    isDoable: isDoable(one),
    isPlanned: one.planned,
    reasons: plan.items.find((item) => item.itemId === itemId)?.reasons ?? [],
    cautions: one.cautions.map(({ id, text, isLimit = false }) => ({ id, text: text.en, isLimit })),
  };
};

const stopOf = (view: TodayView): 'warning-sign' | 'no-care' | null =>
  view.isStopped ? 'warning-sign' : view.asksNothing ? 'no-care' : null;

const decidedOf = (plan: Plan) =>
  [...plan.joints].map(([joint, { decision }]) => ({ joint, decision }) as const);

/** The plan of today from where the phone has it, in the words of the desk where there are any. */
const todayOf = async (access: Access, patient: Patient) => {
  const view = await todayFor(access, patient, { clockOffset: 0, where: 'clinic' });
  const plan = await planOf(access, patient, inForce(await prescriptionsOf(access, patient.id)));
  return {
    day: view.day,
    zone: view.clinic.zone ?? 'UTC',
    emergencyNumber: view.clinic.emergencyNumber,
    stop: stopOf(view),
    joints: askedInSession(view.followedJoints, view.exercises),
    painLookups: view.painLookups,
    isShortSigns: asksShort(view),
    hasCuff: view.exercises.some(({ dose }) => dose.method === 'occlusion'),
    asksPregnancy: view.asksPregnancy,
    asksTwoHours: view.asksTwoHours,
    isSentToday: view.sessionSent,
    told: [...view.danger, ...view.changes, ...(view.changesWithoutWhy ?? [])].map(({ en }) => en),
    decided: decidedOf(plan),
    exercises: view.exercises.map((one) => exerciseView(one, plan)),
  };
};

/** What the engine made of the session, by exercise; an exercise it has not decided on yet is left out. */
const nextOf = async (access: Access, patientId: string, { sessionId }: SupervisedSession) => {
  const made = (await proposalsOf(access, patientId)).filter((row) => row.sessionId === sessionId);
  const waiting = unsigned(await prescriptionsOf(access, patientId));
  const newest = new Map(made.toReversed().map((row) => [row.itemId, row]));
  return [...newest.values()].map(({ itemId, decision, effect, dose, changes, becameId }) => ({
    itemId,
    decision,
    effect,
    dose,
    changes,
    isWaiting: waiting.some((row) => row.id === becameId),
  }));
};

/** The prescriptions it was done under, each with the cautions it was signed with: by now others may stand in their place. */
const exercisesOf = async (access: Access, patientId: string, { entry }: SupervisedSession) =>
  (await prescriptionsOf(access, patientId))
    .filter(({ id }) => entry.sets.some(({ prescriptionId }) => prescriptionId === id))
    .map(({ id, itemId, joints, dose, badDay, signedName, cautions }) => ({
      prescriptionId: id,
      itemId,
      joints,
      dose,
      badDay,
      signedName: signedName ?? '',
      cautions: cautions.map(({ id, text }) => ({ id, text, isLimit: false })),
    }));

const sessionView = async (access: Access, patientId: string, session: SupervisedSession) => ({
  ...session,
  exercises: await exercisesOf(access, patientId, session),
  next: await nextOf(access, patientId, session),
});

/** What was entered on a day from which the hour was moved since: it stays a session of the person. */
const movedFrom = async (access: Access, { id, entry, earlier }: GroupHourOnRecord, patientId: string) => {
  const now = beginOf(entry).day;
  const days = new Set(earlier.map((one) => beginOf(one).day).filter((day) => day !== now));
  const found = [];
  for (const day of [...days].toSorted()) {
    const session = await sessionOfHour(access, patientId, id, day);
    if (session) found.push({ day, session, exercises: await exercisesOf(access, patientId, session) });
  }
  return found.map(({ day, session, exercises }) => ({ day, entry: session.entry, exercises }));
};

export const groupPerson = async (access: Access, hour: GroupHourOnRecord, patient: Patient) =>
  onWholeRecord(access, patient.id, async () => {
    const { day } = beginOf(hour.entry);
    const session = await sessionOfHour(access, patient.id, hour.id, day);
    const draft = await draftOf(access, patient.id, 'group-hour');
    return {
      patientId: patient.id,
      name: `${patient.givenName} ${patient.familyName}`,
      entryId: entryIdOfHour(hour.id, patient.id, day),
      today: await todayOf(access, patient),
      session: session && (await sessionView(access, patient.id, session)),
      earlierSessions: await movedFrom(access, hour, patient.id),
      /** What was pressed and not saved yet, by this clinician. */
      typed: draft?.typed.hour === hour.id ? draft.typed : null,
    };
  });

/** Kept to a care team the caller is not in: nothing is shown of the person. */
interface ClosedPerson {
  readonly patientId: string;
  readonly name: null;
}

export const groupPeople = async (
  access: Access,
  hour: GroupHourOnRecord,
  mayOpen: (patientId: string) => Promise<boolean>,
  path: string,
) => {
  const people: (Awaited<ReturnType<typeof groupPerson>> | ClosedPerson)[] = [];
  for (const patientId of hour.members) {
    if (await mayOpen(patientId))
      people.push(await groupPerson(access, hour, await requirePatient(access, patientId, path)));
    else people.push({ patientId, name: null });
  }
  return people;
};
