/** Names of systems: they say what a code or an id belongs to, and nothing is ever fetched from them. */

export const systems = {
  loinc: 'http://loinc.org',
  ucum: 'http://unitsofmeasure.org',
  observationCategory: 'http://terminology.hl7.org/CodeSystem/observation-category',
  conditionStanding: 'http://terminology.hl7.org/CodeSystem/condition-ver-status',
  consentScope: 'http://terminology.hl7.org/CodeSystem/consentscope',
  goalAchievement: 'http://terminology.hl7.org/CodeSystem/goal-achievement',
  provenanceAgent: 'http://terminology.hl7.org/CodeSystem/provenance-participant-type',
} as const;

/** Reserved so that it never leads anywhere: this product has no address of its own. */
export const base = 'https://loadgate.invalid/fhir';

export const ownSystem = `${base}/CodeSystem/loadgate`;

export const vitalSignProfile = (name: 'bp' | 'bodyweight' | 'bodyheight'): string =>
  `http://hl7.org/fhir/StructureDefinition/${name}`;

/** What the licence of LOINC asks to be said wherever its codes are handed on. */
export const loincNotice =
  'This material contains content from LOINC (http://loinc.org). LOINC is copyright © Regenstrief Institute, Inc. and the Logical Observation Identifiers Names and Codes (LOINC) Committee and is available at no cost under the license at http://loinc.org/license. LOINC® is a registered United States trademark of Regenstrief Institute, Inc.';

const idPattern = /^[A-Za-z0-9\-.]{1,64}$/;

export const isFhirId = (text: string): boolean => idPattern.test(text);
