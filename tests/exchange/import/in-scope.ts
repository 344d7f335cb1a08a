/** Of a Bundle exactly what an import takes: who it is of, and each figure with its code, its day and its place. */
import type { Bundle, CodeableConcept, FhirResource, Observation, Patient } from 'fhir/r4';
import { dayAt } from '#data/civil-time.ts';

const takenCodes = ['29463-7', '8302-2', '85354-9', '72514-3', '83174-3'];
const takenStates = ['final', 'amended', 'corrected'];

const loincOf = (code: CodeableConcept | undefined): string | undefined =>
  code?.coding?.find(({ system }) => system === 'http://loinc.org')?.code;

/** Grip of the left hand has no free code and is known by our own. */
const isGrip = ({ code }: Observation): boolean =>
  code.coding?.some((one) => one.code === 'measure.grip') ?? false;

const figuresOf = ({ valueQuantity, component = [] }: Observation): readonly unknown[] => {
  const pressure = component.filter(({ code }) => ['8480-6', '8462-4'].includes(loincOf(code) ?? ''));
  if (pressure.length > 0)
    return pressure.map(({ code, valueQuantity: one }) => [loincOf(code), one?.value, one?.code]);
  return [valueQuantity?.value, valueQuantity?.code];
};

const dayOf = (text: string, zone: string): string =>
  text.includes('T') ? dayAt(Date.parse(text), zone) : text;

const lineOf = (one: Observation, zone: string): string[] => {
  const code = loincOf(one.code) ?? (isGrip(one) ? 'grip' : '');
  const isTaken = takenStates.includes(one.status) && (takenCodes.includes(code) || code === 'grip');
  const figures = figuresOf(one);
  if (!isTaken || figures[0] === undefined) return [];
  const place = code === '72514-3' || code === 'grip' ? (one.bodySite?.text ?? null) : null;
  return [JSON.stringify([code, dayOf(one.effectiveDateTime!, zone), figures, place])];
};

const personOf = ({ name, birthDate, telecom }: Patient) => [
  ...[name?.[0]?.family, name?.[0]?.given?.[0], birthDate],
  telecom?.find(({ system }) => system === 'phone')?.value ?? null,
];

const conditionOf = (resource: FhirResource): string[] => {
  if (
    resource.resourceType !== 'Condition' ||
    resource.verificationStatus?.coding?.[0]?.code === 'entered-in-error'
  )
    return [];
  return [JSON.stringify([resource.code?.text, resource.onsetDateTime ?? null])];
};

export const inScope = (bundle: Bundle, zone: string) => {
  const all = bundle.entry!.flatMap(({ resource }) => (resource ? [resource as FhirResource] : []));
  return {
    person: all.flatMap((one) => (one.resourceType === 'Patient' ? [personOf(one)] : [])),
    measured: all.flatMap((one) => (one.resourceType === 'Observation' ? lineOf(one, zone) : [])).sort(),
    conditions: all.flatMap(conditionOf).sort(),
  };
};
