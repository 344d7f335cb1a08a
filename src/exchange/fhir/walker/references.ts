/** References of a set of resources: each leads to one of them, and no two are the same. */
import { base } from '../names.ts';
import type { Fault } from './walk.ts';
import { faultsOf } from './walk.ts';

/** Every reference below a value, with where it stands. */
function* referencesIn(value: unknown, at: string): Generator<readonly [string, string]> {
  if (Array.isArray(value)) {
    for (const [place, one] of value.entries()) yield* referencesIn(one, `${at}[${place}]`);
    return;
  }
  if (typeof value !== 'object' || value === null) return;
  for (const [name, one] of Object.entries(value)) {
    if (name === 'reference' && typeof one === 'string') yield [one, at];
    else yield* referencesIn(one, `${at}.${name}`);
  }
}

interface Identified {
  readonly resourceType: string;
  readonly id?: string | undefined;
}

export const nameOf = ({ resourceType, id }: Identified): string => `${resourceType}/${id}`;

/** References to what neither stands in the set nor is known beside it. */
const unresolved = (resources: readonly Identified[], beside: ReadonlySet<string> = new Set()) => {
  const names = new Set([...resources.map(nameOf), ...beside]);
  return resources.flatMap((resource): readonly Fault[] =>
    [...referencesIn(resource, nameOf(resource))].flatMap(([reference, at]) =>
      names.has(reference) ? [] : [{ at, what: `refers to ${reference}, which is not there` }],
    ),
  );
};

const twice = (resources: readonly Identified[]): readonly Fault[] => {
  const seen = new Set<string>();
  return resources.flatMap((resource) => {
    const name = nameOf(resource);
    if (seen.has(name)) return [{ at: name, what: 'is there twice' }];
    seen.add(name);
    return [];
  });
};

/** Everything wrong with a set of resources that is handed on together. */
export const faultsOfSet = (
  resources: readonly Identified[],
  beside?: ReadonlySet<string>,
): readonly Fault[] => [
  ...resources.flatMap(faultsOf),
  ...twice(resources),
  ...unresolved(resources, beside),
];

interface Entry {
  readonly fullUrl?: string;
  readonly resource?: Identified;
}

const faultsOfUrls = (entries: readonly Entry[]): readonly Fault[] =>
  entries.flatMap(({ fullUrl, resource }, place) =>
    resource && fullUrl === `${base}/${nameOf(resource)}`
      ? []
      : [{ at: `Bundle.entry[${place}].fullUrl`, what: 'is not the address of its resource' }],
  );

/** Everything wrong with a Bundle: its own shape, its entries, and what they refer to. */
export const faultsOfBundle = (bundle: unknown): readonly Fault[] => {
  const own = faultsOf(bundle);
  if (own.length > 0) return own;
  const entries = (bundle as { readonly entry?: readonly Entry[] }).entry ?? [];
  const resources = entries.flatMap(({ resource }) => (resource ? [resource] : []));
  return [...faultsOfUrls(entries), ...twice(resources), ...unresolved(resources)];
};
