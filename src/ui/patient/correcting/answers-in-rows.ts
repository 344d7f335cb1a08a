/** Every answer of a sent session in a line, in the words it was asked in. */
import type { SentSession } from '#api/patient/today-view.ts';
import type { SessionEntry } from '#core/record/entries.ts';
import { weightText } from '#ui/language/weight-text.ts';
import { t, translate } from '#ui/language/words.ts';
import { missing, scoreText, yesNoText } from '../questions/answers-in-words.ts';
import type { CheckRow } from '../session/check-rows.ts';
import { type Answer, type AnswerPlace, answerAt, placesOf, stepOf } from './correction.ts';

/** What the exercises of an entry are called, and how long each hold of them is. */
export type SentNames = Pick<SentSession, 'titles' | 'held'>;

const prescriptionOf = ({ sets }: SessionEntry, itemId: string): string =>
  sets.find((set) => set.itemId === itemId)?.prescriptionId ?? '';

const titleOf = (entry: SessionEntry, { titles }: SentNames, itemId: string): string =>
  translate(titles[prescriptionOf(entry, itemId)] ?? '');

/** Seconds of each hold of a set; null where the exercise moves. */
export const heldIn = (entry: SessionEntry, place: AnswerPlace, { held }: SentNames): number | null =>
  place.what === 'set' ? (held?.[entry.sets[place.index]!.prescriptionId] ?? null) : null;

/** The question an answer was given to. */
export const questionAt = (entry: SessionEntry, place: AnswerPlace, names: SentNames): string => {
  switch (place.what) {
    case 'set': {
      const { itemId, set } = entry.sets[place.index]!;
      const title = titleOf(entry, names, itemId);
      const seconds = heldIn(entry, place, names);
      return seconds === null
        ? t('correct.set', { title, set })
        : t('correct.set-held', { title, set, seconds });
    }
    case 'load':
      return t('correct.load', { title: titleOf(entry, names, place.itemId) });
    case 'burn':
    case 'cuff':
    case 'extra':
      return t(`after.${place.what}`);
    default:
      return t(`after.${place.what}`, { joint: place.joint });
  }
};

const valueText = ({ what }: AnswerPlace, answer: Answer): string => {
  if (typeof answer === 'boolean') return yesNoText(answer);
  if (what === 'set') return answer === null ? t('correct.not-counted') : String(answer);
  if (answer === null) return missing();
  return what === 'load' ? weightText(answer) : scoreText(answer);
};

export const correctionRows = (entry: SessionEntry, names: SentNames): readonly CheckRow[] =>
  placesOf(entry).map((place) => ({
    step: stepOf(place),
    name: questionAt(entry, place, names),
    value: valueText(place, answerAt(entry, place)),
  }));
