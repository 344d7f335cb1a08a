/** What was measured at both ends of care. */
import { dayInWords } from '#core/review/plain-words.ts';
import type { DocumentFacts } from './document-facts.ts';
import type { DocumentPart } from './document-words.ts';

/** A change is called one only beyond the error of measuring; that it came from the work is not said. */
export const outcomePart = ({ outcomes }: Pick<DocumentFacts, 'outcomes'>): DocumentPart => {
  const twice = outcomes.filter(({ readings }) => readings.length > 1);
  return {
    title: 'Outcomes, first and last',
    lines:
      twice.length === 0
        ? ['Nothing was measured a second time, so no change can be named.']
        : twice.map(({ title, readings, change }) => {
            const [first, last] = [readings[0]!, readings.at(-1)!];
            return `${title}: ${first.text} (${dayInWords(first.day)}), ${last.text} (${dayInWords(last.day)}). ${change.sentence}`;
          }),
  };
};
