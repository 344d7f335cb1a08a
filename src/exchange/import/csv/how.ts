/** How a CSV file is written. It is said by whoever takes it in: a guess that is wrong by one mark changes every figure. */

/** What each row of a file is. */
export const csvKinds = ['sessions', 'mornings', 'measurements'] as const;
export type CsvKind = (typeof csvKinds)[number];

export const separators = { comma: ',', semicolon: ';', tab: '\t' } as const;
export type Separator = keyof typeof separators;

export const encodings = ['utf-8', 'utf-16', 'windows-1252'] as const;
export type Encoding = (typeof encodings)[number];

export const dayForms = ['YYYY-MM-DD', 'DD.MM.YYYY', 'DD/MM/YYYY', 'MM/DD/YYYY'] as const;
export type DayForm = (typeof dayForms)[number];

export const decimals = { point: '.', comma: ',' } as const;
export type Decimal = keyof typeof decimals;

export interface Marks {
  readonly separator: Separator;
  readonly encoding: Encoding;
  readonly days: DayForm;
  readonly decimal: Decimal;
}
