/**
 * Repetitions in reserve and the exertion scale built on them. Below 5 the scale gives no count.
 * Exertion here is of one set, not the rating of a whole session.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { reserveField } from './fields.ts';

interface ScaleRow {
  readonly exertion: readonly number[];
  readonly reserveLow: number | null;
  readonly reserveHigh: number | null;
  readonly words?: string;
}

const scale: readonly ScaleRow[] = [
  { exertion: [10], reserveLow: 0, reserveHigh: 0 },
  { exertion: [9.5], reserveLow: 0, reserveHigh: 0, words: 'no further repetition, but more load possible' },
  { exertion: [9], reserveLow: 1, reserveHigh: 1 },
  { exertion: [8.5], reserveLow: 1, reserveHigh: 2 },
  { exertion: [8], reserveLow: 2, reserveHigh: 2 },
  { exertion: [7.5], reserveLow: 2, reserveHigh: 3 },
  { exertion: [7], reserveLow: 3, reserveHigh: 3 },
  { exertion: [5, 6], reserveLow: 4, reserveHigh: 6 },
  { exertion: [3, 4], reserveLow: null, reserveHigh: null, words: 'light effort, no count' },
  { exertion: [1, 2], reserveLow: null, reserveHigh: null, words: 'little or no effort, no count' },
];

const citations: readonly Citation[] = [
  {
    source: 'zourdos-2016',
    locator: 'scale, as restated on a page of a university clinic',
    mark: 'second-hand',
    remark: 'The identifier is from memory.',
  },
];

const noWords: readonly Note[] = [];
const wordNotes = (row: ScaleRow): readonly Note[] =>
  row.words === undefined ? noWords : [{ code: 'scale-words', text: `On the scale: ${row.words}.` }];

export const reserveFromExertion = (input: {
  readonly exertion: number;
}): Outcome<{ readonly reserveLow: number | null; readonly reserveHigh: number | null }> => {
  const row = scale.find(({ exertion }) => exertion.includes(input.exertion));
  if (!row) {
    const reason = 'The scale has 1, 2, 3, 4, 5, 6, 7, 7.5, 8, 8.5, 9, 9.5 and 10. Give one of these.';
    return refuse('exertion', 'not-listed', reason);
  }
  return answer({ reserveLow: row.reserveLow, reserveHigh: row.reserveHigh }, wordNotes(row));
};

/** A row that names this very count comes before a row that spans it: 2 is 8, not 8.5. */
const rowForReserve = (reserve: number): ScaleRow | undefined =>
  scale.find((row) => row.reserveLow === reserve && row.reserveHigh === reserve) ??
  scale.find(
    ({ reserveLow, reserveHigh }) =>
      reserveLow !== null && reserveHigh !== null && reserve >= reserveLow && reserve <= reserveHigh,
  );

export const exertionFromReserve = (input: {
  readonly reserve: number;
}): Outcome<{ readonly exertionLow: number; readonly exertionHigh: number }> => {
  const row = rowForReserve(input.reserve);
  if (!row) {
    const reason = 'The scale counts 0, 1 to 3 and 4 to 6 in reserve; nothing between or beyond.';
    return refuse('reserve', 'outside-validity', reason);
  }
  return answer(
    { exertionLow: Math.min(...row.exertion), exertionHigh: Math.max(...row.exertion) },
    wordNotes(row),
  );
};

export const reserveFromExertionRow = calculation({
  id: 'reserve-from-exertion',
  title: 'Repetitions in reserve for a rated exertion of one set',
  area: 'strength',
  input: [{ name: 'exertion', kind: 'number', unit: '{score}', min: 1, max: 10 }],
  result: [
    { name: 'reserveLow', unit: '1', about: 'Null where the scale gives no count.' },
    { name: 'reserveHigh', unit: '1', about: 'Null where the scale gives no count.' },
  ],
  citations,
  calculate: reserveFromExertion,
  example: { exertion: 8.5 },
});

export const exertionFromReserveRow = calculation({
  id: 'exertion-from-reserve',
  title: 'Rated exertion of one set for repetitions in reserve',
  area: 'strength',
  input: [reserveField],
  result: units({ exertionLow: '{score}', exertionHigh: '{score}' }),
  citations,
  calculate: exertionFromReserve,
  example: { reserve: 2 },
});
