/**
 * What was pressed for one person of a group hour, as flat texts by name, so that it can be kept as a draft; and what it
 * leaves of today. A name that is missing is a question not answered, never zero.
 */
import type { Today } from '#core/decision/answers.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { isRest, leftByPain, leftOfExercise, mostCautiousToday } from '#core/decision/left-of-today.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { type Dose, repetitionsOfSet } from '#core/prescribing/dose.ts';
import type { GroupPerson } from '../answers.ts';

export type Typed = Readonly<Record<string, string>>;
export type TodayOfPerson = GroupPerson['today'];
type ExerciseOfPerson = TodayOfPerson['exercises'][number];

/** Said to be open; no answer to the engine, and asked no more. */
export const notSaid = 'not-said';
const separator = '~';

export const setName = (itemId: string, set: number): string => `set:${itemId}:${set}`;
export const effortName = (itemId: string, set: number): string => `effort:${itemId}:${set}`;
export const stopName = (itemId: string, set: number): string => `stop:${itemId}:${set}`;
export const loadName = (itemId: string): string => `load:${itemId}`;
/** With which of the two doses the exercise was begun. */
export const asName = (itemId: string): string => `as:${itemId}`;
export const skipName = (itemId: string): string => `skip:${itemId}`;
/** Not on the programme of today, and done all the same. */
export const takeName = (itemId: string): string => `take:${itemId}`;
export const painName = (when: 'before' | 'during' | 'after', joint: Joint): string => `${when}:${joint}`;
export const gaveWayName = (joint: Joint): string => `gave-way:${joint}`;

export const flagsText = (flags: readonly string[]): string =>
  flags.length === 0 ? 'none' : flags.join(separator);

/** null = not asked yet. */
export const flagsIn = (text: string | undefined): readonly RedFlag[] | null =>
  text === undefined ? null : text === 'none' ? [] : (text.split(separator) as RedFlag[]);

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

export interface ExerciseNow {
  readonly exercise: ExerciseOfPerson;
  readonly dose: Dose;
  readonly isEasier: boolean;
  /** What is left of it by the plan and by the pain told now. */
  readonly today: Today;
  /** "cuff": its looks at fingers or toes have no place on this page. */
  readonly state: 'open' | 'done' | 'rest' | 'not-planned' | 'skipped' | 'cuff';
  readonly sets: readonly SetDone[];
  /** The set that is asked about; null where none is. */
  readonly next: number | null;
}

const setsIn = (typed: Typed, itemId: string, dose: Dose): readonly SetDone[] =>
  Array.from({ length: dose.sets }, (_, place) => place + 1).flatMap((set) => {
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
  const begun = typed[asName(itemId)];
  const today = isAskedBefore(person, typed) ? leftNow(person, exercise, typed) : exercise.today;
  const isEasier = begun ? begun === 'easier' : typed.easier === 'yes' || today === 'bad-day';
  const dose = isEasier ? exercise.badDay : exercise.dose;
  const sets = setsIn(typed, itemId, dose);
  const at = { exercise, dose, isEasier, today, sets, next: null };
  if (!begun) {
    if (isRest(today)) return { ...at, state: 'rest' };
    if (dose.method === 'occlusion') return { ...at, state: 'cuff' };
    if (!exercise.isPlanned && typed[takeName(itemId)] !== 'yes') return { ...at, state: 'not-planned' };
  }
  if (typed[skipName(itemId)] === 'yes') return { ...at, state: 'skipped' };
  const open = Array.from({ length: dose.sets }, (_, place) => place + 1).find(
    (set) => !sets.some((one) => one.set === set && one.isWhole),
  );
  return { ...at, state: open === undefined ? 'done' : 'open', next: open ?? null };
};

export const exercisesNow = (person: TodayOfPerson, typed: Typed): readonly ExerciseNow[] =>
  person.exercises.map((exercise) => exerciseNow(person, exercise, typed));

/** "waiting": to be sent, and no answer of the clinic's came. */
export type Stage = 'stopped' | 'reporting' | 'waiting' | 'signs' | 'before' | 'work' | 'after' | 'sent';

/** Warning signs that were told and not sent yet. */
export const toldIn = (typed: Typed): readonly RedFlag[] =>
  [typed.signs, typed['signs-now'], typed['signs-after']].flatMap((text) => flagsIn(text) ?? []);

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

/** One press: its label, and what it leaves typed. */
interface Press {
  readonly label: string;
  readonly typed: Typed;
}

const efforts = [0, 1, 2, 3, 4, 5] as const;

interface SetPresses {
  readonly set: number;
  readonly asks: 'count' | 'effort';
  readonly presses: readonly Press[];
}

/** What is pressed for the set that is asked about: the count as prescribed, then how many more could have been done. */
export const pressesFor = (now: ExerciseNow, typed: Typed, words: { notSaid: string }): SetPresses | null => {
  const { next: set, dose, exercise, isEasier } = now;
  if (set === null) return null;
  const { itemId } = exercise;
  if (typed[setName(itemId, set)] === undefined) {
    const { high } = repetitionsOfSet(dose, set);
    const as = { [asName(itemId)]: isEasier ? 'easier' : 'planned' };
    return {
      set,
      asks: 'count',
      presses: [{ label: String(high), typed: { ...as, [setName(itemId, set)]: String(high) } }],
    };
  }
  const name = effortName(itemId, set);
  return {
    set,
    asks: 'effort',
    presses: [
      ...efforts.map((effort) => ({ label: String(effort), typed: { [name]: String(effort) } })),
      { label: words.notSaid, typed: { [name]: notSaid } },
    ],
  };
};

/** Without what was typed of a set and whatever came after the count of it. */
export const withoutSet = (typed: Typed, itemId: string, set: number): Typed => {
  const gone = [setName(itemId, set), effortName(itemId, set), stopName(itemId, set)];
  const left = Object.fromEntries(Object.entries(typed).filter(([name]) => !gone.includes(name)));
  const isUnbegun = !Object.keys(left).some((name) => name.startsWith(`set:${itemId}:`));
  return isUnbegun
    ? Object.fromEntries(Object.entries(left).filter(([name]) => name !== asName(itemId)))
    : left;
};
