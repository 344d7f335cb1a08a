/** Weight-bearing and range are fields of every exercise. All degrees here are from memory too. */
import { describe, expect, it } from 'vitest';
import { exerciseById, exercises } from '#core/exercises/catalogue.ts';
import type { JointName } from '#core/exercises/joints.ts';
import {
  type Arc,
  arcAs,
  arcInWords,
  type JointRange,
  type Movement,
  movementsOf,
  oppositeOf,
} from '#core/exercises/movements.ts';

type Listed = (typeof exercises)[number];
/** Ids of the exercises that break a promise; a failing test names them. */
const breaking = (promise: (exercise: Listed) => boolean): readonly string[] =>
  exercises.filter((exercise) => !promise(exercise)).map(({ id }) => id);

/** Furthest a healthy joint goes, degrees from neutral: from memory, as textbooks round them. */
const furthest: Readonly<Record<JointName, Partial<Record<Movement, number>>>> = {
  shoulder: {
    flexion: 180,
    extension: 60,
    abduction: 180,
    adduction: 50,
    'outward-rotation': 90,
    'inward-rotation': 90,
  },
  elbow: { flexion: 150, extension: 10, pronation: 90, supination: 90 },
  wrist: {
    flexion: 90,
    extension: 90,
    'radial-deviation': 25,
    'ulnar-deviation': 40,
    pronation: 90,
    supination: 90,
  },
  hand: { flexion: 100, extension: 45, abduction: 30, adduction: 30 },
  'thumb-base': { flexion: 20, extension: 20, abduction: 45, adduction: 10 },
  'finger-joint': { flexion: 100, extension: 10, abduction: 25, adduction: 25 },
  hip: {
    flexion: 125,
    extension: 30,
    abduction: 50,
    adduction: 30,
    'outward-rotation': 60,
    'inward-rotation': 45,
  },
  knee: { flexion: 150, extension: 10 },
  ankle: { dorsiflexion: 30, plantarflexion: 50, inversion: 35, eversion: 20 },
  foot: { flexion: 45, extension: 80, inversion: 35, eversion: 20 },
  neck: { flexion: 60, extension: 75, 'side-bend': 45, rotation: 80 },
  'low-back': { flexion: 60, extension: 35, 'side-bend': 35, rotation: 15 },
};

const mostOf = (joint: JointName, movement: Movement | null): number =>
  (movement && furthest[joint][movement]) ?? 0;

const isPossible = ({ joint, movement, fromDegrees, toDegrees }: JointRange): boolean =>
  toDegrees <= mostOf(joint, movement) && -fromDegrees <= mostOf(joint, oppositeOf(movement));

describe('the range of an exercise', () => {
  it('is given for every joint it is about', () => {
    expect(
      breaking(({ loads, range }) =>
        loads
          .filter(({ share }) => share === 'main')
          .every((demand) => range.some(({ joint }) => joint === demand.joint)),
      ),
    ).toEqual([]);
  });

  it('speaks only of joints the worked limb or the trunk loads, of movements they have', () => {
    expect(
      breaking(({ loads, range }) =>
        range.every(
          ({ joint, movement }) =>
            loads.some((demand) => demand.joint === joint && demand.of !== 'other') &&
            movementsOf[joint].includes(movement),
        ),
      ),
    ).toEqual([]);
  });

  it('begins before it ends, and stays inside what a healthy joint can do', () => {
    expect(
      breaking(({ range }) => range.every(({ fromDegrees, toDegrees }) => fromDegrees <= toDegrees)),
    ).toEqual([]);
    expect(breaking(({ range }) => range.every(isPossible))).toEqual([]);
  });

  it('takes a joint through one plane once', () => {
    expect(
      breaking(({ range }) =>
        range.every((one, place) =>
          range
            .slice(place + 1)
            .every((other) => other.joint !== one.joint || arcAs(one.movement, other) === null),
        ),
      ),
    ).toEqual([]);
  });

  it.each([
    ['front-leg-raise-standing', 30],
    ['side-leg-raise-standing', 30],
    ['rear-leg-raise-standing', 20],
  ])('equals the degrees its title gives: %s, %i°', (id, degrees) => {
    const exercise = exerciseById(id);
    expect(exercise?.title).toContain(`${degrees}°`);
    expect(exercise?.range.map(({ toDegrees }) => toDegrees)).toEqual([degrees]);
  });

  it('does not shrink from a higher seat to a lower one', () => {
    const seats = exercises.filter(({ family }) => family === 'sit-to-stand');
    const bends = seats.map(({ range }) => range.map(({ toDegrees }) => toDegrees));
    expect(seats.length).toBeGreaterThan(1);
    for (const [place, bend] of bends.slice(1).entries()) {
      expect(bend.every((degrees, joint) => degrees >= bends[place]![joint]!)).toBe(true);
    }
  });
});

describe('weight-bearing of an exercise', () => {
  it('is never on the legs of who lies or sits, but for bridges and a foot pressed end-on', () => {
    const pressed = ['bridge-one-leg', 'bridge-one-leg-bent', 'bridge-two-legs', 'bridge-two-legs-weight'];
    const off = exercises.filter(({ position }) => /^(lying|sitting(?! to))/.test(position));
    const bearing = off.filter(({ weightBearing }) => weightBearing.length > 0).map(({ id }) => id);
    const footOn = ['heel-raise-seated', 'leg-press-band', 'leg-press-machine', 'leg-press-machine-one-leg'];
    expect(bearing.toSorted()).toEqual([...pressed, ...footOn].toSorted());
  });

  it('is on the legs wherever the feet or knees carry, and may be where one can also sit', () => {
    const upright = exercises.filter(({ position }) =>
      /^(standing|sitting to standing|bent forward|leaning|on |hanging, feet)/.test(position),
    );
    expect(upright.length).toBeGreaterThan(20);
    expect(
      upright.filter(({ weightBearing }) => !weightBearing.includes('legs')).map(({ id }) => id),
    ).toEqual([]);
  });

  it('is on the arms wherever hands or forearms lean on something or the body hangs from them', () => {
    const leaning = ({ family, position, id }: Listed): boolean =>
      ['push-up', 'lean-back-row'].includes(family) ||
      /^(on |hanging)/.test(position) ||
      id === 'row-one-arm-weight';
    expect(breaking((exercise) => exercise.weightBearing.includes('arms') === leaning(exercise))).toEqual([]);
  });
});

describe('an arc of degrees', () => {
  const arc = (movement: Movement, fromDegrees: number, toDegrees: number): Arc => ({
    movement,
    fromDegrees,
    toDegrees,
  });

  it.each([
    [arc('flexion', 0, 90), '0° to 90° of flexion'],
    [arc('flexion', 90, 90), '90° of flexion'],
    [arc('flexion', 0, 0), '0° of flexion'],
    [arc('flexion', -20, 90), '20° of extension to 90° of flexion'],
    [arc('flexion', -20, -5), '20° of extension to 5° of extension'],
    [arc('outward-rotation', -45, 0), '45° of inward rotation to 0°'],
  ])('is told without a minus sign: %j', (given, words) => {
    expect(arcInWords(given)).toBe(words);
  });

  it('is the same arc told as the opposite movement, and none of another plane', () => {
    expect(arcAs('extension', arc('flexion', -20, 90))).toEqual(arc('extension', -90, 20));
    expect(arcAs('flexion', arc('flexion', 0, 90))).toEqual(arc('flexion', 0, 90));
    expect(arcAs('abduction', arc('flexion', 0, 90))).toBeNull();
    expect(oppositeOf('rotation')).toBeNull();
  });
});
