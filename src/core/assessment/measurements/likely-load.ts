/**
 * From which load on somebody entering it is asked whether it is right. The shares of body weight and the
 * factors are choices of this project, wide on purpose: they catch a typing slip and judge nobody.
 */
import { exerciseById } from '#core/exercises/catalogue.ts';
import type { Measurement, MeasurementOf } from './measurement.ts';

type Worked = 'one-leg' | 'both-legs' | 'one-arm' | 'both-arms' | 'trunk';

/** Share of body weight above which a load is asked about, by what lifts it. */
const askedAboveShare: Readonly<Record<Worked, number>> = {
  'one-leg': 0.8,
  'both-legs': 1.5,
  'one-arm': 0.4,
  'both-arms': 0.8,
  trunk: 0.5,
};

/** Times the last load of the same exercise and side, up or down, beyond which a load is asked about. */
const askedBeyondFactor = 2;

/** Where no weight is on record, a load is asked about as for somebody of this weight. */
const takenWeightKg = 70;

type Test = MeasurementOf<'repetitions-to-failure'>;
type Ways = 'both-ways' | 'upwards';
type Load = Pick<Test, 'exerciseId' | 'side' | 'loadKg'>;

/** An exercise of no catalogue is asked about from the largest share. */
const workedBy = ({ exerciseId, side }: Load): Worked => {
  const exercise = exerciseById(exerciseId);
  if (!exercise) return 'both-legs';
  if (exercise.limb === 'trunk') return 'trunk';
  const areBoth = side === 'both' || exercise.limbsAtOnce === 'both';
  return areBoth ? `both-${exercise.limb}s` : `one-${exercise.limb}`;
};

const isOfWeight = (row: Measurement): row is MeasurementOf<'body-mass'> => row.kind === 'body-mass';

const times = (factor: number): string => `${factor.toFixed(1)} times`;

const forWeight = (row: Load, known: readonly Measurement[]): readonly string[] => {
  const worked = workedBy(row);
  const weight = known.findLast(isOfWeight);
  const share = row.loadKg / (weight?.massKg ?? takenWeightKg);
  if (share <= askedAboveShare[worked]) return [];
  const of = weight
    ? `the body weight of ${weight.massKg} kg on ${weight.day}`
    : `a body weight of ${takenWeightKg} kg (none is on record)`;
  return [
    `${row.loadKg} kg is ${times(share)} ${of}; above ${askedAboveShare[worked]} times it is unlikely in this exercise. Is it right?`,
  ];
};

const besideLast = (row: Load, known: readonly Measurement[], ways: Ways): readonly string[] => {
  const last = known.findLast(
    (one): one is Test =>
      one.kind === 'repetitions-to-failure' && one.exerciseId === row.exerciseId && one.side === row.side,
  );
  if (!last || last.loadKg === 0 || row.loadKg === 0) return [];
  const factor = row.loadKg / last.loadKg;
  const isLow = ways === 'both-ways' && factor < 1 / askedBeyondFactor;
  if (factor <= askedBeyondFactor && !isLow) return [];
  return [
    `${row.loadKg} kg is ${factor > 1 ? times(factor) : `only ${times(factor)}`} the ${last.loadKg} kg of ${last.day}. Is it right?`,
  ];
};

/** Questions for a load far from the person's own earlier one, or from what the body weight makes likely. */
export const unlikelyLoad = (
  row: Load,
  known: readonly Measurement[],
  ways: Ways = 'both-ways',
): readonly string[] => [...forWeight(row, known), ...besideLast(row, known, ways)];

interface Requested {
  readonly exerciseId: string;
  readonly side: Load['side'];
  readonly loadKg?: number;
  /** Of a variation. */
  readonly addedKg?: number;
  readonly knownOneRepMaxKg?: number;
}

/**
 * The same for the figures of a request for a dose. A load far under the one tested is what low loads are, and
 * is not asked about. A maximum is held against the body weight only: a test
 * of many repetitions is done with a small part of it.
 */
export const unlikelyRequest = (request: Requested, known: readonly Measurement[]): readonly string[] => {
  const { exerciseId, side, knownOneRepMaxKg } = request;
  const loadKg = request.loadKg ?? request.addedKg;
  return [
    ...(loadKg === undefined ? [] : unlikelyLoad({ exerciseId, side, loadKg }, known, 'upwards')),
    ...(knownOneRepMaxKg === undefined
      ? []
      : forWeight({ exerciseId, side, loadKg: knownOneRepMaxKg }, known)),
  ];
};
