/** Limb occlusion pressure: two readings at least one minute apart; the lower one is used. */
import { figure } from '#core/review/plain-words.ts';
import { limb, number, position, side, usually, whole } from './fields.ts';
import { measure } from './measure.ts';

const methodInWords = {
  doppler: 'Doppler',
  'pulse-oximeter': 'pulse oximeter',
  automated: 'automated',
} as const;

/** Readings further apart than this are asked about. */
const readingsApartMmhg = 20;

export const limbOcclusionPressure = measure({
  kind: 'limb-occlusion-pressure',
  title: 'Limb occlusion pressure',
  fields: [
    limb,
    side,
    number('cuffWidthCm', 'cm', 3, 25, 'Cuff width'),
    position,
    { name: 'method', kind: 'enum', values: ['doppler', 'pulse-oximeter', 'automated'] },
    whole('firstMmhg', 'mm[Hg]', 50, 300, 'First reading'),
    whole('secondMmhg', 'mm[Hg]', 50, 300, 'Second reading'),
  ],
  usual: [usually('firstMmhg', 90, 280, 'mm[Hg]'), usually('secondMmhg', 90, 280, 'mm[Hg]')],
  hints: { secondMmhg: 'At least one minute after the first. The lower reading is used.' },
  sameBy: ['limb', 'side', 'cuffWidthCm', 'position'],
  figure: (row) => Math.min(row.firstMmhg, row.secondMmhg),
  farFromLast: {
    percent: 30,
    figures: (row) => [{ value: Math.min(row.firstMmhg, row.secondMmhg), unit: 'mmHg' }],
  },
  asks: (row) => {
    const apart = Math.abs(row.firstMmhg - row.secondMmhg);
    return apart > readingsApartMmhg
      ? [`The two readings differ by ${apart} mmHg. Take them again, or confirm both.`]
      : [];
  },
  inWords: (row) =>
    `${row.firstMmhg} and ${row.secondMmhg} mmHg; cuff ${figure(row.cuffWidthCm)} cm, ${row.position}, ${methodInWords[row.method]}`,
});
