/** What was asked and what was measured, as every paper to colleagues says it. */
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import type { DocumentChecks } from '#core/episode/documents/document-facts.ts';
import type { LetterSpeech } from './colleague-words.ts';

export const named = (things: readonly string[], { say, term }: LetterSpeech): string =>
  things.length === 0 ? say('none') : things.map(term).join('; ');

/** A reading with its day, and how it was taken where that was not in person. */
export const readingInWords = (
  line: OutcomeLine,
  { text, day, atDistance }: OutcomeLine['readings'][number],
  speech: LetterSpeech,
): string =>
  speech.say(atDistance ? `reading-${atDistance}` : 'reading', {
    text: speech.reading(line, text),
    on: speech.day(day),
  });

/** A thing measured with the readings that are to be told, and what may be said of its change. */
export const measuredLine = (
  line: OutcomeLine,
  readings: OutcomeLine['readings'],
  speech: LetterSpeech,
): string =>
  speech.say('measured-all', {
    title: speech.title(line),
    readings: readings.map((one) => readingInWords(line, one, speech)).join(', '),
    change: speech.change(line),
  });

export const screeningLines = (
  { screening, notMeasured }: DocumentChecks,
  speech: LetterSpeech,
): readonly string[] => {
  const { say, day } = speech;
  const asked =
    screening === null
      ? [say('not-screened')]
      : [
          say('screened-on', {
            on: day(screening.day),
            notknown: named(screening.notKnown, speech),
            notasked: named(screening.notAsked, speech),
          }),
          say('yes', { things: named(screening.yes, speech) }),
          say('no', { count: screening.no }),
        ];
  return [...asked, say('not-measured', { things: named(notMeasured, speech) })];
};

/** Days that were planned, and those of them without a session; where no programme names days none can be missing. */
export const plannedLine = (
  plannedDays: number | null,
  plannedDaysWithout: number,
  { say }: LetterSpeech,
): string =>
  plannedDays === null
    ? say('log-unplanned')
    : say('log-planned', { planned: plannedDays, without: plannedDaysWithout });
