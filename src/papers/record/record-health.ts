/** What was asked about health, and what was shown of protein and energy. */
import type { ScreeningItemId } from '#core/screening/items.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { pageWord } from '#messages/page-words.ts';
import { questionText } from '#messages/screening.ts';
import type { SheetPaper } from '../sheet/sheet-paper.ts';
import type { RecordPaper } from './record-paper.ts';
import type { RecordWords } from './record-words.ts';

type Part = SheetPaper['parts'][number];

const answerText = ({ answer, note }: ScreeningItemAnswer, { say, tag }: RecordWords): string => {
  const said = {
    yes: pageWord(tag, 'ask.yes'),
    no: pageWord(tag, 'ask.no'),
    'not-known': say('not-known'),
    'not-applicable': say('not-applicable'),
  }[answer];
  return note ? `${said}. ${say('remark', { remark: note })}` : said;
};

export const healthParts = ({ screenings }: RecordPaper, words: RecordWords): readonly Part[] =>
  screenings.map(({ day, answers }) => ({
    title: words.say('health', { day }),
    lines: [],
    table: {
      heads: [words.say('question'), words.say('answer')],
      widths: [3, 1],
      rows: answers.map((answer) => [
        questionText(answer.item as ScreeningItemId)[words.tag],
        answerText(answer, words),
      ]),
    },
  }));

export const nutritionLines = (
  { nutrition, isNutritionShown }: RecordPaper,
  { say, tag }: RecordWords,
): readonly string[] => {
  const lines = nutrition.map(({ on: day, by: name, advice }) => {
    if (!advice) return say('advice-withdrawn', { day, name });
    const { proteinLowG: low, proteinHighG: high, meals, surplusKcal: kcal, words } = advice;
    const what = [
      pageWord(tag, 'handout.protein-figures', { low, high, meals }),
      ...(kcal ? [pageWord(tag, 'handout.energy', { kcal })] : []),
      ...(words ? [words] : []),
    ].join(' ');
    return say('advice-shown', { day, name, what });
  });
  return lines.length > 0 && !isNutritionShown ? [...lines, say('advice-over')] : lines;
};
