/** The columns that can be taken in of each kind of day, with the headings they are looked for under. */
import { measureOf } from '#core/assessment/measures/registry.ts';
import type { ImportedKind, ImportedThing } from '#core/record/imported.ts';
import type { CellKind, CellValue } from './cells.ts';
import type { CsvKind } from './how.ts';

export interface Column {
  readonly name: string;
  readonly cell: CellKind;
  /** Other headings it may stand under: looked for, shown, and taken only when whoever imports says so. */
  readonly also: readonly string[];
}

const score: CellKind = { is: 'whole', low: 0, high: 10, unit: '' };

const within = (kind: 'body-mass' | 'stature' | 'grip' | 'blood-pressure', name: string): CellKind => {
  const field = measureOf(kind).fields.find((one) => one.name === name);
  if (field?.kind !== 'number' && field?.kind !== 'integer') throw new Error(`${kind}.${name} is no figure.`);
  const { min: low = 0, max: high = 0, unit } = field;
  return {
    is: field.kind === 'integer' ? 'whole' : 'number',
    low,
    high,
    unit: ` ${unit.replace('mm[Hg]', 'mmHg')}`,
  };
};

const column = (name: string, cell: CellKind, ...also: readonly string[]): Column => ({ name, cell, also });

const day = column('day', { is: 'day' }, 'date', 'datum', 'tag');
const joint = column('joint', { is: 'joint' }, 'gelenk');
const number = (low: number, high: number, unit = ''): CellKind => ({ is: 'number', low, high, unit });
const whole = (low: number, high: number, unit = ''): CellKind => ({ is: 'whole', low, high, unit });

export const columns: Readonly<Record<CsvKind, readonly Column[]>> = {
  sessions: [
    day,
    column('exercise', { is: 'text', most: 100 }, 'übung', 'exercise name'),
    joint,
    column('sets', whole(1, 30), 'sätze', 'set'),
    column('repetitions', whole(0, 500), 'reps', 'wiederholungen', 'wdh'),
    column('load_kg', number(0, 500, ' kg'), 'load', 'weight', 'gewicht', 'last', 'kg'),
    column('pain_before', score, 'schmerz vorher', 'pain before the session'),
    column('pain_during', score, 'schmerz während', 'pain during the session'),
    column('pain_after', score, 'schmerz danach', 'schmerz nachher', 'pain after the session'),
  ],
  mornings: [
    day,
    joint,
    column('pain', score, 'schmerz', 'schmerzen', 'nrs', 'morning pain', 'schmerz am morgen'),
    column('stiffness_minutes', whole(0, 1440, ' min'), 'stiffness', 'steifigkeit', 'steifigkeit minuten'),
    column('fatigue', score, 'tiredness', 'müdigkeit'),
  ],
  measurements: [
    day,
    column('weight_kg', within('body-mass', 'massKg'), 'weight', 'gewicht', 'body weight', 'körpergewicht'),
    column('height_cm', within('stature', 'statureCm'), 'height', 'größe', 'grösse', 'körpergröße'),
    column('systolic_mmhg', within('blood-pressure', 'systolicMmhg'), 'systolic', 'systolisch', 'sys'),
    column('diastolic_mmhg', within('blood-pressure', 'diastolicMmhg'), 'diastolic', 'diastolisch', 'dia'),
    column('pain', score, 'schmerz', 'schmerzen', 'nrs'),
    column('pain_place', { is: 'text', most: 60 }, 'pain site', 'schmerzort'),
    column('grip_left_kg', within('grip', 'forceKg'), 'grip left', 'griffkraft links'),
    column('grip_right_kg', within('grip', 'forceKg'), 'grip right', 'griffkraft rechts'),
  ],
};

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

const kindOf: Readonly<Record<CsvKind, ImportedKind>> = {
  sessions: 'session',
  mornings: 'morning',
  measurements: 'measurement',
};

/** What is wrong of a row whose cells are each right. */
const amiss = (kind: CsvKind, values: Values): readonly (readonly [at: string, write: string])[] => {
  const { day: on, joint: place, systolic_mmhg: high, diastolic_mmhg: low, ...rest } = values;
  if (on === undefined) return [['day', 'The day.']];
  if (kind === 'mornings' && place === undefined) return [['joint', 'The joint the answers are about.']];
  if ((high === undefined) !== (low === undefined))
    return [
      [
        high === undefined ? 'systolic_mmhg' : 'diastolic_mmhg',
        'Both figures of the blood pressure, or none.',
      ],
    ];
  if (high !== undefined && low !== undefined && low >= high)
    return [['diastolic_mmhg', 'A diastolic pressure below the systolic one.']];
  const { pain_place: placeOfPain, ...figures } = rest;
  if (placeOfPain !== undefined && figures.pain === undefined)
    return [['pain', 'The pain at this place, 0 to 10.']];
  if (high !== undefined || Object.values(figures).some((value) => value !== undefined)) return [];
  return [['', 'Something beside the day, or leave the row out.']];
};

/** A row as what stands in it; what it lacks is told. */
export const thingsOf = (
  kind: CsvKind,
  values: Values,
): { readonly things: readonly ImportedThing[]; readonly amiss: ReturnType<typeof amiss> } => {
  const wrong = amiss(kind, values);
  if (wrong.length > 0) return { things: [], amiss: wrong };
  const found =
    kind === 'measurements' ? measured(values) : [kind === 'mornings' ? morning(values) : session(values)];
  return {
    things: found.map((value) => ({ kind: kindOf[kind], day: String(values.day), value })),
    amiss: [],
  };
};
