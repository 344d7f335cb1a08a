/**
 * Ankle moment and load of a heel raise, from the lever between the ankle and the ball of the foot.
 *
 * Two legs share the weight evenly, which is an assumption: people with a sore leg lean off it. Added
 * weight is carried in the hands. No measurement was found to compare.
 */
import { ballOfFootShare } from './body-lengths.ts';
import { gravity } from './gravity.ts';

export interface HeelRaise {
  readonly massKg: number;
  readonly statureM: number;
  readonly legs: 'two' | 'one';
  readonly addedKg: number;
}

export const heelRaise = (raise: HeelRaise): { effectiveLoadKg: number; ankleMomentNm: number } => {
  const legs = raise.legs === 'two' ? 2 : 1;
  const effectiveLoadKg = (raise.massKg + raise.addedKg) / legs;
  return { effectiveLoadKg, ankleMomentNm: effectiveLoadKg * gravity * ballOfFootShare * raise.statureM };
};
