/**
 * Movements of the joints, in degrees from the anatomical neutral position (0), and the range an exercise
 * takes a joint through when done as usually taught.
 *
 * Every figure of every exercise is from memory, to be confirmed by a licensed clinician. What the
 * figure is worth is said with it wherever it is shown.
 */
import type { JointName } from './joints.ts';

export const movements = [
  'flexion',
  'extension',
  'abduction',
  'adduction',
  'outward-rotation',
  'inward-rotation',
  'dorsiflexion',
  'plantarflexion',
  'pronation',
  'supination',
  'radial-deviation',
  'ulnar-deviation',
  'inversion',
  'eversion',
  'side-bend',
  'rotation',
] as const;
export type Movement = (typeof movements)[number];

const bending = ['flexion', 'extension'] as const;
const aside = ['abduction', 'adduction'] as const;
const turning = ['outward-rotation', 'inward-rotation'] as const;
const foreArm = ['pronation', 'supination'] as const;
const ofSpine = [...bending, 'side-bend', 'rotation'] as const;

/** What each joint can do. Of the hand and the finger joint the fingers are meant, of the foot the toes and the arch. */
export const movementsOf: Readonly<Record<JointName, readonly Movement[]>> = {
  shoulder: [...bending, ...aside, ...turning],
  elbow: [...bending, ...foreArm],
  wrist: [...bending, 'radial-deviation', 'ulnar-deviation', ...foreArm],
  hand: [...bending, ...aside],
  'thumb-base': [...bending, ...aside],
  'finger-joint': [...bending, ...aside],
  hip: [...bending, ...aside, ...turning],
  knee: [...bending],
  ankle: ['dorsiflexion', 'plantarflexion', 'inversion', 'eversion'],
  foot: [...bending, 'inversion', 'eversion'],
  neck: ofSpine,
  'low-back': ofSpine,
};

const opposed: readonly (readonly [Movement, Movement])[] = [
  bending,
  aside,
  turning,
  ['dorsiflexion', 'plantarflexion'],
  foreArm,
  ['radial-deviation', 'ulnar-deviation'],
  ['inversion', 'eversion'],
];

/** The same plane the other way; null for what is counted alike to both sides. */
export const oppositeOf = (movement: Movement): Movement | null => {
  const pair = opposed.find((both) => both.includes(movement));
  return pair ? (pair[0] === movement ? pair[1] : pair[0]) : null;
};

/** Degrees of one movement; below 0 is the opposite movement. */
export interface Arc {
  readonly movement: Movement;
  readonly fromDegrees: number;
  readonly toDegrees: number;
}

/** The part of an exercise one joint of the worked limb goes through. Where nothing moves, from = to. */
export interface JointRange extends Arc {
  readonly joint: JointName;
}

export const through = (
  joint: JointName,
  movement: Movement,
  fromDegrees: number,
  toDegrees: number,
): JointRange => ({ joint, movement, fromDegrees, toDegrees });

export const still = (joint: JointName, movement: Movement, degrees = 0): JointRange =>
  through(joint, movement, degrees, degrees);

/** The arc told as degrees of another movement; null where the two are of different planes. */
export const arcAs = (movement: Movement, arc: Arc): Arc | null => {
  if (arc.movement === movement) return arc;
  if (oppositeOf(arc.movement) !== movement) return null;
  return { movement, fromDegrees: 0 - arc.toDegrees, toDegrees: 0 - arc.fromDegrees };
};

const angleInWords = (movement: Movement, degrees: number): string => {
  const named = degrees < 0 ? (oppositeOf(movement) ?? movement) : movement;
  return `${Math.abs(degrees)}° of ${named.replace('-', ' ')}`;
};

/** "0° to 90° of flexion", "20° of extension to 90° of flexion", "90° of flexion". */
export const arcInWords = ({ movement, fromDegrees, toDegrees }: Arc): string => {
  const to = angleInWords(movement, toDegrees);
  if (fromDegrees === toDegrees) return to;
  if (fromDegrees >= 0) return `${fromDegrees}° to ${to}`;
  return toDegrees === 0
    ? `${angleInWords(movement, fromDegrees)} to 0°`
    : `${angleInWords(movement, fromDegrees)} to ${to}`;
};
