/**
 * Responder of two societies for trials in osteoarthritis, from memory: pain or function better by half and by at
 * least 20 of 100; or two of pain, function and global rating better by a fifth and by at least 10 of 100.
 *
 * Made for groups in trials. A rating that is missing is not known, and never zero: where it could change the
 * answer the answer is not known.
 */
import { calculation } from '#core/calculations/calculation.ts';
import type { Field, InputOf } from '#core/calculations/describe.ts';
import { answer } from '#core/outcome.ts';
import { exceeds } from './change-beyond-error.ts';

const high = { percent: 50, points: 20 };
const some = { percent: 20, points: 10 };

const rating = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'number', unit: '{score}', min: 0, max: 100, about }) as const;
const ratingOrNull = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'number', unit: '{score}', min: 0, max: 100, nullable: true, about }) as const;

const input = [
  rating('painBefore', '0 none to 100 worst.'),
  rating('painAfter', '0 none to 100 worst.'),
  ratingOrNull('difficultyBefore', 'Function: 0 no difficulty to 100 unable.'),
  ratingOrNull('difficultyAfter', 'Function: 0 no difficulty to 100 unable.'),
  rating('globalBefore', 'Patient’s global rating: 0 very well to 100 very poorly.'),
  rating('globalAfter', 'Patient’s global rating: 0 very well to 100 very poorly.'),
] as const satisfies readonly Field[];

type Answer = 'yes' | 'no' | 'not-known';

const hasFallen = (before: number, after: number, by: { percent: number; points: number }): boolean => {
  const fall = before - after;
  return before > 0 && !exceeds(by.points, fall) && !exceeds(by.percent, (fall / before) * 100);
};

const responderOf = (given: InputOf<typeof input>): Answer => {
  const { painBefore, painAfter, difficultyBefore, difficultyAfter, globalBefore, globalAfter } = given;
  const fell = (by: typeof high) => ({
    pain: hasFallen(painBefore, painAfter, by),
    global: hasFallen(globalBefore, globalAfter, by),
    function:
      difficultyBefore === null || difficultyAfter === null
        ? null
        : hasFallen(difficultyBefore, difficultyAfter, by),
  });
  const [much, little] = [fell(high), fell(some)];
  if (much.pain || much.function) return 'yes';
  const known = [little.pain, little.global, little.function].filter(Boolean).length;
  if (known >= 2) return 'yes';
  // A function nobody rated could have fallen by half.
  return little.function === null ? 'not-known' : 'no';
};

export const responderRow = calculation({
  id: 'osteoarthritis-responder',
  title: 'Responder in osteoarthritis',
  area: 'outcomes',
  input,
  result: [{ name: 'responder', unit: '', about: 'yes, no or not-known' }],
  citations: [
    {
      source: 'pham-responder',
      locator: '50 % and 20 points of pain or function; 20 % and 10 points of two of three',
      mark: 'memory',
      remark: 'That the set exists was seen; its figures are from memory.',
    },
  ],
  calculate: (given) =>
    answer({ responder: responderOf(given) }, [
      { code: 'from-memory', text: 'The figures are from memory, and were made for groups in trials.' },
    ]),
  example: {
    painBefore: 60,
    painAfter: 30,
    difficultyBefore: 50,
    difficultyAfter: 40,
    globalBefore: 50,
    globalAfter: 40,
  },
});
