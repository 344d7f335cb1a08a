/** The sheet as it is being filled in. An item nobody has answered is not sent: silence is no answer. */

import type { AskedItem } from '#api/clinician/question-in-english.ts';
import { limbs, sides } from '#core/exercises/joints.ts';
import { answerRemarks } from '#core/screening/answer-remarks.ts';
import type { ScreeningAnswer, ScreeningItemAnswer } from '#core/screening/screening.ts';
import { say } from '#messages/en/staff/screening.ts';

/** What has to be known of an item for its answer to be taken down. */
export interface Asking extends Pick<AskedItem, 'id'> {
  readonly asks: {
    readonly limbs?: boolean;
    readonly joints?: boolean;
    readonly details?: readonly unknown[];
    readonly day?: boolean;
  };
}

export interface ItemState {
  readonly answer: ScreeningAnswer | null;
  readonly details: readonly string[];
  /** "left arm" and the like. */
  readonly limbs: readonly string[];
  readonly joints: readonly string[];
  /** YYYY-MM-DD, or empty. */
  readonly day: string;
  readonly note: string;
}

export type ScreeningFormState = Readonly<Record<string, ItemState>>;

export const unanswered: ItemState = { answer: null, details: [], limbs: [], joints: [], day: '', note: '' };

/** "left arm" and the like, as a form holds them. */
export const limbOptions = limbs.flatMap((limb) => sides.map((side) => `${side} ${limb}` as const));

/** Details are asked when the answer is not "no": what is not known may be so. */
export const asksMore = (item: Asking, state: ItemState): boolean =>
  (state.answer === 'yes' || state.answer === 'not-known') &&
  Boolean(item.asks.limbs || item.asks.joints || item.asks.day || item.asks.details?.length);

export const limbOf = (text: string) => {
  const [side, limb] = text.split(' ');
  return { limb: limb as 'arm' | 'leg', side: side as 'left' | 'right' };
};

/** An answer already given, as the form holds it. */
export const stateFromAnswer = (given: ScreeningItemAnswer): ItemState => ({
  answer: given.answer,
  details: given.details ?? [],
  limbs: (given.limbs ?? []).map(({ limb, side }) => `${side} ${limb}`),
  joints: given.joints ?? [],
  day: given.day ?? '',
  note: given.note ?? '',
});

/** Answers to send, in the order of the sheet. What was ticked under an answer since changed to "no" is left out. */
export const answersFrom = (
  items: readonly Asking[],
  screening: ScreeningFormState,
): readonly ScreeningItemAnswer[] =>
  items.flatMap((item) => {
    const state = screening[item.id] ?? unanswered;
    if (state.answer === null) return [];
    const more = asksMore(item, state);
    return [
      {
        item: item.id,
        answer: state.answer,
        ...(more && state.limbs.length > 0 ? { limbs: state.limbs.map(limbOf) } : {}),
        ...(more && state.joints.length > 0 ? { joints: state.joints } : {}),
        ...(more && state.details.length > 0 ? { details: state.details } : {}),
        ...(more && item.asks.day && state.day !== '' ? { day: state.day } : {}),
        ...(state.note.trim() === '' ? {} : { note: state.note.trim() }),
      },
    ];
  });

const answerWord = {
  yes: 'yes',
  no: 'no',
  'not-known': say('answer.not-known'),
  'not-applicable': say('answer.not-applicable'),
} as const;

/** "yes (in the last four weeks; left leg)". */
export const answerInWords = (item: AskedItem, answer: ScreeningItemAnswer | undefined): string => {
  if (!answer) return say('not-answered');
  const more = [
    ...(answer.details ?? []).map((id) => item.asks.details.find((detail) => detail.id === id)?.label ?? id),
    ...(answer.limbs ?? []).map(({ limb, side }) => `${side} ${limb}`),
    ...(answer.joints ?? []).map((joint) => joint.replaceAll('-', ' ')),
    ...answerRemarks(item.asks, answer),
  ];
  return more.length > 0 ? `${answerWord[answer.answer]} (${more.join('; ')})` : answerWord[answer.answer];
};

/** Items in the order they are worth asking: what closes everything first. */
export const itemGroups = <I extends Pick<AskedItem, 'minimumFor'>>(items: readonly I[]) => [
  {
    title: say('group.any'),
    items: items.filter((item) => item.minimumFor.includes('low-load')),
  },
  {
    title: say('group.occlusion'),
    items: items.filter(
      (item) => !item.minimumFor.includes('low-load') && item.minimumFor.includes('occlusion'),
    ),
  },
  { title: say('group.other'), items: items.filter((item) => item.minimumFor.length === 0) },
];
