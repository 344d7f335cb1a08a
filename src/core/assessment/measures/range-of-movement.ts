/**
 * How far a joint moves in one direction, in degrees from the neutral position, by the person or by the examiner.
 *
 * Under 0 a movement ends short of neutral: extension of −10 is 10 short of straight. No error fits the people
 * treated here: what is published for the knee is of torn ligaments, and 2 to 10 degrees by instrument and rater.
 */
import { jointNameOf, joints, sideOf } from '#core/exercises/joints.ts';
import { movementRefusals } from '#core/exercises/movement-of-joint.ts';
import { movements } from '#core/exercises/movements.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { unjudged, withoutNorm } from '../course/judgement.ts';
import { usually, whole } from './fields.ts';
import { measure } from './measure.ts';

interface Moved {
  readonly joint: (typeof joints)[number];
  readonly movement: (typeof movements)[number];
  readonly manner: 'active' | 'passive';
  readonly degrees: number;
}

const inPlainWords = ({ movement, manner }: Moved): string => `${manner} ${movement.replaceAll('-', ' ')}`;

const degreesInWords = (degrees: number): string => `${String(degrees).replace('-', '−')}°`;

export const rangeOfMovement = measure({
  kind: 'range-of-movement',
  title: 'Range of movement',
  isChosen: true,
  fields: [
    { name: 'joint', kind: 'enum', values: joints, about: 'Joint' },
    { name: 'movement', kind: 'enum', values: movements, about: 'Direction' },
    { name: 'manner', kind: 'enum', values: ['active', 'passive'], about: 'Moved by the patient or by you' },
    whole('degrees', 'deg', -90, 180, 'End of the movement'),
  ],
  usual: [usually('degrees', -30, 180, 'deg')],
  hints: { degrees: 'From the neutral position; below 0 where it ends short of neutral.' },
  sameBy: ['joint', 'movement', 'manner'],
  subject: (row) => `${jointInWords(row.joint)}, ${inPlainWords(row)}`,
  figure: (row) => row.degrees,
  consistent: (row) => movementRefusals(row.joint, row.movement),
  inWords: (row) => degreesInWords(row.degrees),
  course: {
    area: 'joints',
    subject: (row) => `${jointInWords(row.joint)}, ${inPlainWords(row)}`,
    title: (subject) => `Range: ${subject}`,
    norm: (row) =>
      withoutNorm(
        sideOf(row.joint) === null
          ? 'No norm is on file; each person is compared with themselves.'
          : 'No norm is on file; compare with the other side.',
      ),
    drawnAt: (row) => row.degrees,
    drawn: () => ({ unit: '°', error: null, cut: null, better: 'higher' }),
    change: (first, last) =>
      unjudged(
        last.degrees - first.degrees,
        '°',
        'The error of measuring range is not known for these joints.',
      ),
  },
  sides: {
    subject: (row) => `${jointNameOf(row.joint).replace('-', ' ')}, ${inPlainWords(row)}`,
    side: (row) => sideOf(row.joint),
    figure: (row) => row.degrees,
    unit: '°',
    isRatio: false,
    error: null,
  },
});
