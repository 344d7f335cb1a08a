/** A clinic as lines of JSON, one resource a line, person by person: what is in memory is never more than one of them. */
import type { FhirResource } from 'fhir/r4';
import type { PersonRecord } from '../person-record.ts';
import { NotValid } from './bundle.ts';
import { personResources, sharedResources } from './person-resources.ts';
import { faultsOfSet, nameOf } from './walker/references.ts';

export interface Line {
  /** Of the file it belongs to: one for each type. */
  readonly type: string;
  readonly text: string;
}

const linesOf = (resources: readonly FhirResource[]): readonly Line[] =>
  resources.map((resource) => ({ type: resource.resourceType, text: `${JSON.stringify(resource)}\n` }));

export const sharedLines = (clinic: Pick<PersonRecord, 'clinic' | 'signIns'>): readonly Line[] => {
  const resources = sharedResources(clinic);
  const faults = faultsOfSet(resources);
  if (faults.length > 0) throw new NotValid(faults);
  return linesOf(resources);
};

export const personLines = (record: PersonRecord): readonly Line[] => {
  const resources = personResources(record);
  const faults = faultsOfSet(resources, new Set(sharedResources(record).map(nameOf)));
  if (faults.length > 0) throw new NotValid(faults);
  return linesOf(resources);
};
