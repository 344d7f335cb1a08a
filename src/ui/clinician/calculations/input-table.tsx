/** Inputs of a calculation with units and bounds, nested ones under their parent. */
import { unitWords } from '#api/inputs/unit-words.ts';
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/calculations.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { nameInWords, optionInWords } from '../forms/field-words.ts';

const kindInWords = (field: Field): string => {
  switch (field.kind) {
    case 'number':
      return 'number';
    case 'integer':
      return say('whole-number');
    case 'enum':
      return say('one-of', {
        values: field.values.map((value) => optionInWords(value).toLowerCase()).join(', '),
      });
    case 'text':
      return 'text';
    case 'day':
      return say('day');
    case 'date-time':
      return say('day-and-time');
    case 'flag':
      return say('yes-or-no');
    case 'list':
      return say('list', { of: kindInWords(field.of) });
    case 'record':
      return say('several-below');
  }
};

const boundsInWords = (field: Field): string => {
  const bounded = field.kind === 'list' ? field.of : field;
  if (bounded.kind !== 'number' && bounded.kind !== 'integer') return '';
  const { min, max, exclusiveMin, unit } = bounded;
  const low = min === undefined ? '' : exclusiveMin ? say('over', { min }) : say('from', { min });
  const high = max === undefined ? '' : say('to', { max });
  return [low, high, low || high ? unitWords(unit) : ''].filter(Boolean).join(' ');
};

const neededInWords = (field: Field): string =>
  field.optional ? say('may-be-left-out') : field.nullable ? say('may-be-not-answered') : 'needed';

const flat = (
  fields: readonly Field[],
  path = '',
): readonly { readonly path: string; readonly field: Field }[] =>
  fields.flatMap((field) => {
    const inner =
      field.kind === 'record'
        ? field.fields
        : field.kind === 'list' && field.of.kind === 'record'
          ? field.of.fields
          : [];
    return [{ path: `${path}${field.name}`, field }, ...flat(inner, `${path}${field.name} › `)];
  });

export const InputTable = ({ fields }: { readonly fields: readonly Field[] }) => (
  <DataTable
    caption="Inputs"
    columns={[
      { key: 'name', title: 'Input' },
      { key: 'kind', title: 'Kind' },
      { key: 'bounds', title: 'Bounds' },
      { key: 'needed', title: 'Needed' },
    ]}
    rows={flat(fields).map(({ path, field }) => ({
      key: path,
      cells: [
        path
          .split(' › ')
          .map((name) => nameInWords(name))
          .join(' › '),
        `${kindInWords(field)}${field.about ? `. ${field.about}` : ''}`,
        boundsInWords(field),
        neededInWords(field),
      ],
    }))}
  />
);
