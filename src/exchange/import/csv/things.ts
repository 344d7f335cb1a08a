/** A row whose cells are read as what it says of a day. */
import type { ImportedThing } from '#core/record/imported.ts';
import type { CellValue } from './cells.ts';
import type { CsvKind } from './how.ts';

type Values = Readonly<Record<string, CellValue | undefined>>;

const orNull = <T>(value: CellValue | undefined): T | null => (value === undefined ? null : (value as T));

const morning = (values: Values): ImportedThing['value'] => ({
  joint: values.joint as never,
  pain: orNull<number>(values.pain),
  stiffnessMinutes: orNull<number>(values.stiffness_minutes),
  fatigue: orNull<number>(values.fatigue),
});

const session = (values: Values): ImportedThing['value'] => ({
  exercise: orNull<string>(values.exercise),
  joint: orNull(values.joint),
  sets: orNull<number>(values.sets),
  repetitions: orNull<number>(values.repetitions),
  loadKg: orNull<number>(values.load_kg),
  painBefore: orNull<number>(values.pain_before),
  painDuring: orNull<number>(values.pain_during),
  painAfter: orNull<number>(values.pain_after),
});

const measured = (values: Values): readonly ImportedThing['value'][] => {
  const { weight_kg: massKg, height_cm: statureCm, systolic_mmhg: systolicMmhg } = values;
  const { diastolic_mmhg: diastolicMmhg, pain, grip_left_kg: left, grip_right_kg: right } = values;
  const found: readonly (readonly [CellValue | undefined, object])[] = [
    [massKg, { what: 'body-mass', massKg }],
    [statureCm, { what: 'stature', statureCm }],
    [systolicMmhg, { what: 'blood-pressure', systolicMmhg, diastolicMmhg }],
    [pain, { what: 'pain', pain, place: orNull<string>(values.pain_place) }],
    [left, { what: 'grip', side: 'left', forceKg: left }],
    [right, { what: 'grip', side: 'right', forceKg: right }],
  ];
  return found.flatMap(([given, value]) => (given === undefined ? [] : [value as ImportedThing['value']]));
};

type Amiss = readonly (readonly [at: string, write: string])[];

const fine: Amiss = [];
const nothingSaid: Amiss = [['', 'Something beside the day, or leave the row out.']];

const amissOfMeasured = ({
  systolic_mmhg: high,
  diastolic_mmhg: low,
  pain,
  pain_place: place,
  ...rest
}: Values): Amiss => {
  if ((high === undefined) !== (low === undefined))
    return [
      [
        high === undefined ? 'systolic_mmhg' : 'diastolic_mmhg',
        'Both figures of the blood pressure, or none.',
      ],
    ];
  if (high !== undefined && low !== undefined && low >= high)
    return [['diastolic_mmhg', 'A diastolic pressure below the systolic one.']];
  if (place !== undefined && pain === undefined) return [['pain', 'The pain at this place, 0 to 10.']];
  const { weight_kg: weight, height_cm: height, grip_left_kg: left, grip_right_kg: right } = rest;
  const isSaid = [high, pain, weight, height, left, right].some((value) => value !== undefined);
  return isSaid ? fine : nothingSaid;
};

const isSaidInMorning = ({ pain, stiffness_minutes: stiffness, fatigue }: Values): boolean =>
  pain !== undefined || stiffness !== undefined || fatigue !== undefined;

/** What is wrong of a row whose cells are each right. */
const amiss = (kind: CsvKind, values: Values): Amiss => {
  if (values.day === undefined) return [['day', 'The day.']];
  if (kind === 'measurements') return amissOfMeasured(values);
  if (kind === 'sessions')
    return Object.keys(values).some((name) => name !== 'day' && name !== 'joint') ? fine : nothingSaid;
  if (values.joint === undefined) return [['joint', 'The joint the answers are about.']];
  return isSaidInMorning(values) ? fine : nothingSaid;
};

/** A row as what stands in it; what it lacks is told. */
export const thingsOf = (
  kind: CsvKind,
  values: Values,
): { readonly things: readonly ImportedThing[]; readonly amiss: Amiss } => {
  const wrong = amiss(kind, values);
  if (wrong.length > 0) return { things: [], amiss: wrong };
  const day = String(values.day);
  if (kind === 'mornings') return { things: [{ kind: 'morning', day, value: morning(values) }], amiss: fine };
  if (kind === 'sessions') return { things: [{ kind: 'session', day, value: session(values) }], amiss: fine };
  return { things: measured(values).map((value) => ({ kind: 'measurement', day, value })), amiss: fine };
};
