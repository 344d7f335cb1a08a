/**
 * What of a changed interface breaks a program that was written for the one before: an address or a field that is
 * gone, something it must send now, a value it has never heard of, a bound that became narrower. What is added breaks
 * nobody.
 */
interface Schema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly [bound: string]: unknown;
}

interface Parameter {
  readonly name: string;
  readonly in: string;
  readonly required: boolean;
  readonly schema: Schema;
}

interface Operation {
  readonly operationId: string;
  readonly parameters: readonly Parameter[];
  readonly responses: Readonly<
    Record<string, { readonly content: { readonly 'application/json': { readonly schema: Schema } } }>
  >;
}

export interface InterfaceDocument {
  readonly servers: readonly { readonly url: string }[];
  readonly paths: Readonly<Record<string, { readonly get?: Operation }>>;
  readonly components: { readonly schemas: Readonly<Record<string, Schema>> };
}

interface Two {
  readonly before: InterfaceDocument;
  readonly after: InterfaceDocument;
}

const typesOf = ({ type }: Schema): readonly string[] =>
  type === undefined ? [] : ([type].flat() as string[]);
const waysOf = (schema: Schema): readonly Schema[] | undefined => schema.anyOf ?? schema.oneOf;
const valuesOf = (schema: Schema): readonly unknown[] | undefined =>
  schema.const === undefined ? schema.enum : [schema.const];

const resolved = (document: InterfaceDocument, schema: Schema): Schema =>
  schema.$ref === undefined ? schema : document.components.schemas[schema.$ref.split('/').at(-1)!]!;

const fieldBreaks = (two: Two, place: string, before: Schema, after: Schema): readonly string[] =>
  Object.entries(before.properties ?? {}).flatMap(([name, schema]) => {
    const at = `${place}.${name}`;
    const found = after.properties?.[name];
    if (!found) return [`${at} is gone`];
    const isLoose = before.required?.includes(name) && !after.required?.includes(name);
    return [...(isLoose ? [`${at} may be left out now`] : []), ...answerBreaks(two, at, schema, found)];
  });

/** An answer may say no more than before. */
const answerBreaks = (two: Two, place: string, one: Schema, other: Schema): readonly string[] => {
  const before = resolved(two.before, one);
  const after = resolved(two.after, other);
  const known = waysOf(before);
  const ways = waysOf(after);
  if (known && !ways)
    return known.some((way) => answerBreaks(two, place, way, after).length === 0)
      ? []
      : [`${place} is another shape`];
  if (ways)
    return ways.some((way) =>
      (known ?? [before]).every((old) => answerBreaks(two, place, old, way).length > 0),
    )
      ? [`${place} has a shape that was not there`]
      : [];
  const types = typesOf(after).filter((type) => !typesOf(before).includes(type));
  const words = valuesOf(before);
  const isWider = words && (valuesOf(after) ?? [undefined]).some((word) => !words.includes(word));
  return [
    ...(types.length > 0 ? [`${place} may be ${types.join(', ')} now`] : []),
    ...(isWider ? [`${place} has a value that was not there`] : []),
    ...fieldBreaks(two, place, before, after),
    ...(before.items && after.items ? answerBreaks(two, `${place}[]`, before.items, after.items) : []),
  ];
};

const lower = ['maximum', 'maxLength'] as const;
const upper = ['minimum', 'minLength'] as const;
const bound = (schema: Schema, name: string, none: number): number =>
  (schema[name] as number | undefined) ?? none;

/** What is sent may be no narrower than before. */
const parameterBreaks = (
  place: string,
  before: Parameter,
  after: Parameter | undefined,
): readonly string[] => {
  if (!after || after.in !== before.in) return [`${place} is gone`];
  const [old, now] = [before.schema, after.schema];
  const isNarrower =
    typesOf(old).some((type) => !typesOf(now).includes(type)) ||
    (valuesOf(now) !== undefined &&
      (valuesOf(old) ?? [undefined]).some((word) => !valuesOf(now)!.includes(word))) ||
    lower.some((name) => bound(now, name, Infinity) < bound(old, name, Infinity)) ||
    upper.some((name) => bound(now, name, -Infinity) > bound(old, name, -Infinity));
  return [
    ...(isNarrower ? [`${place} takes less than before`] : []),
    ...(after.required && !before.required ? [`${place} must be sent now`] : []),
  ];
};

const schemaOfAnswer = ({ responses }: Operation): Schema =>
  responses['200']!.content['application/json'].schema;

const operationBreaks = (two: Two, path: string, before: Operation, after: Operation): readonly string[] => [
  ...before.parameters.flatMap((old) =>
    parameterBreaks(
      `${path}?${old.name}`,
      old,
      after.parameters.find(({ name }) => name === old.name),
    ),
  ),
  ...after.parameters
    .filter(({ name, required }) => required && !before.parameters.some((old) => old.name === name))
    .map(({ name }) => `${path}?${name} must be sent now`),
  ...answerBreaks(two, path, schemaOfAnswer(before), schemaOfAnswer(after)),
];

export const breaks = (before: InterfaceDocument, after: InterfaceDocument): readonly string[] => [
  ...(before.servers[0]!.url === after.servers[0]!.url ? [] : ['the root is another one']),
  ...Object.entries(before.paths).flatMap(([path, { get: old }]) => {
    const now = after.paths[path]?.get;
    if (!old) return [];
    return now ? operationBreaks({ before, after }, path, old, now) : [`${path} is gone`];
  }),
];
