/**
 * What is heard on a page of the session, and when: repetitions in the tempo of the dose, the last seconds of a
 * rest and its end, the end of the time with a cuff. A dose without a tempo is not counted, only begun.
 */

import { heldSeconds } from '#core/decision/dose/volume.ts';
import { repetitionsOfSet } from '#core/prescribing/dose.ts';
import { t } from '#ui/language/words.ts';
import { type ItemDraft, type SessionDraft, setOf } from '../session/draft.ts';
import { restEndsAt } from '../session/rest-end.ts';
import { isCuffOn, isTimeUp } from '../session/restriction.ts';
import { partsOf } from '../session/step-names.ts';

export interface Cue {
  readonly at: number;
  readonly text: string;
  /** Belongs to the count of a set: no longer said once a button of the set is pressed. */
  readonly isOfSet?: true;
}

/** To get into place before a set; and between two sentences. */
const leadMs = 5000;
const pauseMs = 2000;

const againMs = 10_000;
/** A phone that nobody answers says it for half an hour. */
const timesAgain = 180;

const lastSeconds = [3, 2, 1];

const timeUpCues = (openedAt: number): readonly Cue[] =>
  Array.from({ length: timesAgain }, (_, time) => ({
    at: openedAt + time * againMs,
    text: t('cuff.off-time-up'),
  }));

const setTold = (item: ItemDraft, set: number): string => {
  const { low, high } = repetitionsOfSet(item.dose, set);
  const of = item.dose.sets;
  const seconds = heldSeconds(item.dose);
  if (seconds !== null)
    return low === high
      ? t('ear.set-held-same', { set, of, low, seconds })
      : t('ear.set-held', { set, of, low, high, seconds });
  return low === high ? t('ear.set-same', { set, of, low }) : t('ear.set', { set, of, low, high });
};

/** Of a hold its beginning and its end; the number is said when it is over, so that what is counted was held. */
const heldCues = (
  item: ItemDraft,
  { set, from, seconds }: { readonly set: number; readonly from: number; readonly seconds: number },
): readonly Cue[] => {
  const begin = from + leadMs;
  const { high } = repetitionsOfSet(item.dose, set);
  const starts = Array.from(
    { length: high },
    (_, done) => begin + done * item.dose.secondsPerRepetition * 1000,
  );
  const end = starts.at(-1)! + seconds * 1000;
  return [
    { at: from, text: setTold(item, set), isOfSet: true },
    ...starts.flatMap((at, done): readonly Cue[] => [
      { at, text: t('ear.hold'), isOfSet: true },
      { at: at + seconds * 1000, text: `${done + 1}. ${t('ear.let-go')}`, isOfSet: true },
    ]),
    { at: end + pauseMs, text: t('ear.press'), isOfSet: true },
  ];
};

const setCues = (item: ItemDraft, set: number, from: number): readonly Cue[] => {
  const begin = from + leadMs;
  const { high } = repetitionsOfSet(item.dose, set);
  const { secondsPerRepetition } = item.dose;
  const begun: readonly Cue[] = [
    { at: from, text: setTold(item, set), isOfSet: true },
    { at: begin, text: t('ear.start'), isOfSet: true },
  ];
  if (!(secondsPerRepetition > 0)) return begun;
  const seconds = heldSeconds(item.dose);
  if (seconds !== null) return heldCues(item, { set, from, seconds });
  const after = (repetitions: number) => begin + repetitions * secondsPerRepetition * 1000;
  return [
    ...begun,
    ...Array.from(
      { length: high },
      (_, done): Cue => ({ at: after(done + 1), text: String(done + 1), isOfSet: true }),
    ),
    { at: after(high) + pauseMs, text: t('ear.press'), isOfSet: true },
  ];
};

const restCues = (endsAt: number, openedAt: number): readonly Cue[] =>
  [
    { at: endsAt - 10_000, text: t('ear.rest-left', { seconds: 10 }) },
    ...lastSeconds.map((second) => ({ at: endsAt - second * 1000, text: String(second) })),
    { at: endsAt, text: t('rest.over') },
  ].filter(({ at }) => at >= openedAt);

const isCounted = (item: ItemDraft, set: number): boolean =>
  setOf(item, set).finishedAt === null && (item.dose.method !== 'occlusion' || isCuffOn(item));

/** With a cuff that stays up nothing is asked between the sets: the rest begins on the page of the next. */
const beginsRest = (name: string, { dose }: ItemDraft): boolean =>
  name === 'rest' || (dose.method === 'occlusion' && dose.inflation === 'continuous');

const workCues = (draft: SessionDraft, openedAt: number): readonly Cue[] => {
  const { name, item: index, set } = partsOf(draft.step);
  const item = draft.items[index];
  if (item && name === 'cuff-off' && isCuffOn(item))
    return [{ at: openedAt, text: t(item.leftAt === null ? 'cuff.off-finished' : 'cuff.off-early') }];
  if (!item || (name !== 'set' && name !== 'rest')) return [];
  const endsAt = restEndsAt(item, name === 'set' ? set - 1 : set);
  const isResting = endsAt !== null && endsAt > openedAt;
  const from = isResting ? endsAt + pauseMs : openedAt;
  return [
    ...(isResting && beginsRest(name, item) ? [{ at: openedAt, text: t('rest.title') }] : []),
    ...(isResting ? restCues(endsAt, openedAt) : []),
    ...(name === 'set' && isCounted(item, set) ? setCues(item, set, from) : []),
  ];
};

const isUp = (draft: SessionDraft, now: number): boolean => draft.items.some((item) => isTimeUp(item, now));

/** Changes with what there is to hear. */
export const earKey = (draft: SessionDraft, now: number): string =>
  [draft.step, isUp(draft, now) ? 'up' : '', draft.items.some(isCuffOn) ? 'cuff' : ''].join(' ');

/** All of a page that is opened at this moment. */
export const earCues = (draft: SessionDraft, openedAt: number): readonly Cue[] =>
  isUp(draft, openedAt) ? timeUpCues(openedAt) : workCues(draft, openedAt);

/** The last that fell due: what a phone slept through is not said afterwards, one upon the other. */
export const dueCue = (cues: readonly Cue[], after: number, upTo: number): Cue | null =>
  cues.filter(({ at }) => at > after && at <= upTo).at(-1) ?? null;
