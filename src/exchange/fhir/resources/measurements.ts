/** Measurements as Observations: vital signs by their profiles, everything else by its measure's own description. */
import type { CodeableConcept, Observation, ObservationComponent } from 'fhir/r4';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measureOf } from '#core/assessment/measures/registry.ts';
import { oneRepMaxRange } from '#core/assessment/strength/one-rep-max-range.ts';
import type { Field, NumberField } from '#core/calculations/describe.ts';
import type { PersonRecord } from '../../person-record.ts';
import { loinc } from '../codes/loinc.ts';
import { systems, vitalSignProfile } from '../names.ts';
import {
  amount,
  bodySite,
  idOf,
  instantOf,
  own,
  refTo,
  struckOut,
  subjectOf,
  withLoinc,
  writerOf,
} from './parts.ts';

type Row = PersonRecord['rows']['measurement'][number];
type Values = Readonly<Record<string, unknown>>;

const isNumber = (field: Field): field is NumberField => field.kind === 'number' || field.kind === 'integer';

/** Of a force the instrument says the unit. */
const unitsOfForce: Readonly<Record<string, string>> = { newtons: 'N', kilograms: 'kg' };
const unitOf = ({ unit }: NumberField, values: Values): string =>
  (typeof values.forceUnit === 'string' && unitsOfForce[values.forceUnit]) || unit;

const vital = {
  'body-mass': { code: loinc.bodyWeight, profile: 'bodyweight' },
  stature: { code: loinc.bodyHeight, profile: 'bodyheight' },
  'blood-pressure': { code: loinc.bloodPressure, profile: 'bp' },
} as const;

const partCodes: Readonly<Record<string, string>> = {
  systolicMmhg: loinc.systolic,
  diastolicMmhg: loinc.diastolic,
};

const isVital = (kind: string): kind is keyof typeof vital => kind in vital;

const codeOf = ({ kind, ...values }: Measurement): CodeableConcept => {
  const concept = own(`measure.${kind}`);
  const { side, limb, site } = values as Values;
  if (isVital(kind)) return withLoinc(vital[kind].code, concept);
  if (kind === 'grip' && side === 'right') return withLoinc(loinc.gripRight, concept);
  const isUpperArm = limb === 'arm' && side === 'right' && /^mid[- ]upper[- ]arm$/i.test(String(site));
  return kind === 'limb-circumference' && isUpperArm ? withLoinc(loinc.midUpperArmRight, concept) : concept;
};

const componentOf = (kind: string, field: Field, values: Values): ObservationComponent[] => {
  const value = values[field.name];
  const concept = own(`measure.${kind}.${field.name}`);
  const code = partCodes[field.name] ? withLoinc(partCodes[field.name]!, concept) : concept;
  if (value === undefined || value === null) return [];
  if (isNumber(field)) return [{ code, valueQuantity: amount(Number(value), unitOf(field, values)) }];
  if (typeof value === 'boolean') return [{ code, valueBoolean: value }];
  // Readings of one thing, one after the other: in mmHg, the only such list there is.
  if (Array.isArray(value))
    return value.map((one) => ({ code, valueQuantity: amount(Number(one), 'mm[Hg]') }));
  return [{ code, valueString: String(value) }];
};

/** A single figure is the value itself; more than one, and what says how it was taken, are components. */
const valuesOf = (row: Measurement): Pick<Observation, 'valueQuantity' | 'component'> => {
  const values = row as unknown as Values;
  const fields: readonly Field[] = measureOf(row.kind).fields;
  const figures = fields.filter(isNumber);
  const [only] = figures;
  const isSingle = figures.length === 1 && only !== undefined && typeof values[only.name] === 'number';
  const component = fields
    .filter((field) => !(isSingle && field === only))
    .flatMap((field) => componentOf(row.kind, field, values));
  return {
    ...(isSingle ? { valueQuantity: amount(Number(values[only.name]), unitOf(only, values)) } : {}),
    ...(component.length > 0 ? { component } : {}),
  };
};

const placeOf = (row: Measurement): string | null => {
  const { joint, side, limb, site } = row as unknown as Values;
  const parts = [joint, side, limb, site].filter((part) => typeof part === 'string' && part !== 'both');
  return parts.length > 0 ? parts.join(' ') : null;
};

/** Under which id an appointment counts by now; null = struck out. */
const standsAs = (record: PersonRecord, id: string): string | null => {
  const mark = record.rows.correction.find(({ subjectId }) => subjectId === id);
  if (!mark) return id;
  return mark.replacedById === null ? null : standsAs(record, mark.replacedById);
};

