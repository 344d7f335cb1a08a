/** What a clinician does at a visit, through the functions the desk uses. */
import { type PrescriptionRequest, proposePrescription } from '#core/prescribing/propose.ts';
import { screeningSheetVersion } from '#core/screening/items.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { setBaseline } from '#data/assessment/baselines.ts';
import { recordGoalStep } from '#data/assessment/goals.ts';
import { recordEffusion, recordMeasurement } from '#data/assessment/measurements.ts';
import { respond } from '#data/decision/decision-responses.ts';
import { decisionsOf, newestDecisions } from '#data/decision/decisions.ts';
import { addEvent } from '#data/episode/care-events.ts';
import { signPreApproval } from '#data/episode/limits-and-pre-approvals.ts';
import { recordNote } from '#data/episode/visit-notes.ts';
import { sendMessage } from '#data/messages/messages.ts';
import { patientOf } from '#data/patients/people.ts';
import { addVersion, endPrescription, signPrescription } from '#data/prescribing/prescribing.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { inForce, prescriptionsOf, unsigned } from '#data/prescribing/prescriptions.ts';
import { saveProgramme } from '#data/prescribing/programmes.ts';
import { bookReview } from '#data/review/review-bookings.ts';
import { recordClearance, recordScreening } from '#data/screening/screenings.ts';
import { asksAtHome } from './at-home.ts';
import { consentsTo, lookAtCuff } from './cuff.ts';
import { followsPhases, isOfPhases } from './phases.ts';
import { plansRetest } from './retest-act.ts';
import type { Act } from './story.ts';
import { keepsAsTemplate } from './template-act.ts';

type Did<D extends Act['does']> = Extract<Act, { does: D }>;

/** Lines keep their name in the story, so that a diary can speak of them. */
export const itemIdOf = (patientId: string, item: string): string => `${patientId}-${item}`;

const proposedFor = async (access: Access, patientId: string, request: PrescriptionRequest) => {
  const patient = await patientOf(access, patientId);
  if (!patient) throw new RangeError(`No such patient: ${patientId}`);
  return proposePrescription(await prescribingContextFor(access, patient), request);
};

const prescribe = async (access: Access, patientId: string, act: Did<'prescribe'>): Promise<void> => {
  const outcome = await proposedFor(access, patientId, act.request);
  if (!outcome.ok) throw new Error(`${patientId}: ${outcome.refused.map((one) => one.reason).join(' ')}`);
  const { dose, badDay, joints, cautions, working } = outcome.result;
  const id = await addVersion(access, patientId, {
    itemId: itemIdOf(patientId, act.item),
    dose,
    badDay,
    joints,
    cautions,
    working: working.map((item) => item.text),
    origin: 'clinician',
  });
  await signPrescription(access, patientId, id);
};

/** A story that says a request is turned down does not load when it is not. */
const tryInVain = async (access: Access, patientId: string, act: Did<'try'>): Promise<void> => {
  const outcome = await proposedFor(access, patientId, act.request);
  const reasons = outcome.ok ? [] : outcome.refused.map((one) => one.reason);
  if (!reasons.some((reason) => reason.includes(act.refusedFor))) {
    throw new Error(`${patientId}: expected a refusal for “${act.refusedFor}”, got: ${reasons.join(' ')}`);
  }
};

const signWaiting = async (access: Access, patientId: string): Promise<void> => {
  for (const row of unsigned(await prescriptionsOf(access, patientId)))
    await signPrescription(access, patientId, row.id);
};

const end = async (access: Access, patientId: string, act: Did<'end'>): Promise<void> => {
  const itemId = itemIdOf(patientId, act.item);
  const versions = await prescriptionsOf(access, patientId);
  // What waits for a signature ends too, or signing it later would bring the exercise back.
  const newest = [...inForce(versions), ...unsigned(versions)].filter((row) => row.itemId === itemId);
  if (newest.length === 0) throw new RangeError(`${patientId}: ${act.item} is not in force`);
  for (const row of newest) await endPrescription(access, patientId, row.id, act.reason);
};

const writeBaseline = async (access: Access, patientId: string, act: Did<'set-baseline'>): Promise<void> => {
  const { does: _does, reason, ...values } = act;
  await setBaseline(access, patientId, { ...values, acceptablePainLimit: 5, usualEffusion: 'zero' }, reason);
};

