/**
 * How far to trust a reported reserve. People guess about one repetition too few; the error is small near
 * failure and grows quickly in sets beyond 12 repetitions, which low-load sets always are. So a reserve from
 * such a set is a rough word and not a measurement: it may be followed, never computed with.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { repetitionsField, reserveField } from './fields.ts';

const longSetBeyond = 12;
const smallErrorUpTo = 5;

export const reserveCitations: readonly Citation[] = [
  {
    source: 'halperin-2022',
    locator: 'abstract',
    mark: 'seen',
    remark:
      '414 people: predicted too few by 0.95 (95 % interval 0.17–1.73), very uneven between studies; error grows more steeply above 12 repetitions (0.47 against 0.06).',
  },
  {
    source: 'hackett-2017',
    locator: 'abstract',
    mark: 'seen',
    remark:
      '81 adults: error about 1 with 0–5 left and over 2 with 7–10 left; chest press up to 1 for 0–5, leg press up to 1 for 0–3.',
  },
];

export const longSetReserve: Note = {
  code: 'reserve-uncertain-in-long-sets',
  text: 'In sets of more than 12 repetitions a reported reserve can be wrong by several repetitions and is usually too low: most people could have done more. Treat it as a rough word.',
};

export const reserveConfidence = (input: {
  readonly repetitions: number;
  readonly reserve: number;
}): Outcome<{ readonly confidence: 'usual' | 'low' }> => {
  if (input.repetitions > longSetBeyond) return answer({ confidence: 'low' as const }, [longSetReserve]);
  if (input.reserve > smallErrorUpTo) {
    return answer({ confidence: 'low' as const }, [
      {
        code: 'reserve-uncertain-far-from-failure',
        text: 'Far from failure the guess is off by more than two repetitions on average.',
      },
    ]);
  }
  return answer({ confidence: 'usual' as const }, [
    {
      code: 'reserve-error',
      text: 'Expect an error of about one repetition, usually guessing too few left.',
    },
  ]);
};

export const reserveConfidenceRow = calculation({
  id: 'reserve-confidence',
  title: 'How far to trust a reported reserve',
  area: 'strength',
  input: [repetitionsField, reserveField],
  result: [{ name: 'confidence', unit: '', about: 'usual or low' }],
  citations: reserveCitations,
  calculate: reserveConfidence,
  example: { repetitions: 22, reserve: 2 },
});
