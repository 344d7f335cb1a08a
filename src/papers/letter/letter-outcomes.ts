/** The outcomes of a letter: what was measured more than once, its change, and whether that is beyond the error. */
import type { Figure } from '#core/assessment/course/drawn.ts';
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import { readingInWords } from '#messages/papers/checked.ts';
import type { LetterSpeech } from '#messages/papers/colleague-words.ts';
import type { LetterPaper } from './letter-paper.ts';

const measuredTwice = ({ outcomes }: LetterPaper): readonly OutcomeLine[] =>
  outcomes.filter(({ readings }) => readings.length > 1);

export const outcomeSentence = (letter: LetterPaper, { say }: LetterSpeech): string => {
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
const changeOf = (line: OutcomeLine, { say, figure, unit: unitOf }: LetterSpeech): string => {
  const { courses, grades } = line.drawn;
  const unit = unitOf(line);
  const differences = courses.flatMap(({ points }) => {
    const [first, last] = [points[0]?.figure, points.at(-1)?.figure] as readonly (Figure | undefined)[];
    if (points.length < 2 || typeof first !== 'number' || typeof last !== 'number') return [];
    return [`${last > first ? '+' : ''}${figure(last - first).replace('-', '−')}`];
  });
  if (grades || differences.length === 0 || differences.length < courses.length) return say('no-figure');
  return `${differences.join(', ')}${unit === '' ? '' : ` ${unit}`}`;
};

const outcomeRow = (line: OutcomeLine, speech: LetterSpeech): readonly string[] => {
  const { say } = speech;
  const [first, last] = [line.readings[0]!, line.readings.at(-1)!];
  return [
    speech.title(line),
    readingInWords(line, first, speech),
    readingInWords(line, last, speech),
    changeOf(line, speech),
    say(`beyond-${line.change.verdict}`),
  ];
};

export const outcomesIn = (letter: LetterPaper, speech: LetterSpeech) => {
  const { say } = speech;
  return {
    title: say('outcomes'),
    heads: [say('measure'), say('first'), say('last'), say('change'), say('beyond')],
    rows: measuredTwice(letter).map((line) => outcomeRow(line, speech)),
    none: say('nothing-twice'),
  };
};
