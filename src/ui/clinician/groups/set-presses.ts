/** What is pressed for a set, and how a set that was pressed is taken back. */
import { repetitionsOfSet } from '#core/prescribing/dose.ts';
import {
  asName,
  type ExerciseNow,
  effortName,
  notSaid,
  setName,
  stopName,
  type Typed,
} from './group-answers.ts';

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
