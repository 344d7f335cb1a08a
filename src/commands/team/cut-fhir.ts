/**
 * Cuts the table that exports are checked by out of the official FHIR R4 (4.0.1) definitions: of each type that is
 * written, every element with its cardinality, types, targets and required codes. Run once; the standard no longer
 * changes. `--from` is a folder with profiles-types.json, profiles-resources.json, valuesets.json and
 * v3-codesystems.json as the standard publishes them.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { type ElementRule, resourceTypes, type Table } from '#exchange/fhir/definitions/table.ts';
import { inRoot } from '../paths.mjs';
import { CannotGoOn } from '../say.mjs';

const usage = 'Usage: npm run --silent cut-fhir -- --from FOLDER';

// biome-ignore lint/suspicious/noExplicitAny: definitions are read as the standard wrote them.
type Any = any;

const resourcesIn = (folder: string, file: string): readonly Any[] =>
  JSON.parse(readFileSync(path.join(folder, file), 'utf8')).entry.map(
    ({ resource }: { resource: Any }) => resource,
  );

const fhirType = 'http://hl7.org/fhir/StructureDefinition/structuredefinition-fhir-type';
const regex = 'http://hl7.org/fhir/StructureDefinition/regex';
const profileOf = 'http://hl7.org/fhir/StructureDefinition/';

const ownType = ({ extension, code }: Any): string =>
  extension?.find(({ url }: Any) => url === fhirType)?.valueUrl ?? code;

/** Codes of a value set, where they can be listed: whole systems, listed concepts and other sets. */
const codesOf = (known: ReadonlyMap<string, Any>, url: string): readonly string[] | null => {
  const conceptsIn = (concepts: readonly Any[]): string[] =>
    concepts.flatMap(({ code, concept }) => [code, ...conceptsIn(concept ?? [])]);
  const all: string[] = [];
  for (const part of known.get(url)?.compose?.include ?? []) {
    const sets = (part.valueSet ?? []).map((one: string) => codesOf(known, one.split('|')[0]!));
    const system = known.get(part.system);
    const listed = part.concept ?? (part.filter ? undefined : system?.concept);
    if (sets.includes(null) || (sets.length === 0 && !listed)) return null;
    all.push(...sets.flat(), ...conceptsIn(listed ?? []));
  }
  return all.length > 0 ? [...new Set(all)].sort() : null;
};

const ruleOf = (element: Any, isParent: boolean): ElementRule => {
  const types: readonly Any[] = element.type ?? [];
  const targets = types
    .flatMap(({ targetProfile }) => targetProfile ?? [])
    // Who hands the definitions on may have added resources of their own.
    .filter((one: string) => one.startsWith(profileOf))
    .map((one: string) => one.replace(profileOf, ''));
  const binding =
    element.binding?.strength === 'required' ? element.binding.valueSet?.split('|')[0] : undefined;
  return {
    min: element.min,
    many: element.max !== '1',
    types: element.contentReference
      ? [element.contentReference.slice(1)]
      : isParent
        ? [element.path]
        : types.map(ownType),
    ...(targets.length > 0 && !targets.includes('Resource') ? { targets } : {}),
    ...(binding ? { codes: binding } : {}),
  };
};

/** The elements of one definition, under the path of the part they belong to. */
const partsOf = (definition: Any): Record<string, Record<string, ElementRule>> => {
  const elements: readonly Any[] = definition.snapshot.element;
  const parents = new Set(elements.map(({ path: at }) => at.slice(0, at.lastIndexOf('.'))));
  const parts: Record<string, Record<string, ElementRule>> = {};
  for (const element of elements.slice(1)) {
    const at = element.path.lastIndexOf('.');
    const [parent, name] = [element.path.slice(0, at), element.path.slice(at + 1)];
    if (element.max === '0') continue;
    parts[parent] = { ...parts[parent], [name]: ruleOf(element, parents.has(element.path)) };
  }
  return parts;
};

const patternOf = (definition: Any): string | undefined => {
  const value = definition.snapshot.element.find(({ path: at }: Any) => at === `${definition.id}.value`);
  return value?.type?.[0]?.extension?.find(({ url }: Any) => url === regex)?.valueString;
};

const cut = (folder: string): Table => {
  const definitions = new Map<string, Any>(
    [...resourcesIn(folder, 'profiles-types.json'), ...resourcesIn(folder, 'profiles-resources.json')]
      .filter(({ resourceType }) => resourceType === 'StructureDefinition')
      .map((one) => [one.id, one]),
  );
  const terms = new Map<string, Any>(
    [...resourcesIn(folder, 'valuesets.json'), ...resourcesIn(folder, 'v3-codesystems.json')].map((one) => [
      one.url,
      one,
    ]),
  );
  const table: Table = { types: {}, primitives: {}, codes: {} };
  const take = (type: string): void => {
    const definition = definitions.get(type);
    if (!definition || table.types[type] || type in table.primitives) return;
    if (definition.kind === 'primitive-type') {
      table.primitives[type] = patternOf(definition) ?? '';
      return;
    }
    const parts = partsOf(definition);
    Object.assign(table.types, parts);
    const rules = Object.values(parts).flatMap((part) => Object.values(part));
    for (const { codes } of rules) {
      const listed = codes && !table.codes[codes] ? codesOf(terms, codes) : null;
      if (codes && listed) table.codes[codes] = listed;
    }
    for (const { types } of rules) types.forEach(take);
  };
  for (const type of resourceTypes) take(type);
  return table;
};

export const run = async (args: readonly string[]): Promise<number> => {
  const { from } = parseArgs({ args: [...args], options: { from: { type: 'string' } } }).values;
  if (!from) throw new CannotGoOn(usage, 2);
  const table = cut(from);
  const file = inRoot('src', 'exchange', 'fhir', 'definitions', 'r4.json');
  // A line for each type, so that a change is read as one.
  const lines = Object.entries(table).map(([part, rows]) => {
    const inner = Object.entries(rows).map(
      ([key, row]) => `  ${JSON.stringify(key)}: ${JSON.stringify(row)}`,
    );
    return ` ${JSON.stringify(part)}: {\n${inner.join(',\n')}\n }`;
  });
  writeFileSync(file, `{\n${lines.join(',\n')}\n}\n`);
  console.log(
    `${file}: ${Object.keys(table.types).length} types, ${Object.keys(table.primitives).length} primitives`,
  );
  return 0;
};
