/** One person as a Bundle of type collection, checked against the official definitions before anybody has it. */
import type { Bundle, FhirResource } from 'fhir/r4';
import type { PersonRecord } from '../person-record.ts';
import { base } from './names.ts';
import { personResources, sharedResources } from './person-resources.ts';
import { idOf, instantOf } from './resources/parts.ts';
import { faultsOfBundle, nameOf } from './walker/references.ts';
import type { Fault } from './walker/walk.ts';

/** Of the clinic's staff only those whom this record names. */
const namedIn = (
  resources: readonly FhirResource[],
  shared: readonly FhirResource[],
): readonly FhirResource[] => {
  const written = JSON.stringify(resources);
  return shared.filter(
    (one) => one.resourceType !== 'Practitioner' || written.includes(`"Practitioner/${one.id}"`),
  );
};

export const bundleOf = (record: PersonRecord): Bundle => {
  const own = personResources(record);
  const resources = [...namedIn(own, sharedResources(record)), ...own];
  return {
    resourceType: 'Bundle',
    id: idOf('record', record.patient.id),
    type: 'collection',
    timestamp: instantOf(record.madeAt),
    entry: resources.map((resource) => ({ fullUrl: `${base}/${nameOf(resource)}`, resource })),
  };
};

/** What was made does not keep to the standard: nothing is handed on, and whoever mends it reads where. */
export class NotValid extends Error {
  readonly faults: readonly Fault[];
  constructor(faults: readonly Fault[]) {
    super(
      `The export does not keep to FHIR: ${faults
        .slice(0, 5)
        .map(({ at, what }) => `${at} ${what}`)
        .join('; ')}`,
    );
    this.faults = faults;
  }
}

export const checkedBundleOf = (record: PersonRecord): Bundle => {
  const bundle = bundleOf(record);
  const faults = faultsOfBundle(bundle);
  if (faults.length > 0) throw new NotValid(faults);
  return bundle;
};
