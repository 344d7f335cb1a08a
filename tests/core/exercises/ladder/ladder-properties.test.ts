/** Ladders over generated bodies: finite figures or none, rising order, a way back down. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exercises } from '#core/exercises/catalogue.ts';
import type { Level } from '#core/exercises/exercise.ts';
import { families } from '#core/exercises/families.ts';
import { ladder, nextLevel, previousLevel } from '#core/exercises/ladder/ladder.ts';
import { levelOf } from '#core/exercises/ladder/level.ts';
import { holdsIn } from '#tests/support/holds.ts';

const person = fc.record({
  sex: fc.constantFrom('female', 'male'),
  massKg: fc.double({ min: 25, max: 300, noNaN: true }),
  statureCm: fc.double({ min: 140, max: 205, noNaN: true }),
});

const numbersOf = (level: Level): readonly (number | null)[] => [
  level.shareOfBodyMass,
  level.effectiveLoadKg,
  level.measuredShare,
  level.modelError,
  level.measure?.value ?? null,
  ...level.moments.map((moment) => moment.newtonMetres),
];

describe('Ladders for every body', () => {
  it('hold finite figures or none, in rising order where they are computed', () => {
    holdsIn(300, person, (who) => {
      for (const family of families) {
        const levels = ladder(family.id, who);
        expect(levels.flatMap(numbersOf).every((figure) => figure === null || Number.isFinite(figure))).toBe(
          true,
        );
        if (family.order === 'listed') continue;
        const values = levels.flatMap((level) => (level.measure ? [level.measure.value] : []));
        expect(values).toEqual([...values].sort((a, b) => a - b));
      }
    });
  });

  it('lead back down the way they lead up, and never by a step that lightens', () => {
    holdsIn(300, person, (who) => {
      for (const { id } of exercises) {
        const next = nextLevel(id, who);
        if (!next) continue;
        expect(previousLevel(next.rung.exerciseId, who)?.rung.exerciseId).toBe(id);
        const family = families.find(
          (entry) => entry.id === exercises.find((exercise) => exercise.id === id)?.family,
        );
        if (family?.order === 'computed') expect(next.stepPercent).toBeGreaterThanOrEqual(0);
      }
    });
  });

  it('scale effective load with body mass, leaving added weights aside', () => {
    holdsIn(300, person, (who) => {
      for (const exercise of exercises) {
        const setting = exercise.setting;
        if (setting && 'addedKg' in setting && setting.addedKg > 0) continue;
        const single = levelOf(exercise, who).effectiveLoadKg;
        const double = levelOf(exercise, { ...who, massKg: 2 * who.massKg }).effectiveLoadKg;
        if (single !== null) expect(double! / single).toBeCloseTo(2, 9);
      }
    });
  });
});