/** Of what was not taken in person. */
const distanceNote = (record: PersonRecord, { visitId }: Row): Pick<Observation, 'note'> => {
  const id = visitId === null ? null : standsAs(record, visitId);
  const place = record.rows.visit.find((row) => row.id === id)?.place;
  return place === 'video' || place === 'telephone' ? { note: [{ text: `Taken by ${place}.` }] } : {};
};

const observationOf = (record: PersonRecord, row: Row, wrong: ReadonlySet<string>): Observation => {
  const { kind } = row.value;
  return {
    resourceType: 'Observation',
    id: idOf(row.id),
    ...(isVital(kind) ? { meta: { profile: [vitalSignProfile(vital[kind].profile)] } } : {}),
    status: wrong.has(row.id) ? 'entered-in-error' : 'final',
    category: [
      { coding: [{ system: systems.observationCategory, code: isVital(kind) ? 'vital-signs' : 'exam' }] },
    ],
    code: codeOf(row.value),
    subject: subjectOf(record),
    effectiveDateTime: row.day,
    issued: instantOf(row.recordedAt),
    performer: [writerOf(record, row.recordedBy)],
    ...valuesOf(row.value),
    ...bodySite(placeOf(row.value)),
    ...distanceNote(record, row),
    ...(row.homeAnswersId ? { derivedFrom: [refTo('QuestionnaireResponse', row.homeAnswersId)] } : {}),
  };
};

/** What a test to failure says of the maximum: one estimate for each equation that holds, never one figure. */
const estimatesOf = (record: PersonRecord, row: Row, wrong: ReadonlySet<string>): Observation[] => {
  if (row.value.kind !== 'repetitions-to-failure') return [];
  const outcome = oneRepMaxRange(row.value);
  if (!outcome.ok) return [];
  return Object.entries(outcome.result.byEquation).map(([id, kg]) => ({
    resourceType: 'Observation',
    id: idOf(row.id, id),
    status: wrong.has(row.id) ? 'entered-in-error' : 'final',
    category: [{ coding: [{ system: systems.observationCategory, code: 'exam' }] }],
    code: own('one-rep-max'),
    subject: subjectOf(record),
    effectiveDateTime: row.day,
    valueQuantity: amount(Math.round(kg * 100) / 100, 'kg'),
    method: own(`equation.${id}`),
    derivedFrom: [refTo('Observation', row.id)],
    note: [{ text: 'Estimated by an equation from a test to failure; not measured.' }],
  }));
};

export const measurementObservations = (record: PersonRecord): readonly Observation[] => {
  const wrong = struckOut(record);
  return record.rows.measurement.flatMap((row) => [
    observationOf(record, row, wrong),
    ...estimatesOf(record, row, wrong),
  ]);
};

/** Stroke tests of the knee, and the usual values that a clinician set. */
export const jointObservations = (record: PersonRecord): readonly Observation[] => {
  const wrong = struckOut(record);
  const head = (id: string, by: string, at: number): Omit<Observation, 'code'> => ({
    resourceType: 'Observation',
    id: idOf(id),
    status: wrong.has(id) ? 'entered-in-error' : 'final',
    category: [{ coding: [{ system: systems.observationCategory, code: 'exam' }] }],
    subject: subjectOf(record),
    performer: [writerOf(record, by)],
    issued: instantOf(at),
  });
  const score = (code: string, value: number | null): ObservationComponent[] =>
    value === null ? [] : [{ code: own(code), valueQuantity: amount(value, '{score}') }];
  return [
    ...record.rows.effusion_test.map((row) => ({
      ...head(row.id, row.recordedBy, row.recordedAt),
      code: own('effusion'),
      effectiveDateTime: row.day,
      valueString: row.grade,
      ...bodySite(row.joint),
    })),
    ...record.rows.baseline.map((row) => ({
      ...head(row.id, row.recordedBy, row.recordedAt),
      code: own('baseline'),
      effectiveDateTime: row.setOn,
      component: [
        ...score('baseline.pain', row.usualPain),
        ...score('baseline.pain-top', row.usualPainTop),
        ...score('baseline.pain-limit', row.acceptablePainLimit),
        { code: own('baseline.stiffness'), valueQuantity: amount(row.usualStiffnessMinutes, 'min') },
        { code: own('baseline.swelling'), valueString: row.usualSwelling },
        { code: own('baseline.effusion'), valueString: row.usualEffusion },
        ...score('baseline.fatigue', row.usualFatigue),
      ],
      ...bodySite(row.joint),
      note: [{ text: row.reason }],
    })),
  ];
};
