import { describe, expect, it } from 'vitest';
import { exercises, mainJoints } from '#core/exercises/catalogue.ts';
import { type ExerciseSearch, findExercises } from '#core/exercises/search.ts';

const names = {
  'knee-extension-seated': { plain: 'Straighten the knee, sitting', trade: 'Seated knee extension' },
  'sit-to-stand-chair': { plain: 'Stand up from a chair, seat 46 cm', trade: 'Sit-to-stand, 46 cm' },
  clam: { plain: 'Open the knees, lying on the side', trade: 'Clamshell' },
};

const any: ExerciseSearch = { words: '' };
const idsOf = (search: Partial<ExerciseSearch>) =>
  findExercises({ ...any, ...search }, names).map(({ exercise }) => exercise.id);

describe('a search for exercises', () => {
  it('finds every exercise, in the order of the catalogue, where nothing is asked', () => {
    expect(idsOf({})).toEqual(exercises.map(({ id }) => id));
    expect(idsOf({ words: '  ' })).toHaveLength(exercises.length);
  });

  it.each([
    ['the name the patient reads', 'straighten knee sitting'],
    ['the name of colleagues', 'seated knee ext'],
    ['words in any order and in capitals', 'EXTENSION Seated'],
  ])('finds an exercise by %s', (_, words) => {
    expect(idsOf({ words })).toContain('knee-extension-seated');
  });

  it('finds it by another name colleagues use, and by the plural', () => {
    const also = { 'knee-extension-seated': { plain: '', trade: '', also: 'leg extension' } };
    const found = (words: string) => findExercises({ words }, also).map(({ exercise }) => exercise.id);
    expect(found('leg extensions')).toEqual(['knee-extension-seated']);
    expect(found('leg extension')).toEqual(['knee-extension-seated']);
    expect(idsOf({ words: 'clamshells' })).toEqual(['clam']);
    expect(idsOf({ words: 'biceps' }).length).toBeGreaterThan(0);
  });

  it('does not mind hyphens', () => {
    expect(idsOf({ words: 'sit to stand 46' })).toEqual(['sit-to-stand-chair']);
    expect(idsOf({ words: 'sit-to-stand 46' })).toEqual(['sit-to-stand-chair']);
  });

  it('finds words by their beginning only, and leaves out what has not all of them', () => {
    expect(idsOf({ words: 'clamsh' })).toEqual(['clam']);
    expect(idsOf({ words: 'amshell' })).toEqual([]);
    expect(idsOf({ words: 'clamshell quadriceps' })).toEqual([]);
  });

  it('finds an exercise by a joint it is about and by a muscle it is done for', () => {
    expect(idsOf({ words: 'knee' })).toContain('sit-to-stand-chair');
    expect(idsOf({ words: 'quadriceps' })).toContain('knee-extension-seated');
  });

  it.each(['arm', 'leg', 'trunk'] as const)('keeps to the region asked for: %s', (region) => {
    const found = findExercises({ ...any, region }, names);
    expect(found.length).toBeGreaterThan(0);
    expect(found.every(({ exercise }) => exercise.limb === region)).toBe(true);
  });

  it('offers only the side on which it is about the joint asked for', () => {
    const found = findExercises({ ...any, joint: 'right-knee' }, names);
    const extension = found.find(({ exercise }) => exercise.id === 'knee-extension-seated');
    expect(extension?.sides).toEqual(['right']);
    expect(
      found.every(({ exercise, sides }) =>
        sides.every((side) => mainJoints(exercise.id, side).includes('right-knee')),
      ),
    ).toBe(true);
  });

  it('leaves out what only loads the joint on the way', () => {
    // Hip abduction lying on the side is about the hip and carries the knee.
    expect(idsOf({ joint: 'right-knee' })).not.toContain('side-lying-hip-abduction');
    expect(idsOf({ joint: 'right-hip' })).toContain('side-lying-hip-abduction');
  });

  it('keeps to the muscle asked for, worked wholly or half', () => {
    const found = findExercises({ ...any, trains: 'hamstrings' }, names);
    const isWorked = found.map(({ exercise }) =>
      [...exercise.target, ...exercise.indirect].includes('hamstrings'),
    );
    expect(isWorked.length).toBeGreaterThan(0);
    expect(isWorked).not.toContain(false);
    expect(found.some(({ exercise }) => exercise.indirect.includes('hamstrings'))).toBe(true);
  });
});
