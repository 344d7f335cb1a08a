/** Every answer of a sent session in a line, in the words it was asked in. */
import type { SentSession } from '#api/patient/today-view.ts';
import type { SessionEntry } from '#core/record/entries.ts';
import { weightText } from '#ui/language/weight-text.ts';
import { t, translate } from '#ui/language/words.ts';
import { missing, scoreText, yesNoText } from '../questions/answers-in-words.ts';
import type { CheckRow } from '../session/check-rows.ts';
import { type Answer, type AnswerPlace, answerAt, placesOf, stepOf } from './correction.ts';

type Titles = SentSession['titles'];

const titleOf = ({ sets }: SessionEntry, titles: Titles, itemId: string): string => {
  const { prescriptionId = '' } = sets.find((set) => set.itemId === itemId) ?? {};
  return translate(titles[prescriptionId] ?? '');
};

/** The question an answer was given to. */
export const questionAt = (entry: SessionEntry, place: AnswerPlace, titles: Titles): string => {
  switch (place.what) {
    case 'set': {
      const { itemId, set } = entry.sets[place.index]!;
      return t('correct.set', { title: titleOf(entry, titles, itemId), set });
    }
    case 'load':
      return t('correct.load', { title: titleOf(entry, titles, place.itemId) });
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

export const correctionRows = (entry: SessionEntry, titles: Titles): readonly CheckRow[] =>
  placesOf(entry).map((place) => ({
    step: stepOf(place),
    name: questionAt(entry, place, titles),
    value: valueText(place, answerAt(entry, place)),
  }));
