/** Parts that resources are put together from. What is not known is left out, never written as zero. */

import { createHash } from 'node:crypto';
import type { CodeableConcept, Coding, Period, Quantity, Reference } from 'fhir/r4';
import type { PersonRecord } from '../../person-record.ts';
import { ownCodes } from '../codes/own-codes.ts';
import { isFhirId, ownSystem, systems } from '../names.ts';

/** The stored id where it may be one; else, and from several parts, one that is always the same. */
export const idOf = (...parts: readonly string[]): string => {
  const text = parts.join('-');
  return isFhirId(text) ? text : createHash('sha256').update(text).digest('hex').slice(0, 40);
};

export const refTo = (type: string, ...parts: readonly string[]): Reference => ({
  reference: `${type}/${idOf(...parts)}`,
});

export const instantOf = (at: number): string => new Date(at).toISOString();

export const periodOf = (start?: string | null, end?: string | null): { period?: Period } =>
  start || end ? { period: { ...(start ? { start } : {}), ...(end ? { end } : {}) } } : {};

/** Under a code of the own system where there is one; a word without one is a text. */
export const own = (code: string, text?: string): CodeableConcept => {
  const display = ownCodes.get(code);
  return display === undefined
    ? { text: text ?? code }
    : { coding: [{ system: ownSystem, code, display }], ...(text ? { text } : {}) };
};

export const ownCoding = (code: string): Coding | null => {
  const display = ownCodes.get(code);
  return display === undefined ? null : { system: ownSystem, code, display };
};

/** The free code first, the own one, which says more exactly which, after it. */
export const withLoinc = (code: string, concept: CodeableConcept): CodeableConcept => ({
  ...concept,
  coding: [{ system: systems.loinc, code }, ...(concept.coding ?? [])],
});

/** Twelve digits: what a sum in binary adds behind them was neither measured nor prescribed. */
export const amount = (value: number, unit: string): Quantity => ({
  value: Number(value.toPrecision(12)),
  unit: unit.startsWith('{') ? unit.slice(1, -1) : unit,
  system: systems.ucum,
  code: unit,
});

export const text = (words: string): CodeableConcept => ({ text: words });

/** A place on the body in words: there is no free code system for it. */
export const bodySite = (joint: string | null | undefined): { bodySite?: CodeableConcept } =>
  joint ? { bodySite: text(joint.replaceAll('-', ' ')) } : {};

export const notes = (...said: readonly (string | null | undefined)[]): { note?: { text: string }[] } => {
  const known = said.filter((one): one is string => Boolean(one?.trim()));
  return known.length > 0 ? { note: known.map((one) => ({ text: one })) } : {};
};

export const subjectOf = ({ patient }: PersonRecord): Reference => refTo('Patient', patient.id);

export const clinicRef = ({ clinic }: PersonRecord): Reference => refTo('Organization', clinic.id);

/** Who wrote a row: the patient, or somebody of the clinic; whoever has no sign-in there is known by an id alone. */
export const writerOf = (record: PersonRecord, id: string): Reference => {
  if (id === record.patient.id) return subjectOf(record);
  const found = record.signIns.get(id);
  if (!found) return { display: id };
  return found.role === 'patient' ? subjectOf(record) : refTo('Practitioner', id);
};

/** Rows marked as entered in error; they are handed on and say so. */
export const struckOut = ({ rows }: PersonRecord): ReadonlySet<string> =>
  new Set(rows.correction.map(({ subjectId }) => subjectId));
