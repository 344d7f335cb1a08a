/** Walks a resource along the table of the official definitions and names everything that does not fit it. */
import { type ElementRule, resourceTypes, table } from '../definitions/table.ts';
import { isFhirId } from '../names.ts';
import { faultsOfMeaning } from './meaning.ts';
import { faultOfPrimitive, isPrimitive } from './primitives.ts';

export interface Fault {
  /** Such as "Observation.component[0].code". */
  readonly at: string;
  readonly what: string;
}

type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

interface Named {
  readonly element: string;
  readonly type: string;
  readonly rule: ElementRule;
}

const upper = (type: string): string => `${type[0]!.toUpperCase()}${type.slice(1)}`;

/** The names a value may stand under: of value[x] one for each type. */
const namesOf = (type: string): ReadonlyMap<string, Named> =>
  new Map(
    Object.entries(table.types[type] ?? {}).flatMap(([element, rule]) =>
      element.endsWith('[x]')
        ? rule.types.map(
            (one) => [`${element.slice(0, -3)}${upper(one)}`, { element, type: one, rule }] as const,
          )
        : [[element, { element, type: rule.types[0]!, rule }] as const],
    ),
  );

interface Shape {
  readonly names: ReadonlyMap<string, Named>;
  /** Elements that must be there. */
  readonly needed: readonly string[];
}

const known = new Map<string, Shape>();
const shapeOf = (type: string): Shape => {
  const found = known.get(type);
  if (found) return found;
  const needed = Object.entries(table.types[type] ?? {}).flatMap(([element, { min }]) =>
    min > 0 ? [element] : [],
  );
  const shape = { names: namesOf(type), needed };
  known.set(type, shape);
  return shape;
};

const faultsOfOne = (value: unknown, { type, rule }: Named, at: string): readonly Fault[] => {
  if (type === 'Resource') return faultsOfResource(value, at);
  if (!isPrimitive(type)) return faultsOfParts(value, type, at, rule);
  const what = faultOfPrimitive(type, value);
  if (what) return [{ at, what }];
  const codes = rule.codes === undefined ? undefined : table.codes[rule.codes];
  return codes && !codes.includes(String(value))
    ? [{ at, what: `"${value}" is not among the codes required` }]
    : [];
};

const faultsOfValue = (value: unknown, named: Named, at: string): readonly Fault[] => {
  if (!named.rule.many)
    return Array.isArray(value) ? [{ at, what: 'must not be a list' }] : faultsOfOne(value, named, at);
  if (!Array.isArray(value)) return [{ at, what: 'must be a list' }];
  if (value.length === 0) return [{ at, what: 'is an empty list' }];
  return value.flatMap((one, place) => faultsOfOne(one, named, `${at}[${place}]`));
};

/** The elements that are given, under whichever of their names, each at most once. */
const countFaults = (given: readonly string[], { needed }: Shape, at: string): readonly Fault[] => {
  const once = new Set(given);
  const missing = needed.filter((element) => !once.has(element));
  const twice =
    once.size === given.length ? [] : given.filter((element, at) => given.indexOf(element) !== at);
  return [
    ...missing.map((element) => ({ at: `${at}.${element}`, what: 'is missing' })),
    ...twice.map((element) => ({ at: `${at}.${element}`, what: 'is given in more than one type' })),
  ];
};

const faultsOfParts = (value: unknown, type: string, at: string, rule?: ElementRule): readonly Fault[] => {
  if (!isFields(value)) return [{ at, what: `must be a ${type}` }];
  const shape = shapeOf(type);
  const faults: Fault[] = [];
  const given: string[] = [];
  for (const key of Object.keys(value)) {
    if (key === 'resourceType' && isResource(type)) continue;
    const named = shape.names.get(key);
    given.push(named?.element ?? key);
    if (named) faults.push(...faultsOfValue(value[key], named, `${at}.${key}`));
    else faults.push({ at: `${at}.${key}`, what: `is no element of ${type}` });
  }
  if (given.length === 0) return [{ at, what: 'is empty' }];
  faults.push(...countFaults(given, shape, at));
  faults.push(...faultsOfMeaning(value, type, rule).map((what) => ({ at, what })));
  return faults;
};

const written: ReadonlySet<unknown> = new Set(resourceTypes);
const isResource = (type: unknown): type is (typeof resourceTypes)[number] => written.has(type);

const faultsOfId = ({ id }: Fields, at: string): readonly Fault[] =>
  typeof id === 'string' && isFhirId(id)
    ? []
    : [{ at: `${at}.id`, what: 'must be 1 to 64 letters, digits, - or .' }];

function faultsOfResource(value: unknown, at: string): readonly Fault[] {
  if (!isFields(value)) return [{ at, what: 'must be a resource' }];
  const { resourceType } = value;
  if (!isResource(resourceType))
    return [{ at: `${at}.resourceType`, what: 'names no resource that is written here' }];
  return [...faultsOfId(value, at), ...faultsOfParts(value, resourceType, at)];
}

/** Everything wrong with one resource by itself; references are looked up apart. */
export const faultsOf = (resource: unknown): readonly Fault[] =>
  faultsOfResource(resource, isFields(resource) ? String(resource.resourceType) : 'resource');
