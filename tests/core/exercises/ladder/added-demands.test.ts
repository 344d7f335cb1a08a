import { describe, expect, it } from 'vitest';
import { addedDemands, sideFor } from '#core/exercises/ladder/added-demands.ts';

describe('Changing from one exercise to another', () => {
  it('keeps the side, goes to both where both limbs work, and asks where one must be chosen', () => {
    expect(sideFor('bridge-one-leg', 'left')).toBe('left');
    expect(sideFor('bridge-two-legs', 'left')).toBe('both');
    expect(sideFor('bridge-one-leg', 'both')).toBeNull();
    expect(sideFor('no-such-exercise', 'left')).toBeNull();
  });

  it('names the joints that were not loaded before', () => {
    const kneeling = addedDemands(
      { exerciseId: 'incline-push-up-step', side: 'both' },
      { exerciseId: 'knee-push-up', side: 'both' },
    );
    expect(kneeling.joints).toEqual(['left-knee', 'right-knee']);
    expect(kneeling.cautions).toEqual(['floor-transfer', 'kneeling']);
  });

  it('adds nothing from a chair to a higher one', () => {
    const higher = addedDemands(
      { exerciseId: 'sit-to-stand-chair', side: 'both' },
      { exerciseId: 'sit-to-stand-cushion', side: 'both' },
    );
    expect(higher).toEqual({ joints: [], cautions: [] });
  });
});
