/**
 * Two-for-two: raise the load when the last set ran two or more repetitions over the target in two
 * sessions in a row. A missing count is not a good set: it holds. It says that strength allows a
 * step, never that the joint does; the engine decides that.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Outcome } from '#core/outcome.ts';

const repetitionsOver = 2;
const sessionsInRow = 2;

export const twoForTwo = (input: {
  readonly targetRepetitions: number;
  readonly lastSets: readonly (number | null)[];
}): Outcome<{ readonly verdict: 'increase' | 'hold' }> => {
  const recent = input.lastSets.slice(-sessionsInRow);
  const isMet = (done: number | null) => done !== null && done >= input.targetRepetitions + repetitionsOver;
  if (recent.length === sessionsInRow && recent.every(isMet)) {
    return answer({ verdict: 'increase' as const }, [
      { code: 'strength-only', text: 'Strength allows a step of about 2.5–10 %. The joint is asked apart.' },
    ]);
  }
  const isUnknown = recent.length < sessionsInRow || recent.some((done) => done === null);
  return answer(
    { verdict: 'hold' as const },
    isUnknown
      ? [{ code: 'missing', text: 'Two sessions with a counted last set are needed; until then it holds.' }]
      : [],
  );
};

export const twoForTwoRow = calculation({
  id: 'two-for-two',
  title: 'Two repetitions over the target in two sessions',
  area: 'strength',
  input: [
    { name: 'targetRepetitions', kind: 'integer', unit: '1', min: 1, max: 100 },
    {
      name: 'lastSets',
      kind: 'list',
      of: { name: 'repetitions', kind: 'integer', unit: '1', min: 0, max: 1000, nullable: true },
      maxItems: 1000,
      about: 'Repetitions of the last set, one number per session, oldest first; null = not counted.',
    },
  ],
  result: [{ name: 'verdict', unit: '', about: 'increase or hold' }],
  citations: [
    {
      source: 'baechle-earle',
      locator: 'two-for-two rule, as restated on two pages',
      mark: 'second-hand',
      remark: 'Healthy lifters; step of about 2.5–10 %.',
    },
  ],
  calculate: twoForTwo,
  example: { targetRepetitions: 12, lastSets: [14, 15] },
});
