/**
 * What was pressed for one person of a group hour, as flat texts by name, so that it can be kept as a draft; and what it
 * leaves of today. A name that is missing is a question not answered, never zero.
 */
import type { Today } from '#core/decision/answers.ts';
import { prescribedLoadKg } from '#core/decision/dose/volume.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { isRest, leftByPain, leftOfExercise, mostCautiousToday } from '#core/decision/left-of-today.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { type Dose, repetitionsOfSet } from '#core/prescribing/dose.ts';
import type { SessionEntry } from '#core/record/entries.ts';
import type { GroupPerson } from '../answers.ts';
import { listFrom } from '../forms/sent/sent-form.ts';

export type Typed = Readonly<Record<string, string>>;
export type TodayOfPerson = GroupPerson['today'];
type ExerciseOfPerson = TodayOfPerson['exercises'][number];

/** Said to be open; no answer to the engine, and asked no more. */
export const notSaid = 'not-said';

export const setName = (itemId: string, set: number): string => `set:${itemId}:${set}`;
export const effortName = (itemId: string, set: number): string => `effort:${itemId}:${set}`;
export const stopName = (itemId: string, set: number): string => `stop:${itemId}:${set}`;
export const loadName = (itemId: string): string => `load:${itemId}`;
/** With which of the two doses the exercise was begun. */
export const asName = (itemId: string): string => `as:${itemId}`;
export const skipName = (itemId: string): string => `skip:${itemId}`;
/** A set as it was saved, in a correction. */
export const wasName = (itemId: string, set: number): string => `was:${itemId}:${set}`;
/** Not on the programme of today, and done all the same. */
export const takeName = (itemId: string): string => `take:${itemId}`;
export const painName = (when: 'before' | 'during' | 'after', joint: Joint): string => `${when}:${joint}`;
export const gaveWayName = (joint: Joint): string => `gave-way:${joint}`;

/** What was ticked of a list; null = not asked yet, or said to be open. */
export const ticksIn = <T extends string>(text: string | undefined): readonly T[] | null =>
  text === undefined || text === notSaid ? null : (listFrom(text) as T[]);

export const scoreIn = (text: string | undefined): number | null =>
  text === undefined || text === notSaid ? null : Number(text);

export const answerIn = (text: string | undefined): boolean | null =>
  text === 'yes' ? true : text === 'no' ? false : null;

export interface SetDone {
  readonly set: number;
  /** null = not counted. */
  readonly repetitions: number | null;
  readonly effort: number | null;
  /** Both presses were made. */
  readonly isWhole: boolean;
}

type SavedSet = Omit<SessionEntry['sets'][number], 'itemId'>;

export interface ExerciseNow {
  readonly exercise: ExerciseOfPerson;
  readonly dose: Dose;
  readonly isEasier: boolean;
  /** What is left of it by the plan and by the pain told now. */
  readonly today: Today;
  /** "cuff": its looks at fingers or toes have no place on this page. */
  readonly state: 'open' | 'done' | 'rest' | 'not-planned' | 'skipped' | 'cuff';
  readonly sets: readonly SetDone[];
  /** In a correction the sets as they were saved; else none. */
  readonly was: readonly SavedSet[];
  /** The set that is asked about; null where none is. */
  readonly next: number | null;
}

const savedIn = (typed: Typed, itemId: string): readonly SavedSet[] =>
  Object.entries(typed)
    .filter(([name]) => name.startsWith(wasName(itemId, 0).slice(0, -1)))
    .map(([, text]) => JSON.parse(text) as SavedSet)
    .toSorted((one, other) => one.set - other.set);

/** Each set that is asked about: a set that was saved is one of them, though fewer are prescribed by now. */
const numbersOf = (dose: Dose, was: readonly SavedSet[]): readonly number[] =>
  Array.from({ length: Math.max(dose.sets, ...was.map(({ set }) => set)) }, (_, place) => place + 1);

const setsIn = (typed: Typed, itemId: string, numbers: readonly number[]): readonly SetDone[] =>
  numbers.flatMap((set) => {
    const [count, effort] = [typed[setName(itemId, set)], typed[effortName(itemId, set)]];
    return count === undefined
      ? []
      : [{ set, repetitions: scoreIn(count), effort: scoreIn(effort), isWhole: effort !== undefined }];
  });

/** A set that fell short: why is asked. */
export const isShort = (dose: Dose, { set, repetitions }: Pick<SetDone, 'set' | 'repetitions'>): boolean =>
  repetitions !== null && repetitions < repetitionsOfSet(dose, set).low;

