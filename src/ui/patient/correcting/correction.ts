/** A session that was sent, answer by answer: what can be put right, and the entry with one answer put right. Pure. */
import type { SentSession } from '#api/patient/today-view.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { entryFormat, type SessionEntry } from '#core/record/entries.ts';
import type { Carer } from '#core/record/entry-words.ts';

export type AnswerPlace =
  | { readonly what: 'set'; readonly index: number }
  | { readonly what: 'load'; readonly itemId: string }
  | { readonly what: 'during' | 'after' | 'gave-way'; readonly joint: Joint }
  | { readonly what: 'burn' | 'cuff' | 'extra' };

const loadOf = ({ sets }: SessionEntry, itemId: string): number | null =>
  sets.find((set) => set.itemId === itemId)?.loadKg ?? null;

/** Work without a weight has none to put right. */
const itemsWithWeight = ({ sets }: SessionEntry): readonly string[] => [
  ...new Set(sets.filter(({ loadKg }) => loadKg !== 0).map(({ itemId }) => itemId)),
];

const usedCuff = ({ limbChecks, joints }: SessionEntry): boolean =>
  (limbChecks ?? []).length > 0 || joints.some(({ cuffDiscomfort }) => cuffDiscomfort !== null);

/** Every answer that can be put right, in the order it was asked. */
export const placesOf = (entry: SessionEntry): readonly AnswerPlace[] => {
  const joints = entry.joints.map(({ joint }) => joint);
  return [
    ...entry.sets.map((_, index): AnswerPlace => ({ what: 'set', index })),
    ...itemsWithWeight(entry).map((itemId): AnswerPlace => ({ what: 'load', itemId })),
    ...joints.flatMap((joint): readonly AnswerPlace[] => [
      { what: 'during', joint },
      { what: 'after', joint },
    ]),
    ...(joints.length > 0 ? ([{ what: 'burn' }] as const) : []),
    ...(joints.length > 0 && usedCuff(entry) ? ([{ what: 'cuff' }] as const) : []),
    ...joints.map((joint): AnswerPlace => ({ what: 'gave-way', joint })),
    { what: 'extra' },
  ];
};

/** "set:2", "during:left-knee", "burn": what the page of an answer is called in the browser's history. */
export const stepOf = (place: AnswerPlace): string =>
  'index' in place
    ? `set:${place.index}`
    : 'itemId' in place
      ? `load:${place.itemId}`
      : 'joint' in place
        ? `${place.what}:${place.joint}`
        : place.what;

export type Answer = number | boolean | null;

export const answerAt = (entry: SessionEntry, place: AnswerPlace): Answer => {
  const first = entry.joints[0];
  switch (place.what) {
    case 'set':
      return entry.sets[place.index]?.repetitions ?? null;
    case 'load':
      return loadOf(entry, place.itemId);
    case 'burn':
      return first?.muscleBurn ?? null;
    case 'cuff':
      return first?.cuffDiscomfort ?? null;
    case 'extra':
      return entry.didExtra;
    default: {
      const row = entry.joints.find(({ joint }) => joint === place.joint);
      return row
        ? { during: row.painDuring, after: row.painAfter, 'gave-way': row.gaveWay }[place.what]
        : null;
    }
  }
};

type SetRow = SessionEntry['sets'][number];
type JointRow = SessionEntry['joints'][number];

const numberOf = (answer: Answer): number | null => (typeof answer === 'number' ? answer : null);
const yesOf = (answer: Answer): boolean | null => (typeof answer === 'boolean' ? answer : null);

/** Fewer than was said, or not counted: why is not known, where nothing had stopped it. */
const withCount = (row: SetRow, repetitions: number | null): SetRow => ({
  ...row,
  repetitions,
  stopReason:
    row.stopReason === 'none' && (repetitions === null || repetitions < (row.repetitions ?? 0))
      ? 'unknown'
      : row.stopReason,
});

const ofJoint = (row: JointRow, place: AnswerPlace, answer: Answer): JointRow => {
  if (place.what === 'burn') return { ...row, muscleBurn: numberOf(answer) };
  if (place.what === 'cuff') return { ...row, cuffDiscomfort: numberOf(answer) };
  if (!('joint' in place) || place.joint !== row.joint) return row;
  if (place.what === 'during') return { ...row, painDuring: numberOf(answer) };
  if (place.what === 'after') return { ...row, painAfter: numberOf(answer) };
  return { ...row, gaveWay: yesOf(answer) };
};

/** null: not known. Every other answer stays as it was sent. */
export const putRight = (entry: SessionEntry, place: AnswerPlace, answer: Answer): SessionEntry => {
  if (place.what === 'extra') return { ...entry, didExtra: yesOf(answer) };
  if (place.what === 'set')
    return {
      ...entry,
      sets: entry.sets.map((row, index) => (index === place.index ? withCount(row, numberOf(answer)) : row)),
    };
  if (place.what === 'load')
    return {
      ...entry,
      sets: entry.sets.map((row) =>
        row.itemId === place.itemId ? { ...row, loadKg: numberOf(answer) } : row,
      ),
    };
  return { ...entry, joints: entry.joints.map((row) => ofJoint(row, place, answer)) };
};

interface Sending {
  readonly entryId: string;
  readonly now: number;
  readonly enteredAs: Carer | null;
}

/** In the place of what was sent; that stays with the clinic beside it. */
export const amending = (
  { entry: before }: SentSession,
  entry: SessionEntry,
  { entryId, now, enteredAs }: Sending,
): SessionEntry => {
  const { enteredAs: _, amends: __, ...answers } = entry;
  return {
    ...answers,
    ...(enteredAs ? { enteredAs } : {}),
    format: entryFormat,
    entryId,
    amends: before.entryId,
    sentAt: now,
  };
};
