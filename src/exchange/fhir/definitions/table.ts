/** The official definitions of FHIR R4 (4.0.1), cut to what is written here by `npm run cut-fhir`. */
import cut from './r4.json' with { type: 'json' };

/** Resources an export may hold. */
export const resourceTypes = [
  'Bundle',
  'CodeSystem',
  'Patient',
  'Practitioner',
  'Organization',
  'EpisodeOfCare',
  'Consent',
  'QuestionnaireResponse',
  'Condition',
  'Observation',
  'CarePlan',
  'ServiceRequest',
  'Procedure',
  'Goal',
  'ClinicalImpression',
  'DetectedIssue',
  'Flag',
  'Communication',
  'Provenance',
  'AuditEvent',
] as const;

export interface ElementRule {
  readonly min: number;
  readonly many: boolean;
  /** More than one belongs to an element of several types, such as value[x]. */
  readonly types: readonly string[];
  /** Resources a reference may lead to; left out = any. */
  readonly targets?: readonly string[];
  /** Value set whose codes alone are allowed. */
  readonly codes?: string;
}

export interface Table {
  /** Elements by type, or by the path of a part of one, such as "Bundle.entry". */
  readonly types: Record<string, Readonly<Record<string, ElementRule>>>;
  /** The pattern each primitive type keeps to; empty = none is published. */
  readonly primitives: Record<string, string>;
  readonly codes: Record<string, readonly string[]>;
}

export const table = cut as unknown as Table;
