/** Single faults at every value of a Bundle. */
import type { Any } from './good-bundle.ts';

/** What is put in the place of each value; null where it would be no fault. */
const wrongs: readonly (readonly [string, (value: unknown) => { readonly put: unknown } | null])[] = [
  ['null', () => ({ put: null })],
  ['a number', (value) => (typeof value === 'number' ? null : { put: 17 })],
  ['{}', () => ({ put: {} })],
  ['[]', () => ({ put: [] })],
  ['""', () => ({ put: '' })],
  ['wrapped in a list', (value) => ({ put: [value] })],
  ['taken out of its list', (value) => (Array.isArray(value) ? { put: value[0] } : null)],
];

interface Place {
  readonly name: string;
  /** Puts one fault in, and gives back what takes it out again. */
  readonly make: () => () => void;
}

const faultsAt = (parent: Any, key: string | number, path: string): Place[] => {
  const value = parent[key];
  const replaced = wrongs.flatMap(([what, wrong]): Place[] => {
    const put = wrong(value);
    return put
      ? [
          {
            name: `${path} ${what}`,
            make: () => {
              parent[key] = put.put;
              return () => {
                parent[key] = value;
              };
            },
          },
        ]
      : [];
  });
  if (typeof key === 'number') return replaced;
  const misspelt = {
    name: `${path} misspelt`,
    make: () => {
      delete parent[key];
      parent[`${key}x`] = value;
      return () => {
        delete parent[`${key}x`];
        parent[key] = value;
      };
    },
  };
  return [...replaced, misspelt];
};

/**
 * At every value below a part: each wrong in its place, its name misspelt, and an unknown name beside it. Of a list
 * the first alone, since the others are read by the same row of the table.
 */
export const faultsBelow = (part: Any, path: string): Place[] => {
  const isList = Array.isArray(part);
  const unknown: Place = {
    name: `${path} with an unknown name`,
    make: () => {
      part.unknown = true;
      return () => delete part.unknown;
    },
  };
  const below = Object.keys(part)
    .slice(0, isList ? 1 : undefined)
    .flatMap((name): Place[] => {
      const key = isList ? Number(name) : name;
      const value = part[key];
      const here = isList ? `${path}[${name}]` : `${path}.${name}`;
      const deeper = typeof value === 'object' && value !== null ? faultsBelow(value, here) : [];
      return [...faultsAt(part, key, here), ...deeper];
    });
  return isList ? below : [unknown, ...below];
};
