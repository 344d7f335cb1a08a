/** An Observation of another system as what it measured; or why it is not taken. */
import type { CodeableConcept, Observation } from 'fhir/r4';
import { measureOf } from '#core/assessment/measures/registry.ts';
import type { ImportedMeasurement } from '#core/record/imported.ts';
import { loinc } from '../../fhir/codes/loinc.ts';
import { ownSystem, systems } from '../../fhir/names.ts';
import { figureOf, units } from './quantity.ts';

type Told = ImportedMeasurement | { readonly write: string };

const has = (concept: CodeableConcept | undefined, system: string, code: string): boolean =>
  concept?.coding?.some((one) => one.system === system && one.code === code) ?? false;

const within = (
  kind: 'body-mass' | 'stature' | 'grip' | 'blood-pressure',
  name: string,
  value: number | null,
): value is number => {
  const field = measureOf(kind).fields.find((one) => one.name === name);
  if (value === null || (field?.kind !== 'number' && field?.kind !== 'integer')) return false;
  const isWhole = field.kind === 'number' || Number.isInteger(value);
  return isWhole && value >= (field.min ?? 0) && value <= (field.max ?? 0);
};

const bodyMass = ({ valueQuantity }: Observation): Told => {
  const massKg = figureOf(valueQuantity, units.kilograms);
  return within('body-mass', 'massKg', massKg)
    ? { what: 'body-mass', massKg }
    : { write: 'A weight from 25 to 350 kg, with a UCUM code of kg, g or [lb_av].' };
};

const stature = ({ valueQuantity }: Observation): Told => {
  const statureCm = figureOf(valueQuantity, units.centimetres);
  return within('stature', 'statureCm', statureCm)
    ? { what: 'stature', statureCm }
    : { write: 'A height from 100 to 250 cm, with a UCUM code of cm, m, mm or [in_i].' };
};

const pressure = ({ component = [] }: Observation): Told => {
  const part = (code: string) =>
    figureOf(component.find((one) => has(one.code, systems.loinc, code))?.valueQuantity, units.pressure);
  const [systolicMmhg, diastolicMmhg] = [part(loinc.systolic), part(loinc.diastolic)];
  return within('blood-pressure', 'systolicMmhg', systolicMmhg) &&
    within('blood-pressure', 'diastolicMmhg', diastolicMmhg) &&
    diastolicMmhg < systolicMmhg
    ? { what: 'blood-pressure', systolicMmhg, diastolicMmhg }
    : { write: 'Two components in whole mm[Hg], the systolic one above the diastolic one.' };
};

const mostOfPlace = 60;

const painOf = ({ valueQuantity, valueInteger, bodySite }: Observation): Told => {
  const pain = valueInteger ?? figureOf(valueQuantity, units.scores);
  const place = bodySite?.text ?? null;
  if (place !== null && place.length > mostOfPlace)
    return { write: `A place of at most ${mostOfPlace} characters.` };
  return pain !== null && Number.isInteger(pain) && pain >= 0 && pain <= 10
    ? { what: 'pain', pain, place }
    : { write: 'A whole number from 0 to 10, as valueInteger or with the unit {score}.' };
};

/** Grip of the left hand has no free code; with our own it says its side in a component. */
const sideOf = ({ code, component = [] }: Observation): 'left' | 'right' | null => {
  if (has(code, systems.loinc, loinc.gripRight)) return 'right';
  const said = component.find((one) => has(one.code, ownSystem, 'measure.grip.side'))?.valueString;
  return said === 'left' || said === 'right' ? said : null;
};

const grip = (observation: Observation): Told => {
  const [side, forceKg] = [sideOf(observation), figureOf(observation.valueQuantity, units.kilograms)];
  if (side === null) return { write: 'The side of the hand.' };
  return within('grip', 'forceKg', forceKg)
    ? { what: 'grip', side, forceKg }
    : { write: 'A force from 0 to 120 kg, with a UCUM code of kg or g.' };
};

const readers: readonly (readonly [system: string, code: string, read: (one: Observation) => Told])[] = [
  [systems.loinc, loinc.bodyWeight, bodyMass],
  [systems.loinc, loinc.bodyHeight, stature],
  [systems.loinc, loinc.bloodPressure, pressure],
  [systems.loinc, loinc.pain, painOf],
  [systems.loinc, loinc.gripRight, grip],
  [ownSystem, 'measure.grip', grip],
];

export const measurementIn = (observation: Observation): Told => {
  const reader = readers.find(([system, code]) => has(observation.code, system, code));
  return reader
    ? reader[2](observation)
    : { write: 'Only weight, height, blood pressure, pain and grip are taken.' };
};
