/** The outcomes of a letter: what was measured more than once, its change, and whether that is beyond the error. */
import type { Figure } from '#core/assessment/course/drawn.ts';
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import { dayInWords, figure } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/papers/letter.ts';
import type { LetterPaper } from './letter-paper.ts';

const measuredTwice = ({ outcomes }: LetterPaper): readonly OutcomeLine[] =>
  outcomes.filter(({ readings }) => readings.length > 1);

export const outcomeSentence = (letter: LetterPaper): string => {
  const lines = measuredTwice(letter);
  const count = (verdict: OutcomeLine['change']['verdict']) =>
    lines.filter(({ change }) => change.verdict === verdict).length;
  if (lines.length === 0) return say('nothing-twice');
  const [within, unjudged] = [count('within-error'), count('not-judged')];
  return [
    say('outcome', { better: count('better'), worse: count('worse') }),
    ...(within > 0 ? [say('outcome-within', { count: within })] : []),
    ...(unjudged > 0 ? [say('outcome-unjudged', { count: unjudged })] : []),
  ].join(' ');
};

/** The difference of each course; a grade, or a range that equations give, has none. */
const changeOf = ({ drawn: { courses, unit, grades } }: OutcomeLine): string => {
  const differences = courses.flatMap(({ points }) => {
    const [first, last] = [points[0]?.figure, points.at(-1)?.figure] as readonly (Figure | undefined)[];
    if (points.length < 2 || typeof first !== 'number' || typeof last !== 'number') return [];
    return [`${last > first ? '+' : ''}${figure(last - first).replace('-', '−')}`];
  });
  if (grades || differences.length === 0 || differences.length < courses.length) return say('no-figure');
  return `${differences.join(', ')}${unit === '' ? '' : ` ${unit}`}`;
};

const outcomeRow = (line: OutcomeLine): readonly string[] => {
  const [first, last] = [line.readings[0]!, line.readings.at(-1)!];
  const reading = ({ text, day }: typeof first) => say('reading', { text, on: dayInWords(day) });
  return [line.title, reading(first), reading(last), changeOf(line), say(`beyond-${line.change.verdict}`)];
};

export const outcomesIn = (letter: LetterPaper) => ({
  title: say('outcomes'),
  heads: [say('measure'), say('first'), say('last'), say('change'), say('beyond')],
  rows: measuredTwice(letter).map(outcomeRow),
  none: say('nothing-twice'),
});
