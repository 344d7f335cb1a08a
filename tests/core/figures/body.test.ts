/** The drawn body is one that could stand there: limits of the joints, the floor, what it holds. */
import { describe, expect, it } from 'vitest';
import { lengths, widths } from '#core/figures/body/lengths.ts';
import { anglesOf } from '#core/figures/body/measured.ts';
import { type Arm, farArmOf, farLegOf, type Leg, type Point } from '#core/figures/body/pose.ts';
import { skeletonOf } from '#core/figures/body/skeleton.ts';
import { lengthOf, minus, type Vec } from '#core/figures/body/turn.ts';
import { bodies, hands, poses } from './drawn-poses.ts';

/**
 * Normal range of motion, degrees: American Academy of Orthopaedic Surgeons, Joint Motion (1965), from
 * memory. Two degrees are given for rounding.
 */
const limits = {
  hip: [-30, 120],
  legAbduction: [-30, 45],
  knee: [0, 135],
  ankle: [-50, 20],
  shoulder: [-60, 180],
  armAbduction: [-45, 180],
  armTurn: [-70, 90],
  elbow: [0, 150],
} as const;
/** Of the hand on a support: pressed by the body's weight it goes further than alone, common practice, no source. */
const wristLimit = 90;
const rounding = 2;

const widthAt: Readonly<Record<string, number>> = {
  hip: widths.thigh,
  knee: widths.shank,
  ankle: 0,
  heel: widths.foot,
  ball: widths.foot,
  toe: widths.foot,
  shoulder: widths['upper-arm'],
  elbow: widths.forearm,
  wrist: widths.hand,
  palm: widths.hand,
  fingers: widths.hand,
  pelvis: widths.trunk,
  waist: widths.trunk,
  head: 0.8 * lengths.head,
};

const far = (point: Vec, place: readonly number[]) =>
  lengthOf(minus(point, [place[0]!, place[1]!, place[2] ?? point[2]]));

const handFault = (arm: Arm, points: Readonly<Record<Point, Vec>>, side: '' | 'far-') =>
  'handAt' in arm ? far(points[`${side}${arm.fingersTo ? 'wrist' : 'palm'}`], arm.handAt) : 0;
const footFault = (leg: Leg, points: Readonly<Record<Point, Vec>>, side: '' | 'far-') =>
  'ankleAt' in leg ? far(points[`${side}ankle`], leg.ankleAt) : 0;

