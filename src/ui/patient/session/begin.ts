/** The draft a session starts from: the doses of today, and not one answer. */
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import type { Carer } from '#core/model/entry-words.ts';
import type { LineDraft, SessionDraft } from './draft.ts';
import { stepsOf } from './steps.ts';

export interface Beginning {
  readonly view: TodayView;
  readonly ownerId: string;
  readonly entryId: string;
  readonly zone: string;
  readonly now: number;
  readonly isLighter: boolean;
  readonly enteredAs?: Carer | null;
}

/** Exercises that are on today's list: planned, and not at rest. */
export const doableToday = (view: TodayView): readonly TodayExercise[] =>
  view.exercises.filter((one) => one.planned && (one.today === 'as-planned' || one.today === 'bad-day'));

const lineOf = (exercise: TodayExercise, isLighterDay: boolean): LineDraft => {
  const isLighter = isLighterDay || exercise.today === 'bad-day';
  const dose = isLighter ? exercise.badDay : exercise.dose;
  return {
    itemId: exercise.itemId,
    prescriptionId: exercise.prescriptionId,
    title: exercise.title,
    instructions: exercise.instructions,
    joints: exercise.joints,
    cautions: exercise.cautions.map((caution) => caution.text),
    dose,
    badDay: exercise.badDay,
    isLighter,
    planned: { dose, isLighter },
    leftOut: null,
    loadKg: null,
    sets: [],
    leftAt: null,
    restrictions: [],
    signs: {},
  };
};

export const beginSession = ({
  view,
  ownerId,
  entryId,
  zone,
  now,
  isLighter,
  enteredAs,
}: Beginning): SessionDraft => {
  const draft: SessionDraft = {
    shape: 1,
    entryId,
    ownerId,
    day: view.day,
    zone,
    kind: isLighter ? 'bad-day' : 'full',
    asksTwoHours: view.asksTwoHours,
    beganAt: now,
    joints: view.followedJoints,
    gates: view.gates,
    lines: doableToday(view).map((exercise) => lineOf(exercise, isLighter)),
    step: '',
    returnTo: null,
    lookedAt: [],
    isChanging: false,
    flagsBefore: null,
    flagsDuring: null,
    flagsNow: [],
    relief: null,
    ticked: {},
    news: null,
    otherJointWorse: null,
    enteredAs: enteredAs ?? null,
    scores: {},
    gaveWay: {},
    didExtra: null,
    stoppedByFlag: false,
    endedAt: null,
  };
  return { ...draft, step: stepsOf(draft)[0] ?? 'check' };
};
