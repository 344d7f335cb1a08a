/** Whether a joint has a movement, said to whoever typed one it has not. */
import type { Refusal } from '../outcome.ts';
import { type Joint, jointNameOf } from './joints.ts';
import { type Movement, movementsOf } from './movements.ts';

export const movementRefusals = (joint: Joint, movement: Movement): readonly Refusal[] => {
  const possible = movementsOf[jointNameOf(joint)];
  if (possible.includes(movement)) return [];
  const names = possible.join(', ').replaceAll('-', ' ');
  return [
    {
      field: 'input.movement',
      code: 'inconsistent',
      reason: `This joint has no such movement here; choose one of: ${names}.`,
    },
  ];
};