/** A pain that was told now only ever takes away from what stands. */
const leftNow = ({ painLookups }: TodayOfPerson, exercise: ExerciseOfPerson, typed: Typed): Today =>
  mostCautiousToday([
    exercise.today,
    leftOfExercise(
      leftByPain(painLookups, (joint) => scoreIn(typed[painName('before', joint)])),
      exercise.joints,
    ),
  ]);

/** What is asked one by one where not all is as usual. */
const askedApart = ['other-joint', 'relief', 'news'] as const;

/** Every answer before the work is there, open ones among them. */
export const isAnsweredBefore = ({ joints }: TodayOfPerson, typed: Typed): boolean =>
  joints.every((joint) => typed[painName('before', joint)] !== undefined) &&
  (typed.usual === 'yes' || (typed.usual === 'no' && askedApart.every((name) => typed[name] !== undefined)));

/** Where not all is as usual somebody says that it was gone through: several kinds of news can be ticked. */
const isAskedBefore = (today: TodayOfPerson, typed: Typed): boolean =>
  isAnsweredBefore(today, typed) &&
  (typed.usual === 'yes' || typed['gone-through'] === 'yes' || typed.amends !== undefined);

const exerciseNow = (person: TodayOfPerson, exercise: ExerciseOfPerson, typed: Typed): ExerciseNow => {
  const { itemId } = exercise;
  const was = savedIn(typed, itemId);
  const begun = typed[asName(itemId)] ?? (was[0] && (was[0].easier ? 'easier' : 'planned'));
  const today = isAskedBefore(person, typed) ? leftNow(person, exercise, typed) : exercise.today;
  const isEasier = begun ? begun === 'easier' : typed.easier === 'yes' || today === 'bad-day';
  const dose = isEasier ? exercise.badDay : exercise.dose;
  const numbers = numbersOf(dose, was);
  const sets = setsIn(typed, itemId, numbers);
  const at = { exercise, dose, isEasier, today, sets, was, next: null };
  if (!begun) {
    if (isRest(today)) return { ...at, state: 'rest' };
    if (dose.method === 'occlusion') return { ...at, state: 'cuff' };
    if (!exercise.isPlanned && typed[takeName(itemId)] !== 'yes') return { ...at, state: 'not-planned' };
  }
  if (typed[skipName(itemId)] === 'yes') return { ...at, state: 'skipped' };
  const open = numbers.find((set) => !sets.some((one) => one.set === set && one.isWhole));
  return { ...at, state: open === undefined ? 'done' : 'open', next: open ?? null };
};

export const exercisesNow = (person: TodayOfPerson, typed: Typed): readonly ExerciseNow[] =>
  person.exercises.map((exercise) => exerciseNow(person, exercise, typed));

/** What was pressed, else what was saved, else what is prescribed; null = not known of a saved set. */
export const loadKgOf = ({ exercise, dose, was }: ExerciseNow, set: number, typed: Typed): number | null => {
  const pressed = scoreIn(typed[loadName(exercise.itemId)]);
  const saved = was.find((one) => one.set === set) ?? was[0];
  return pressed ?? (saved ? saved.loadKg : prescribedLoadKg(dose));
};

/** "waiting": to be sent, and no answer of the clinic's came. */
export type Stage = 'stopped' | 'reporting' | 'waiting' | 'signs' | 'before' | 'work' | 'after' | 'sent';

/** Warning signs that were told and not sent yet. */
export const toldIn = (typed: Typed): readonly RedFlag[] =>
  [typed.signs, typed['signs-now'], typed['signs-after']].flatMap((text) => ticksIn<RedFlag>(text) ?? []);

/** Where the person stands: warning signs first of all. */
export const stageOf = ({ today, session }: Pick<GroupPerson, 'today' | 'session'>, typed: Typed): Stage => {
  if (toldIn(typed).length > 0) return 'reporting';
  if (typed.amends === undefined) {
    if (today.stop !== null || (session?.entry.redFlags ?? []).length > 0) return 'stopped';
    if (session) return 'sent';
  }
  if (typed.signs === undefined) return 'signs';
  if (!isAskedBefore(today, typed)) return 'before';
  const isOpen = exercisesNow(today, typed).some(({ state }) => state === 'open');
  return isOpen && typed.finished !== 'yes' ? 'work' : 'after';
};
