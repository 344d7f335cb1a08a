/** What the shape alone does not say: codes and units that exist, and the rules between elements of one part. */

import { loincCodes } from '../codes/loinc.ts';
import { ownCodes } from '../codes/own-codes.ts';
import { isUnit } from '../codes/units.ts';
import type { ElementRule } from '../definitions/table.ts';
import { ownSystem, systems } from '../names.ts';

type Fields = Readonly<Record<string, unknown>>;

/** Codes of HL7 that are written, each as its system spells it. */
const hl7Codes: Readonly<Record<string, readonly string[]>> = {
  [systems.observationCategory]: ['vital-signs', 'survey', 'exam', 'activity'],
  [systems.conditionStanding]: ['entered-in-error'],
  [systems.consentScope]: ['treatment', 'patient-privacy'],
  [systems.goalAchievement]: ['in-progress', 'improving', 'achieved', 'not-achieved'],
  [systems.provenanceAgent]: ['author', 'enterer', 'verifier'],
};

const isKnownCode = (system: unknown, code: unknown, display: unknown): boolean => {
  if (typeof code !== 'string') return false;
  if (system === ownSystem)
    return ownCodes.has(code) && (display === undefined || ownCodes.get(code) === display);
  if (system === systems.loinc) return loincCodes.has(code) && display === undefined;
  return hl7Codes[String(system)]?.includes(code) === true;
};

const codingFaults = ({ system, code, display }: Fields): readonly string[] => {
  if (code === undefined && system === undefined) return [];
  return isKnownCode(system, code, display) ? [] : ['is no code of a system that is written here'];
};

const quantityFaults = ({ value, system, code }: Fields): readonly string[] => [
  ...(value === undefined ? ['has no value'] : []),
  ...(system === systems.ucum && typeof code === 'string' && isUnit(code)
    ? []
    : ['has a unit that is not on the list of UCUM units']),
];

const periodFaults = ({ start, end }: Fields): readonly string[] =>
  typeof start === 'string' && typeof end === 'string' && Date.parse(start) > Date.parse(end)
    ? ['ends before it begins']
    : [];

const valueNames = (fields: Fields): readonly string[] =>
  Object.keys(fields).filter((name) => /^value[A-Z]/.test(name));

const observationFaults = (fields: Fields): readonly string[] =>
  fields.dataAbsentReason !== undefined && valueNames(fields).length > 0
    ? ['has a value and a reason why there is none']
    : [];

const referenceFaults = (fields: Fields, rule: ElementRule | undefined): readonly string[] => {
  const { reference, display } = fields;
  // Somebody who is known by name alone.
  if (reference === undefined && typeof display === 'string') return [];
  if (typeof reference !== 'string' || display !== undefined) return ['refers to nothing, or twice'];
  const [type = '', id] = reference.split('/');
  if (!id || `${type}/${id}` !== reference) return ['must be a relative reference, such as Patient/1'];
  return rule?.targets && !rule.targets.includes(type) ? [`may not lead to a ${type}`] : [];
};

const rules: Readonly<Record<string, (fields: Fields, rule: ElementRule | undefined) => readonly string[]>> =
  {
    Coding: codingFaults,
    Quantity: quantityFaults,
    Period: periodFaults,
    Observation: observationFaults,
    'Observation.component': observationFaults,
    Reference: referenceFaults,
    Consent: ({ policy, policyRule }) => ((policy ?? policyRule) ? [] : ['names no wording it answers']),
    ServiceRequest: ({ orderDetail, code }) => (orderDetail && !code ? ['has details of no order'] : []),
  };

export const faultsOfMeaning = (
  fields: Fields,
  type: string,
  rule: ElementRule | undefined,
): readonly string[] => rules[type]?.(fields, rule) ?? [];
