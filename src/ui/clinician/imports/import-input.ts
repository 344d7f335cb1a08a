/** What the page asks of a file and sends with it. */
import { csvKinds, type Decimal, dayForms, encodings, type Separator } from '#exchange/import/csv/how.ts';
import type { QuestionId } from '#exchange/import/questions.ts';
import { say } from '#messages/en/staff/exchange/imports.ts';

const separators: readonly Separator[] = ['comma', 'semicolon', 'tab'];
const decimals: readonly Decimal[] = ['point', 'comma'];

/** Of a table alone; each is said, none is chosen beforehand. */
export const marks = [
  { name: 'kind', options: csvKinds.map((value) => ({ value, label: say(`kind.${value}`) })) },
  { name: 'separator', options: separators.map((value) => ({ value, label: say(`separator.${value}`) })) },
  { name: 'encoding', options: encodings.map((value) => ({ value, label: say(`encoding.${value}`) })) },
  { name: 'days', options: dayForms.map((value) => ({ value, label: value })) },
  { name: 'decimal', options: decimals.map((value) => ({ value, label: say(`decimal.${value}`) })) },
] as const;

type MarkName = (typeof marks)[number]['name'];

export const formats = [
  { value: 'csv', label: say('format.csv') },
  { value: 'fhir', label: say('format.fhir') },
  { value: 'lines', label: say('format.lines') },
] as const;
export type FormatChoice = (typeof formats)[number]['value'] | '';

export interface Typed {
  readonly file: { readonly name: string; readonly base64: string } | null;
  readonly format: FormatChoice;
  readonly marks: Readonly<Partial<Record<MarkName, string>>>;
  readonly map: string;
}

export const nothingTyped: Typed = { file: null, format: '', marks: {}, map: '' };

export interface Problem {
  readonly field: string;
  readonly text: string;
}

export const missingIn = ({ file, format, marks: chosen }: Typed): readonly Problem[] => [
  ...(file ? [] : [{ field: 'file', text: say('choose-a-file') }]),
  ...(format === '' ? [{ field: 'format', text: say('choose-each') }] : []),
  ...(format === 'csv'
    ? marks.filter(({ name }) => !chosen[name]).map(({ name }) => ({ field: name, text: say('choose-each') }))
    : []),
];

/** Of FHIR the marks of a table mean nothing; the procedure takes one shape. */
const unused = {
  kind: 'mornings',
  separator: 'comma',
  encoding: 'utf-8',
  days: 'YYYY-MM-DD',
  decimal: 'point',
};

export const inputOf = (
  patientId: string,
  { file, format, marks: chosen, map }: Typed,
  answers: { readonly confirmed: readonly QuestionId[]; readonly leavesOutFaulty: boolean },
) => ({
  ...{ patientId, ...file, format: format === 'csv' ? 'csv' : 'fhir', isLines: format === 'lines', map },
  ...{ ...unused, ...(format === 'csv' ? chosen : {}) },
  ...answers,
});

/** What base64 of them still fits the procedure. */
export const mostBytes = 150_000;

export const base64Of = (bytes: Uint8Array): string => {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
};
