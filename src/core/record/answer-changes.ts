/** What a correction changed in a session that was sent: each answer before and after, as values. */
import type { Joint } from '../exercises/joints.ts';
import type { SessionEntry } from './entries.ts';

type Value = number | boolean | string | null;

export interface AnswerChange {
  readonly what:
    | 'repetitions'
    | 'load'
    | 'pain-before'
    | 'pain-during'
    | 'pain-after'
    | 'burn'
    | 'cuff'
    | 'gave-way'
    | 'extra';
  /** Exercise of a set; null where it speaks of none. */
  readonly itemId: string | null;
  readonly set: number | null;
  readonly joint: Joint | null;
  readonly from: Value;
  readonly to: Value;
}

const changed = (
  what: AnswerChange['what'],
  [from, to]: readonly [Value, Value],
  at: Partial<Pick<AnswerChange, 'itemId' | 'set' | 'joint'>> = {},
): readonly AnswerChange[] =>
  from === to ? [] : [{ what, itemId: null, set: null, joint: null, ...at, from, to }];

const setChanges = (before: SessionEntry, after: SessionEntry): readonly AnswerChange[] =>
  before.sets.flatMap((was) => {
    const is = after.sets.find(({ itemId, set }) => itemId === was.itemId && set === was.set);
    if (!is) return [];
    const at = { itemId: was.itemId, set: was.set };
    return [
      ...changed('repetitions', [was.repetitions, is.repetitions], at),
      ...changed('load', [was.loadKg, is.loadKg], at),
    ];
  });

const jointChanges = (before: SessionEntry, after: SessionEntry): readonly AnswerChange[] =>
  before.joints.flatMap((was) => {
    const is = after.joints.find(({ joint }) => joint === was.joint);
    if (!is) return [];
    const at = { joint: was.joint };
    return [
      ...changed('pain-before', [was.painBefore, is.painBefore], at),
      ...changed('pain-during', [was.painDuring, is.painDuring], at),
      ...changed('pain-after', [was.painAfter, is.painAfter], at),
      ...changed('gave-way', [was.gaveWay, is.gaveWay], at),
    ];
  });

/** Burn and the bother of a cuff are asked once, and stand with each joint alike. */
export const answerChanges = (before: SessionEntry, after: SessionEntry): readonly AnswerChange[] => {
  const [was, is] = [before.joints[0], after.joints[0]];
  return [
    ...setChanges(before, after),
    ...jointChanges(before, after),
    ...changed('burn', [was?.muscleBurn ?? null, is?.muscleBurn ?? null]),
    ...changed('cuff', [was?.cuffDiscomfort ?? null, is?.cuffDiscomfort ?? null]),
    ...changed('extra', [before.didExtra, after.didExtra]),
  ];
};
