import { describe, expect, it } from 'vitest';
import { householdEquipment } from '#core/exercises/equipment.ts';
import { ladderAtHome } from '#core/exercises/ladder/ladder-at-home.ts';

const person = { sex: 'female', massKg: 65, statureCm: 162 } as const;
const home = { equipment: householdEquipment, loadsKg: [] };

describe('the next version at home', () => {
  it('leaves the side to a clinician where two legs become one', () => {
    const next = ladderAtHome(person, home).harder('heel-raise-two-legs', 'both');
    expect(next?.exerciseId).toContain('heel-raise');
    const oneLeg = ladderAtHome(person, { equipment: [...householdEquipment, 'backpack'], loadsKg: [5] });
    const steps = ['heel-raise-two-legs'];
    for (
      let step = oneLeg.harder(steps[0]!, 'both');
      step && !steps.includes(step.exerciseId);
      step = oneLeg.harder(step.exerciseId, 'both')
    ) {
      steps.push(step.exerciseId);
      if (step.exerciseId === 'heel-raise-one-leg') expect(step.side).toBeNull();
    }
    expect(steps).toContain('heel-raise-one-leg');
  });

  it('says that a push-up on the knees loads joints that one against a raised surface does not', () => {
    const ladder = ladderAtHome(person, home);
    const climbed = new Map<string, boolean | undefined>();
    let next = ladder.harder('incline-push-up-high', 'both');
    while (next && !climbed.has(next.exerciseId)) {
      climbed.set(next.exerciseId, next.addsDemand);
      next = ladder.harder(next.exerciseId, 'both');
    }
    expect([climbed.get('knee-push-up'), climbed.get('incline-push-up-low')]).toEqual([true, false]);
  });

  it('knows no neighbour without a body measured', () => {
    expect(ladderAtHome(null, home).harder('wall-push-up', 'both')).toBeNull();
  });

  it('does not count equipment that is not at home', () => {
    const bare = ladderAtHome(person, { equipment: [], loadsKg: [] });
    expect(bare.harder('sit-to-stand-chair', 'both')?.equipmentOwned).toBe(false);
  });
});
