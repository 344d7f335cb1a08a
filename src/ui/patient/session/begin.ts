/** The draft a session starts from: the doses of today, and not one answer. */
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import { asksShort } from '#core/danger/signs-asked.ts';
import type { Carer } from '#core/record/entry-words.ts';
import { askedInSession } from '#core/record/followed-joints.ts';
import { doableToday } from './doable.ts';
import type { ItemDraft, SessionDraft } from './draft.ts';
import { stepsOf } from './steps.ts';

export interface Beginning {
  readonly view: TodayView;
  readonly ownerId: string;
  readonly entryId: string;
  readonly zone: string;
  readonly now: number;
  readonly clockLacksMs?: number;
  readonly isEasierSession: boolean;
  readonly enteredAs?: Carer | null;
}

const itemOf = (exercise: TodayExercise, isEasierDay: boolean): ItemDraft => {
  const isEasierSession = isEasierDay || exercise.today === 'bad-day';
  const dose = isEasierSession ? exercise.badDay : exercise.dose;
  return {
    itemId: exercise.itemId,
    prescriptionId: exercise.prescriptionId,
    title: exercise.title,
    instructions: exercise.instructions,
    joints: exercise.joints,
    cautions: exercise.cautions.map((caution) => caution.text),
    limits: exercise.cautions.filter(({ isLimit }) => isLimit).map(({ text }) => text),
    dose,
    badDay: exercise.badDay,
    isEasierSession,
    isNew: !exercise.isFamiliar,
    planned: { dose, isEasierSession },
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
  clockLacksMs = 0,
  isEasierSession,
  enteredAs,
}: Beginning): SessionDraft => {
  const draft: SessionDraft = {
    shape: 1,
    entryId,
    ownerId,
    day: view.day,
    zone,
    kind: isEasierSession ? 'bad-day' : 'full',
    asksTwoHours: view.asksTwoHours,
    beganAt: now,
    joints: askedInSession(view.followedJoints, view.exercises),
    painLookups: view.painLookups,
    items: doableToday(view).map((exercise) => itemOf(exercise, isEasierSession)),
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
    isUsual: null,
    isRight: null,
    signForm: asksShort(view) ? 'short' : 'list',
    wholeLists: [],
    toConfirm: null,
    slips: [],
    otherJointWorse: null,
    enteredAs: enteredAs ?? null,
    scores: {},
    gaveWay: {},
    didExtra: null,
    stoppedByFlag: false,
    endedAt: null,
    answeredAt: now,
    clockLacksMs,
  };
  return { ...draft, step: stepsOf(draft)[0] ?? 'check' };
};
