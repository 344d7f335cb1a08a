/** The table cut from the definitions, held against those that another library carries. */
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { table } from '#exchange/fhir/definitions/table.ts';

interface Element {
  readonly _name: string;
  readonly _type?: string;
  readonly _multiple?: boolean;
  readonly _required?: boolean;
  /** Name of the element of several types it is one of. */
  readonly _choice?: string;
  readonly _properties?: readonly Element[];
}

const other: Readonly<Record<string, Element>> = createRequire(import.meta.url)('fhir/profiles/types.json');

const rowOf = (type: string, name: string) => {
  const elements = table.types[type] ?? {};
  const choice = Object.keys(elements).find(
    (one) => one.endsWith('[x]') && name.startsWith(one.slice(0, -3)),
  );
  return elements[name] ?? elements[choice ?? ''];
};

/** Elements of a type and of its parts that the two say differently; "compared" counts all. */
const differences = (type: string, elements: readonly Element[], compared: string[]): readonly string[] =>
  elements
    .filter(({ _name }) => !_name.startsWith('_'))
    .flatMap((element) => {
      const name = `${type}.${element._name}`;
      const row = rowOf(type, element._name);
      if (!row) return [`${name} is not in the table`];
      compared.push(name);
      const isNeeded = element._choice === undefined && element._required === true;
      const isAlike =
        (element._choice !== undefined || isNeeded === row.min > 0) &&
        (element._multiple === true) === row.many;
      const below =
        element._type === 'BackboneElement' ? differences(name, element._properties ?? [], compared) : [];
      return [...(isAlike ? [] : [name]), ...below];
    });

describe('the table of the standard', () => {
  it('has the elements of another copy of it, each as often and as needed as there', () => {
    const compared: string[] = [];
    const found = Object.entries(other).flatMap(([type, { _properties }]) =>
      table.types[type] && _properties ? differences(type, _properties, compared) : [],
    );
    expect(found).toEqual([]);
    expect(compared.length).toBeGreaterThan(1000);
  });
});
