/**
 * Share of body mass that travels in a squat, a one-leg squat and a pull-up: the body less the
 * segments that stay where they are. It says how much is lifted, not how hard a joint works.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { massField, sexField } from './fields.ts';
import { type Sex, segmentCitations, segments } from './segments.ts';

const movements = ['squat-two-legs', 'squat-one-leg', 'pull-up'] as const;
export type Movement = (typeof movements)[number];

export const movedMassShare = (movement: Movement, sex: Sex): number => {
  const { shank, foot, forearm, hand } = segments[sex];
  if (movement === 'pull-up') return 1 - 2 * (forearm.massShare + hand.massShare);
  const standing = shank.massShare + foot.massShare;
  return movement === 'squat-two-legs' ? 1 - 2 * standing : 1 - standing;
};

export const movedMassRow = calculation({
  id: 'moved-mass-share',
  title: 'Share of body mass that travels in a squat or a pull-up',
  area: 'variation',
  input: [sexField, massField, { name: 'movement', kind: 'enum', values: movements }],
  result: [
    { name: 'shareOfBodyMass', unit: '1', about: 'Over both limbs together where two work.' },
    { name: 'perLimbShare', unit: '1' },
    { name: 'movedKg', unit: 'kg' },
  ],
  citations: segmentCitations,
  calculate: ({ sex, massKg, movement }) => {
    const share = movedMassShare(movement, sex);
    const limbs = movement === 'squat-one-leg' ? 1 : 2;
    return answer({ shareOfBodyMass: share, perLimbShare: share / limbs, movedKg: share * massKg }, [
      { code: 'mass-only', text: 'Mass that travels; it does not say how hard a joint works.' },
    ]);
  },
  example: { sex: 'female', massKg: 65, movement: 'squat-two-legs' },
});
