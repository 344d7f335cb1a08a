/** Push-ups from the wall to the floor: a straight body over fixed feet or knees, hands on a fixed place. */
import { lengths } from '../body/lengths.ts';
import type { Place, Pose } from '../body/pose.ts';
import { skeletonOf } from '../body/skeleton.ts';
import type { Vec } from '../body/turn.ts';
import { type Figure, fromTheSide, type Prop, type StartPosition } from './figure.ts';
import { floor, solid, step, wall, worktop } from './props.ts';

interface PushUp {
  /** How far the straight body leans, up and down. */
  readonly lean: readonly [up: number, down: number];
  readonly on: 'feet' | 'knees';
  readonly feetUp?: number;
  /** Height of the hands' support; null for a wall. */
  readonly handsUp: number | null;
  readonly position: StartPosition;
  readonly props: (hands: number) => readonly Prop[];
}

const bodyAt = ({ on, feetUp = 0 }: PushUp, lean: number, arm: Pose['arm']): Pose =>
  on === 'knees'
    ? { lean, leg: { knee: 97 - lean, ankle: -46 }, arm, anchor: ['knee', [0, 7]] }
    : {
        lean,
        leg: { heelUp: Math.max(0, lean - 16) },
        arm,
        anchor: lean > 16 ? ['ball', [8, feetUp + 4]] : ['ankle', [0, lengths.ankleHeight]],
      };

/** With straight arms the hands are as far from the shoulder as arms are long. */
const handsOf = (about: PushUp): Place => {
  const { shoulder } = skeletonOf(bodyAt(about, about.lean[0], {})).points;
  const arm = lengths.upperArm + lengths.forearm - 0.6;
  if (about.handsUp === null) return [shoulder[0] + arm * 0.995, shoulder[1] - 3];
  const high = about.handsUp + 4;
  return [shoulder[0] + Math.sqrt(Math.max(0, arm ** 2 - (shoulder[1] - high) ** 2)), high];
};

export const pushUp = (about: PushUp): Figure => {
  const handAt = handsOf(about);
  const fingersTo: Vec = about.handsUp === null ? [0.12, 1, 0] : [1, 0, 0];
  const arm = { handAt, fingersTo, elbowTo: [-1, -0.2, 0] } as const;
  return {
    view: fromTheSide,
    position: about.position,
    pictures: 2,
    start: bodyAt(about, about.lean[0], arm),
    end: bodyAt(about, about.lean[1], arm),
    works: ['upper-arm', 'forearm', 'hand'],
    both: true,
    motions: [{ of: 'head', shift: about.handsUp === null ? [0, 16] : [13, 13] }],
    props: about.props(handAt[0]),
  };
};

export const wallPushUp = (up: number, down: number): Figure =>
  pushUp({
    lean: [up, down],
    on: 'feet',
    handsUp: null,
    position: 'standing-at-wall',
    props: (hands) => [floor(-18, hands + 8), wall(hands + 5)],
  });

const centimetre = 150 / 170;
const supports = {
  worktop: (hands: number, high: number) => worktop(hands - 8, hands + 44, high),
  block: (hands: number, high: number) => step(hands - 10, hands + 36, high),
  seat: (hands: number, high: number) =>
    solid([hands - 10, high], [hands + 36, high], [hands + 36, high - 5], [hands - 10, high - 5]),
};
export const inclined = (
  handsCm: number,
  up: number,
  down: number,
  support: keyof typeof supports,
): Figure => {
  const high = handsCm * centimetre;
  return pushUp({
    lean: [up, down],
    on: 'feet',
    handsUp: high,
    position: 'leaning-on-hands',
    props: (hands) => [
      floor(-16, hands + 50),
      supports[support](hands, high),
      ...(support === 'seat' ? [worktop(hands - 10, hands + 36, high - 5)] : []),
    ],
  });
};
