/**
 * Isometric force of a muscle group against a hand-held dynamometer, typed in newtons or kilograms as the
 * instrument shows it and compared in newtons. By hand a strong person pushes the examiner away, so a reading
 * taken by hand and one against a belt are two things.
 *
 * No error is on file for sore joints: 29 N by one rater and 37 N by two were found in inpatients who could not
 * walk, with the instrument in a frame.
 */

import { figure } from '#core/review/plain-words.ts';
import { newtonsPerKilogramForce, times } from '#core/units/units.ts';
import { unjudged, withoutNorm } from '../course/judgement.ts';
import { number, side, word } from './fields.ts';
import { measure } from './measure.ts';

const units = ['newtons', 'kilograms'] as const;
const heldBy = ['by-hand', 'by-belt'] as const;

interface Pushed {
  readonly force: number;
  readonly forceUnit: (typeof units)[number];
}

export const newtons = ({ force, forceUnit }: Pushed): number =>
  forceUnit === 'kilograms' ? times(force, newtonsPerKilogramForce) : force;

const unusualBelowN = 10;
const unusualAboveN = 1200;
/** Each field is within its bounds, and the force still cannot be: kilograms typed for newtons the other way round. */
const mostN = 3000;

const heldWords = { 'by-hand': 'held by hand', 'by-belt': 'against a belt' } as const;

const inNewtons = (row: Pushed): string => {
  const shown = `${Math.round(newtons(row))} N`;
  return row.forceUnit === 'kilograms' ? `${shown} (${figure(row.force)} kg)` : `${figure(row.force)} N`;
};

export const isometricForce = measure({
  kind: 'isometric-force',
  title: 'Isometric force',
  fields: [
    word('site', 'Muscle group'),
    side,
    { name: 'heldBy', kind: 'enum', values: heldBy, about: 'Dynamometer' },
    { name: 'forceUnit', kind: 'enum', values: units, about: 'Unit on the instrument' },
    number('force', '1', 0, mostN, 'Force'),
  ],
  hints: { force: 'In the unit chosen above; the same joint angle and place of the pad each time.' },
  sameBy: ['site', 'side', 'heldBy'],
  subject: (row) => row.site,
  figure: newtons,
  consistent: (row) =>
    newtons(row) > mostN
      ? [
          {
            field: 'input.force',
            code: 'too-high',
            reason: `That is over ${mostN} N; check the unit the instrument shows.`,
          },
        ]
      : [],
  asks: (row) => {
    const force = newtons(row);
    return force < unusualBelowN || force > unusualAboveN
      ? [`${inNewtons(row)} is outside the usual ${unusualBelowN} to ${unusualAboveN} N. Is the unit right?`]
      : [];
  },
  farFromLast: { percent: 60, figures: (row) => [{ value: Math.round(newtons(row)), unit: 'N' }] },
  inWords: (row) => `${inNewtons(row)}, ${heldWords[row.heldBy]}`,
  course: {
    area: 'strength',
    subject: (row) => `${row.site}, ${row.side}, ${heldWords[row.heldBy]}`,
    title: (subject) => `Isometric force: ${subject}`,
    reading: inNewtons,
    norm: () => withoutNorm('No norm is on file; each person is compared with themselves.'),
    drawnAt: (row) => Math.round(newtons(row) * 10) / 10,
    drawn: () => ({ unit: 'N', error: null, cut: null, better: 'higher' }),
    change: (first, last) =>
      unjudged(
        newtons(last) - newtons(first),
        ' N',
        'The error of measuring force is not known for sore joints.',
      ),
  },
  sides: {
    subject: (row) => `${row.site}, ${heldWords[row.heldBy]}`,
    side: (row) => row.side,
    figure: newtons,
    unit: ' N',
    isRatio: true,
    error: null,
  },
});