const answer = async (
  access: Access,
  patientId: string,
  act: Did<'accept'> | Did<'override'>,
): Promise<void> => {
  const newest = newestDecisions(await decisionsOf(access, patientId, addDays(access.day, -60)));
  const decisionId = newest.get(act.joint)?.id;
  if (!decisionId) throw new RangeError(`${patientId}: nothing decided yet for ${act.joint}`);
  const isOverride = act.does === 'override';
  await respond(access, patientId, {
    decisionId,
    kind: act.does,
    decision: isOverride ? act.decision : null,
    reason: act.reason,
    until: isOverride ? addDays(access.day, act.days) : null,
  });
};

const measure = async (access: Access, patientId: string, act: Did<'measure'>): Promise<void> => {
  for (const taken of act.taken)
    await recordMeasurement(access, patientId, { ...taken, day: access.day }, false);
};

const plan = async (access: Access, patientId: string, act: Did<'plan'>): Promise<void> => {
  const lines = Object.entries(act.week).map(([item, weekdays]) => ({
    itemId: itemIdOf(patientId, item),
    weekdays,
  }));
  await saveProgramme(access, patientId, lines);
};

/** What is agreed with the patient beside the dose. */
const talk = async (
  access: Access,
  patientId: string,
  act: Did<'message' | 'set-goal' | 'book-review' | 'plan-retest' | 'write'>,
): Promise<void> => {
  if (act.does === 'write') {
    const { does: _does, ...note } = act;
    const unsaid = { subjective: null, objective: null, assessment: null, plan: null, text: null };
    await recordNote(access, patientId, { ...unsaid, ...note, day: access.day });
  } else if (act.does === 'message') await sendMessage(access, patientId, act.text);
  else if (act.does === 'plan-retest') await plansRetest(access, patientId, act);
  else if (act.does === 'set-goal') {
    const { goal, state } = act;
    await recordGoalStep(access, patientId, { goal, state, byDay: null, note: null });
  } else {
    const day = addDays(access.day, act.days);
    await bookReview(access, patientId, { day, time: act.time, place: null });
  }
};

const screen = async (access: Access, patientId: string, { answers }: Did<'screen'>): Promise<void> => {
  await recordScreening(access, patientId, { sheetVersion: screeningSheetVersion, answers });
};

const notesEvent = (access: Access, patientId: string, act: Extract<Act, { does: 'note-event' }>) =>
  addEvent(access, patientId, {
    day: addDays(access.day, -(act.daysAgo ?? 0)),
    kind: act.kind,
    joint: act.joint,
    remark: act.remark ?? null,
    ...(act.medicine ? { medicine: act.medicine } : {}),
    ...(act.course ? { lastDay: addDays(access.day, act.course.days - 1), courseForm: act.course.form } : {}),
  });

export const perform = async (access: Access, patientId: string, act: Act): Promise<void> => {
  if (isOfPhases(act)) return followsPhases(access, patientId, act);
  switch (act.does) {
    case 'screen':
      return screen(access, patientId, act);
    case 'measure':
      return measure(access, patientId, act);
    case 'clear': {
      const { does: _does, ...clearance } = act;
      return void (await recordClearance(access, patientId, clearance));
    }
    case 'prescribe':
      return prescribe(access, patientId, act);
    case 'try':
      return tryInVain(access, patientId, act);
    case 'plan':
      return plan(access, patientId, act);
    case 'set-baseline':
      return writeBaseline(access, patientId, act);
    case 'end':
      return end(access, patientId, act);
    case 'sign':
      return signWaiting(access, patientId);
    case 'accept':
    case 'override':
      return answer(access, patientId, act);
    case 'message':
    case 'set-goal':
    case 'book-review':
    case 'plan-retest':
    case 'write':
      return talk(access, patientId, act);
    case 'pre-approve':
      await signPreApproval(access, patientId, itemIdOf(patientId, act.item), act.steps, act.days);
      return;
    case 'test-effusion':
      return void (await recordEffusion(access, patientId, act.joint, act.grade));
    case 'agree':
      return consentsTo(access, patientId, act);
    case 'watch':
    case 'check-alone':
      return lookAtCuff(access, patientId, act);
    case 'ask-at-home':
      return asksAtHome(access, patientId, act);
    case 'keep-as-template':
      return keepsAsTemplate(access, patientId, act);
    case 'note-event':
      await notesEvent(access, patientId, act);
  }
};
