import { describe, expect, it } from 'vitest';
import {
  exerciseById,
  exercises,
  exercisesFor,
  exercisesInFamily,
  jointsLoaded,
} from '#core/exercises/catalogue.ts';
import { exerciseCautions } from '#core/exercises/cautions.ts';
import { muscles } from '#core/exercises/exercise.ts';
import { families } from '#core/exercises/families.ts';
import { joints } from '#core/exercises/joints.ts';
import { methods } from '#core/prescribing/methods.ts';

const ids = (rows: readonly { readonly id: string }[]): readonly string[] => rows.map((row) => row.id);
const repeated = (values: readonly string[]): readonly string[] =>
  values.filter((value, index) => values.indexOf(value) !== index);
/** Ids of the exercises that break a promise; a failing test names them. */
const breaking = (promise: (exercise: (typeof exercises)[number]) => boolean): readonly string[] =>
  ids(exercises.filter((exercise) => !promise(exercise)));

describe('The catalogue is whole', () => {
  it('holds at least 60 exercises in at least 12 families', () => {
    expect(exercises.length).toBeGreaterThanOrEqual(60);
    expect(families.length).toBeGreaterThanOrEqual(12);
  });

  it('gives every exercise, family and caution an id of its own in plain kebab case', () => {
    for (const rows of [exercises, families, exerciseCautions]) {
      expect(repeated(ids(rows))).toEqual([]);
      expect(ids(rows).filter((id) => !/^[a-z]+(-[a-z]+)*$/.test(id))).toEqual([]);
    }
  });

  it('gives every exercise a title of its own', () => {
    expect(repeated(exercises.map((exercise) => exercise.title))).toEqual([]);
  });

  it('puts every exercise in a known family, and leaves no family empty', () => {
    const known = ids(families);
    expect(breaking((exercise) => known.includes(exercise.family))).toEqual([]);
    expect(known.filter((id) => exercisesInFamily(id).length === 0)).toEqual([]);
  });

  it('knows every caution an exercise names, and uses every caution it knows', () => {
    const known = ids(exerciseCautions);
    const used = exercises.flatMap((exercise) => exercise.cautions);
    expect(used.filter((id) => !known.includes(id))).toEqual([]);
    expect(known.filter((id) => !used.includes(id))).toEqual([]);
  });

  it('works every muscle directly with at least one exercise', () => {
    const worked = new Set(exercises.flatMap((exercise) => exercise.target));
    expect(muscles.filter((muscle) => !worked.has(muscle))).toEqual([]);
  });

  it('names a target, and counts no muscle as both target and indirect', () => {
    expect(breaking((exercise) => exercise.target.length > 0)).toEqual([]);
    expect(breaking(({ target, indirect }) => repeated([...target, ...indirect]).length === 0)).toEqual([]);
  });

  it('finds an exercise for every method, and the methods of each', () => {
    for (const method of methods) {
      expect(exercisesFor(method).length).toBeGreaterThan(0);
      expect(exercisesFor(method).every((exercise) => exercise.methods.includes(method))).toBe(true);
    }
    expect(breaking((exercise) => exercise.methods.length > 0)).toEqual([]);
  });

  it('finds nothing under an unknown id', () => {
    expect(exerciseById('no-such-exercise')).toBeUndefined();
  });
});

describe('The joints of an exercise', () => {
  it('always have a main one, each with a direction, none twice on the same limb', () => {
    expect(breaking(({ loads }) => loads.some((demand) => demand.share === 'main'))).toEqual([]);
    expect(breaking(({ loads }) => loads.every((demand) => demand.direction.trim() !== ''))).toEqual([]);
    expect(
      breaking(
        ({ loads }) => repeated(loads.map(({ joint, of }) => `${joint} ${of ?? 'worked'}`)).length === 0,
      ),
    ).toEqual([]);
  });

  it('are joints the tool follows, and loading never depends on which side works', () => {
    for (const { id } of exercises) {
      const left = jointsLoaded(id, 'left');
      expect(left.every((joint) => joints.includes(joint))).toBe(true);
      const mirrored = jointsLoaded(id, 'right').map((joint) =>
        joint.replace(/^(left|right)/, (side) => (side === 'left' ? 'right' : 'left')),
      );
      expect([...mirrored].sort()).toEqual([...left].sort());
    }
  });

  it('include those of the standing leg, so that a sore one can hold the exercise', () => {
    expect(jointsLoaded('side-leg-raise-standing', 'left')).toEqual(
      expect.arrayContaining(['left-hip', 'right-hip', 'right-knee', 'right-ankle']),
    );
    expect(jointsLoaded('side-lying-hip-abduction', 'left')).not.toContain('right-hip');
  });

  it('leave the arm free in a leg exercise without a grip', () => {
    expect(jointsLoaded('knee-extension-seated', 'right')).toEqual(['right-knee', 'right-hip']);
  });
});

describe('Cautions that belong to a position or a thing', () => {
  it.each([
    ['band', 'band-snap'],
    ['two fixed handles', 'anchor-strength'],
    ['firm chair', 'steady-seat'],
    ['hand weight', 'weight-drop'],
    ['hand weights', 'weight-drop'],
  ])('go with every exercise that uses a %s', (thing, caution) => {
    const using = exercises.filter((exercise) =>
      exercise.equipment.some((name) => name === thing || name.startsWith(`${thing},`)),
    );
    expect(using.length).toBeGreaterThan(0);
    expect(ids(using.filter((exercise) => !exercise.cautions.includes(caution)))).toEqual([]);
  });

  it('warn of falling in every leg exercise done standing', () => {
    const standing = exercises.filter(
      (exercise) => exercise.limb === 'leg' && exercise.position === 'standing',
    );
    expect(standing.length).toBeGreaterThan(0);
    expect(ids(standing.filter((exercise) => !exercise.cautions.includes('fall-risk-standing')))).toEqual([]);
  });

  it('warn of instability in every neck exercise', () => {
    const neck = exercises.filter((exercise) => exercise.target.includes('neck'));
    expect(ids(neck.filter((exercise) => !exercise.cautions.includes('neck-pressure')))).toEqual([]);
  });
});

describe('Occlusion', () => {
  it('is offered for one arm or one leg at a time and for nothing else', () => {
    const offered = exercisesFor('occlusion');
    expect(
      ids(offered.filter((exercise) => exercise.limb === 'trunk' || exercise.limbsAtOnce !== 'one')),
    ).toEqual([]);
    expect(new Set(offered.map((exercise) => exercise.limb))).toEqual(new Set(['arm', 'leg']));
  });
});
