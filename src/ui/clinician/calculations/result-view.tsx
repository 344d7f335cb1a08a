/** What a calculation answers: named figures with units, nested ones as they are nested. */
import { unitWords } from '#api/inputs/unit-words.ts';
import type { ResultField } from '#core/calculations/calculation.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { nameInWords } from '../forms/field-words.ts';

/** Six significant figures are more than any instrument here gives. */
const shown = (value: number): string => String(Number(value.toPrecision(6)));

const resultInWords = (value: unknown): string => {
  if (value === null || value === undefined) return 'none';
  if (typeof value === 'number') return shown(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map(resultInWords).join(', ');
  if (typeof value === 'object')
    return Object.entries(value)
      .map(([name, inner]) => `${nameInWords(name).toLowerCase()} ${resultInWords(inner)}`)
      .join('; ');
  return String(value);
};

export const ResultView = (props: { readonly result: unknown; readonly fields: readonly ResultField[] }) => {
  const values =
    typeof props.result === 'object' && props.result !== null
      ? Object.entries(props.result)
      : [['result', props.result] as const];
  return (
    <DefinitionList
      rows={values.map(([name, value]) => {
        const field = props.fields.find((one) => one.name === name);
        const unit = typeof value === 'number' ? unitWords(field?.unit ?? '') : '';
        return {
          key: name,
          name: field?.about ? `${nameInWords(name)}: ${field.about}` : nameInWords(name, field?.unit),
          value: `${resultInWords(value)}${unit ? ` ${unit}` : ''}`,
        };
      })}
    />
  );
};
