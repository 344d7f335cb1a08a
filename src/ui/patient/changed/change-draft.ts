/** Something has changed outside a session and a morning check: what is said of it, and the note it becomes. Pure. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { type Joint, joints } from '#core/exercises/joints.ts';
import { t } from '#ui/language/words.ts';
import type { SignEntry } from '../outbox/entry-kinds.ts';

export const bodyAreas = ['head', 'chest', 'belly', 'back', 'arm', 'hand', 'leg', 'foot', 'body'] as const;
type BodyArea = (typeof bodyAreas)[number];
/** "nowhere": it sits in no place, and that is known; not the same as a place nobody can name. */
export type ChangePlace = Joint | BodyArea | 'nowhere' | 'unknown';

export const beginnings = ['now', 'today', 'yesterday', 'days', 'week'] as const;
export type Beginning = (typeof beginnings)[number] | 'unknown';

/** null: not answered. */
export interface ChangeDraft {
  readonly ticked: readonly RedFlag[];
  readonly place: ChangePlace | null;
  readonly began: Beginning | null;
  readonly text: string;
}

export const nothingSaid: ChangeDraft = { ticked: [], place: null, began: null, text: '' };

/** Left so, it is no draft that was begun. */
export const isNothing = ({ ticked, place, began, text }: ChangeDraft): boolean =>
  ticked.length === 0 && place === null && began === null && text === '';

/** A note takes no more; what stands around the patient's own words needs its room too. */
export const mostLetters = 700;

const isJoint = (place: ChangePlace): place is Joint => joints.some((joint) => joint === place);

export const placeText = (place: ChangePlace): string =>
  isJoint(place)
    ? t('joint.name', { joint: place })
    : place === 'unknown'
      ? t('ask.unknown')
      : t(`changed.area-${place}`);

export const beganText = (began: Beginning): string =>
  began === 'unknown' ? t('ask.unknown') : t(`changed.began-${began}`);

/** In the patient's language, as everything a patient writes; what was left out is not said. */
export const noteOf = ({ place, began, text }: ChangeDraft): string =>
  [
    t('changed.note'),
    ...(place === null ? [] : [t('changed.note-place', { place: placeText(place) })]),
    ...(began === null ? [] : [t('changed.note-began', { began: beganText(began) })]),
    ...(text.trim() === '' ? [] : [text.trim()]),
  ].join(' ');

/** Nothing but that something changed would tell the clinic nothing. A place, a time or words are enough. */
export const isEmptyNote = ({ place, began, text }: ChangeDraft): boolean =>
  [place, began].every((said) => said === null || said === 'unknown') && text.trim() === '';

/** Ticked, and taken back when asked once more: no warning sign, and kept. */
export const slipNote = (flags: readonly RedFlag[]): string =>
  t('changed.slip', { signs: flags.map((flag) => t(`flag.${flag}`)).join('. ') });

interface Sending {
  readonly entryId: string;
  readonly day: string;
}

export const signEntry = ({ entryId, day }: Sending, redFlags: readonly RedFlag[]): SignEntry => ({
  entryId,
  day,
  redFlags,
});
