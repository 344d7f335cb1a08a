/** Every sentence of a language as rows, for whoever reads them all: a clinic, a test. */
import { staff } from './en/staff.ts';
import type { Language } from './language.ts';
import type { Sentence } from './sentence.ts';

export interface SentenceRow {
  readonly area: string;
  readonly key: string;
  /** The case it is said in, "one" or "knee"; null where the sentence has no cases. */
  readonly of: string | null;
  readonly text: string;
  /** All its cases, of which this row is one. */
  readonly sentence: Sentence;
}

type Keyed = readonly [key: string, sentence: Sentence];

const rowsOfSentence = (area: string, [key, sentence]: Keyed): readonly SentenceRow[] =>
  typeof sentence === 'string'
    ? [{ area, key, of: null, text: sentence, sentence }]
    : Object.entries(sentence)
        .filter(([of]) => of !== 'by')
        .map(([of, text]) => ({ area, key, of, text, sentence }));

const keyedOf = ({ exercises, ...areas }: Language['sentences']): readonly [string, readonly Keyed[]][] => [
  [
    'exercises',
    Object.entries(exercises).flatMap(([id, { name, steps }]) => [
      [`${id}.name`, name] as const,
      ...steps.map((step, place) => [`${id}.step-${place + 1}`, step] as const),
    ]),
  ],
  ...Object.entries(areas).map(([area, all]): [string, readonly Keyed[]] => [area, Object.entries(all)]),
];

/** Words of the pages themselves. */
const pageRows = ({ pages }: Language): readonly SentenceRow[] =>
  Object.entries(pages).flatMap((one) => rowsOfSentence('pages', one));

/** What the core and the server have to say. */
export const sentenceRows = ({ sentences }: Language): readonly SentenceRow[] =>
  keyedOf(sentences).flatMap(([area, all]) => all.flatMap((one) => rowsOfSentence(area, one)));

/** What staff screens say, in English alone. */
export const staffRows: readonly SentenceRow[] = Object.entries(staff).flatMap(([place, words]) =>
  Object.entries(words).flatMap(([key, sentence]) => rowsOfSentence('staff', [`${place}.${key}`, sentence])),
);

/** What a patient may read. */
export const everyRow = (language: Language): readonly SentenceRow[] => [
  ...sentenceRows(language),
  ...pageRows(language),
];
