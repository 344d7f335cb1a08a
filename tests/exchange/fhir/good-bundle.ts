/** A Bundle with one resource of each type and what those refer to. */
import type { Bundle, FhirResource } from 'fhir/r4';
import { bundleOf } from '#exchange/fhir/bundle.ts';
import { wholeRecord } from '../whole-record.ts';

// biome-ignore lint/suspicious/noExplicitAny: a fault is whatever does not fit the types.
export type Any = any;

type Entries = NonNullable<Bundle['entry']>;

const nameOf = ({ resource }: Entries[number]): string => `${resource!.resourceType}/${resource!.id}`;

/** One of each type, the first that is made. */
const firstOfEach = (entries: Entries): readonly string[] => [
  ...new Map(entries.toReversed().map((entry) => [entry.resource!.resourceType, nameOf(entry)])).values(),
];

/** Those named, and whatever they refer to. */
const withWhatTheyNeed = (entries: Entries, names: readonly string[]): Entries => {
  const kept = new Set<string>();
  const keep = (name: string): void => {
    if (kept.has(name)) return;
    kept.add(name);
    const entry = entries.find((one) => nameOf(one) === name);
    for (const [, to] of JSON.stringify(entry).matchAll(/"reference":"([^"]+)"/g)) keep(to!);
  };
  for (const name of names) keep(name);
  return entries.filter((entry) => kept.has(nameOf(entry)));
};

export const goodBundle = (): Any => {
  const bundle: Bundle = JSON.parse(JSON.stringify(bundleOf(wholeRecord())));
  const codes = bundle.entry!.find(({ resource }) => resource?.resourceType === 'CodeSystem')!
    .resource as Any;
  codes.concept = codes.concept.slice(0, 2);
  codes.count = 2;
  bundle.entry = withWhatTheyNeed(bundle.entry!, [...firstOfEach(bundle.entry!), 'Observation/m-bp']);
  return bundle;
};

export const resourceIn = (bundle: Any, name: string): Any => {
  const [type, id] = name.split('/');
  return bundle.entry.find(({ resource }: { resource: FhirResource }) =>
    id ? resource.resourceType === type && resource.id === id : resource.resourceType === type,
  ).resource;
};
