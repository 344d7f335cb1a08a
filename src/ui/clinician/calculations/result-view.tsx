/** What a calculation answers: named figures with units, rounded for people; the unrounded ones a press away. */
import { unitWords } from '#api/inputs/unit-words.ts';
import type { ResultField } from '#core/calculations/calculation.ts';
import { say } from '#messages/en/staff/calculations.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { nameInWords } from '../forms/field-words.ts';

/** No instrument here gives more than three figures; a whole number loses none. */
const rounded = (value: number): number => {
  if (Number.isInteger(value)) return value;
  return Math.abs(value) >= 100 ? Math.round(value) : Number(value.toPrecision(3));
};

const inWords = (value: unknown, figure: (value: number) => number): string => {
  if (value === null || value === undefined) return 'none';
  if (typeof value === 'number') return String(figure(value));
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value))
    return value.length === 0 ? 'none' : value.map((one) => inWords(one, figure)).join(', ');
  if (typeof value === 'object')
    return Object.entries(value)
      .map(([name, inner]) => `${nameInWords(name).toLowerCase()} ${inWords(inner, figure)}`)
      .join('; ');
  return String(value);
};

interface ResultViewProps {
  readonly result: unknown;
  readonly fields: readonly ResultField[];
}

const rowsOf = ({ result, fields }: ResultViewProps, figure: (value: number) => number) => {
  const values =
    typeof result === 'object' && result !== null ? Object.entries(result) : [['result', result] as const];
  return values.map(([name, value]) => {
    const field = fields.find((one) => one.name === name);
    const unit = typeof value === 'number' ? unitWords(field?.unit ?? '') : '';
    return {
      key: name,
      name: field?.about ? `${nameInWords(name)}: ${field.about}` : nameInWords(name, field?.unit),
      value: `${inWords(value, figure)}${unit ? ` ${unit}` : ''}`,
    };
  });
};

export const ResultView = (props: ResultViewProps) => {
  const forPeople = rowsOf(props, rounded);
  const unrounded = rowsOf(props, (value) => value);
  const isRounded = unrounded.some(({ value }, place) => value !== forPeople[place]?.value);
  return (
    <>
      <DefinitionList rows={forPeople} />
      {isRounded ? (
        <Disclosure summary={say('unrounded')}>
          <DefinitionList rows={unrounded} />
        </Disclosure>
      ) : null}
    </>
  );
};
