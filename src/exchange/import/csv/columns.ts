/** The columns that can be taken in of each kind of day, with the headings they are looked for under. */
import { measureOf } from '#core/assessment/measures/registry.ts';
import type { CellKind } from './cells.ts';
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