describe('a drawn body', () => {
  it('bends no joint further than a joint goes', () => {
    const drawn = poses.filter(({ id }) => !id.endsWith('halfway'));
    const faults = drawn.flatMap(({ id, pose }) =>
      [false, true].flatMap((isFar) => {
        const angles = anglesOf(skeletonOf(pose), pose, isFar);
        const beyond = Object.entries(limits).flatMap(([joint, [low, high]]) => {
          const angle = angles[joint as keyof typeof limits];
          return angle < low - rounding || angle > high + rounding
            ? [`${id}: ${isFar ? 'far ' : ''}${joint} ${Math.round(angle)}`]
            : [];
        });
        return angles.wrist > wristLimit ? [...beyond, `${id}: wrist ${Math.round(angles.wrist)}`] : beyond;
      }),
    );
    expect(faults).toEqual([]);
  });

  it('bends neck and back no further than they go: 45 forward and back, 30 back in the low back', () => {
    const faults = poses.filter(
      ({ pose }) =>
        Math.abs(pose.neck ?? 0) > 45 ||
        Math.abs(pose.nod ?? 0) > 45 ||
        (pose.bend ?? 0) < -30 ||
        (pose.bend ?? 0) > 80 ||
        Math.abs(pose.bendAside ?? 0) > 35,
    );
    expect(faults.map(({ id }) => id)).toEqual([]);
  });

  it('bends every knee the way the toes point, and never backward', () => {
    const faults = poses.flatMap(({ id, pose }) =>
      (['', 'far-'] as const).flatMap((side) => {
        const { points } = skeletonOf(pose);
        const [hip, knee, ankle] = [points[`${side}hip`], points[`${side}knee`], points[`${side}ankle`]];
        const [thigh, shank] = [minus(knee, hip), minus(ankle, knee)];
        const forward = minus(points[`${side}toe`], points[`${side}heel`]);
        // The shank turns away from where the toes point.
        const turn = shank.reduce((sum, one, at) => sum + (one - thigh[at]!) * forward[at]!, 0);
        const angle = anglesOf(skeletonOf(pose), pose, side === 'far-').knee;
        const plantar = anglesOf(skeletonOf(pose), pose, side === 'far-').ankle;
        return angle > 10 && plantar > -30 && turn > 0 ? [`${id}: ${side}knee`] : [];
      }),
    );
    expect(faults).toEqual([]);
  });

  it('goes nowhere through the floor', () => {
    const faults = poses.flatMap(({ id, pose }) =>
      Object.entries(skeletonOf(pose).points).flatMap(([point, [, y]]) => {
        const half = (widthAt[point.replace('far-', '')] ?? 0) / 2;
        return y - half < -1.5 ? [`${id}: ${point} ${(y - half).toFixed(1)}`] : [];
      }),
    );
    expect(faults).toEqual([]);
  });

  it('keeps its anchor and its feet within 2 units of their place', () => {
    const faults = poses.flatMap(({ id, pose }) => {
      const { points } = skeletonOf(pose);
      const [point, place] = pose.anchor;
      const off = [
        Math.hypot(points[point][0] - place[0], points[point][1] - place[1]),
        footFault(pose.leg, points, ''),
        footFault(farLegOf(pose), points, 'far-'),
      ];
      return Math.max(...off) > 2 ? [`${id}: ${off.map((one) => one.toFixed(1)).join(' ')}`] : [];
    });
    expect(faults).toEqual([]);
  });

  it('has its hands within 3 units of what they hold or lean on', () => {
    const faults = poses.flatMap(({ id, pose }) => {
      const { points } = skeletonOf(pose);
      const off = [handFault(pose.arm, points, ''), handFault(farArmOf(pose), points, 'far-')];
      return Math.max(...off) > 3 ? [`${id}: ${off.map((one) => one.toFixed(1)).join(' ')}`] : [];
    });
    expect(faults).toEqual([]);
  });

  it('would be found with a knee bent too far, and through the floor', () => {
    const pose = { leg: { knee: 160 }, arm: {}, anchor: ['knee', [0, 0]] } as const;
    const skeleton = skeletonOf(pose);
    expect(anglesOf(skeleton, pose, false).knee).toBeGreaterThan(limits.knee[1] + rounding);
    expect(skeletonOf({ ...pose, leg: {} }).points.ankle[1]).toBeLessThan(-1.5);
  });

  it('has the lengths of a table: thigh .245, shank .246, upper arm .186, forearm .146 of stature', () => {
    // Drillis and Contini (1966) as printed by Winter, figure 4.1; from memory.
    const { points } = skeletonOf(bodies[0]!.figure.start);
    const long = (a: Point, b: Point) => lengthOf(minus(points[a], points[b])) / 150;
    expect(long('hip', 'knee')).toBeCloseTo(0.245, 3);
    expect(long('knee', 'ankle')).toBeCloseTo(0.246, 3);
    expect(long('shoulder', 'elbow')).toBeCloseTo(0.186, 3);
    expect(long('elbow', 'wrist')).toBeCloseTo(0.146, 3);
  });
});

describe('a drawn hand', () => {
  it('bends no joint further than a joint goes: wrist 80 and 70 back, knuckle 90, then 100 and 90', () => {
    // American Academy of Orthopaedic Surgeons, Joint Motion (1965), from memory.
    for (const { figure } of hands) {
      for (const { wrist, fingers, spread } of [figure.start, figure.end]) {
        expect(wrist).toBeGreaterThanOrEqual(-70);
        expect(wrist).toBeLessThanOrEqual(80);
        expect(fingers[0]).toBeLessThanOrEqual(90);
        expect(fingers[1]).toBeLessThanOrEqual(100);
        expect(fingers[2]).toBeLessThanOrEqual(90);
        expect(spread).toBeLessThanOrEqual(20);
      }
    }
  });
});
