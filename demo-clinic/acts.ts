/** Short forms for what a clinician does, so that a story reads like a note. */

import type { CourseForm } from '#core/episode/care-event.ts';
import type { ConsentKind } from '#core/episode/consent.ts';
import type { GoalState } from '#core/episode/goals.ts';
import type { NoteContact, NotePart } from '#core/episode/visit-note.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Weekday } from '#core/prescribing/programme/planned-sessions.ts';
import type { PrescriptionRequest } from '#core/prescribing/propose.ts';
import { type ScreeningItemId, screeningItems } from '#core/screening/items.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { weekdayNames } from './diary.ts';
import type { RetestAct } from './retest-act.ts';
import type { Act, Taken } from './story.ts';

type Told = Partial<Record<ScreeningItemId, Omit<ScreeningItemAnswer, 'item'>>>;

/** The whole sheet; what is not named was answered no. */
export const screens = (told: Told = {}): Act => ({
  does: 'screen',
  answers: screeningItems.map(({ id }) => ({ item: id, ...(told[id] ?? { answer: 'no' as const }) })),
});

export const measures = (...taken: readonly Taken[]): Act => ({ does: 'measure', taken });

export const body = (massKg: number, statureCm: number): readonly Taken[] => [
  { kind: 'body-mass', massKg },
  { kind: 'stature', statureCm },
];

export const pressure = (systolicMmhg: number, diastolicMmhg: number): Taken => ({
  kind: 'blood-pressure',
  systolicMmhg,
  diastolicMmhg,
  position: 'seated',
});

export const toFailure = (
  exerciseId: string,
  side: 'left' | 'right' | 'both',
  loadKg: number,
  repetitions: number,
): Taken => ({ kind: 'repetitions-to-failure', exerciseId, side, loadKg, repetitions });

export const prescribes = (item: string, request: PrescriptionRequest): Act => ({
  does: 'prescribe',
  item,
  request,
});

/** `plans({ knee: 'Mon Wed Fri' })` */
export const plans = (weekOf: Readonly<Record<string, string>>): Act => ({
  does: 'plan',
  week: Object.fromEntries(
    Object.entries(weekOf).map(([item, days]) => [
      item,
      days.split(' ').map((name) => ((weekdayNames as readonly string[]).indexOf(name) + 1) as Weekday),
    ]),
  ),
});

/** Usual values with the band no wider than usual pain, the published behaviour. */
export const setsBaseline = (
  joint: Joint,
  usualPain: number,
  usualStiffnessMinutes: number,
  reason: string,
  usualSwelling: 'none' | 'slight' = 'none',
): Act => ({
  does: 'set-baseline',
  joint,
  usualPain,
  usualPainTop: usualPain,
  usualStiffnessMinutes,
  usualSwelling,
  reason,
});

/** What the patient says at intake: it counts as told until two weeks of mornings are known. */
export const toldBaseline = (joint: Joint, usualPain: number, usualStiffnessMinutes: number): Act => ({
  does: 'set-baseline',
  joint,
  usualPain,
  usualPainTop: usualPain,
  usualStiffnessMinutes,
  usualSwelling: 'none',
  provisional: true,
  reason: 'As told at intake; to be set again from two weeks of mornings.',
});

export const consentGiven = (...to: readonly ConsentKind[]): Act => ({ does: 'agree', to });

/** A medicine of a class was started, stopped or changed. */
export const medicine = (
  act: 'start' | 'stop' | 'change',
  medicineClass: string,
  daysAgo: number,
  remark: string,
): Act => ({
  does: 'note-event',
  kind: 'medicine-change',
  joint: null,
  daysAgo,
  medicine: { act, medicineClass },
  remark,
});

export const missedDose = (medicineClass: string, remark: string): Act => ({
  does: 'note-event',
  kind: 'missed-dose',
  joint: null,
  medicine: { act: null, medicineClass },
  remark,
});

export const steroidCourse = (days: number, form: CourseForm, remark: string): Act => ({
  does: 'note-event',
  kind: 'steroid-course',
  joint: null,
  course: { days, form },
  remark,
});

export const injection = (joint: Joint): Act => ({ does: 'note-event', kind: 'joint-injection', joint });

export const signs: Act = { does: 'sign' };

export const sets = (goal: string, state: GoalState): Act => ({ does: 'set-goal', goal, state });
export const writes = (contact: NoteContact, parts: Partial<Record<NotePart, string>>): Act => ({
  does: 'write',
  contact,
  ...parts,
});
export const books = (days: number, time: string): Act => ({ does: 'book-review', days, time });
export const plansRetest = (measure: RetestAct['measure'], inDays: number, everyDays: number): Act => ({
  does: 'plan-retest',
  measure,
  inDays,
  everyDays,
});
export const keepsAsTemplate = (name: string): Act => ({ does: 'keep-as-template', name });
export const asksAtHome = (what: 'activities' | 'own-questions', everyDays: number): Act => ({
  does: 'ask-at-home',
  what,
  everyDays,
});
export const tells = (text: string): Act => ({ does: 'message', text });

type OfProtocol<D extends Act['does']> = Omit<Extract<Act, { does: D }>, 'does' | 'protocol'>;

export const beginsProtocol = (protocol: string, head: OfProtocol<'begin-protocol'>): Act => ({
  does: 'begin-protocol',
  protocol,
  ...head,
});
export const writesPhase = (protocol: string, phase: OfProtocol<'write-phase'>): Act => ({
  does: 'write-phase',
  protocol,
  ...phase,
});
export const confirmsPhase = (protocol: string, place: number, seen: string): Act => ({
  does: 'confirm-phase',
  protocol,
  place,
  seen,
});
