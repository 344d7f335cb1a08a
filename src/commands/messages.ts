/**
 * Prints every sentence a patient may read, and in English those of the staff screens (area "staff"), one JSON
 * line a distinct text: area, keys, language, text, and who approved the wording. A sentence with cases has a
 * line for each, its key ending in "/one" or "/knee".
 */
import { joints } from '#core/exercises/joints.ts';
import { everyLanguage, type SpokenLanguage } from '#messages/every-language.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { everyRow, type SentenceRow, staffRows } from '#messages/sentence-rows.ts';
import { translate, type Values } from '#messages/translate.ts';

const usage = 'Usage: npm run messages -- [--language TAG] [--slots filled]\n';

/** Values to read a sentence aloud with; a slot not named here takes a number. */
const examples: Readonly<Record<string, readonly string[]>> = {
  joint: ['left-knee', 'right-hand', 'neck'],
  limb: ['left-arm', 'right-leg'],
  day: ['2026-02-03'],
  author: ['Ines Roth'],
  name: ['Ines Roth'],
  clinic: ['Ward Street'],
  phone: ['0711 55'],
  number: ['112'],
  exercise: ['A'],
  things: ['A; B'],
  changes: ['A; B'],
  days: ['A'],
  first: ['A'],
  last: ['B'],
  hours: ['8:30–18:30'],
  dose: ['A; B'],
  swelling: ['A'],
  address: ['clinic.example/join'],
  browser: ['Firefox'],
  emergency: ['112'],
  urgent: ['116 117'],
  kind: ['A'],
  passphrase: ['A'],
  question: ['A'],
  scheme: ['30, 15, 15'],
  side: ['left', 'right'],
  since: ['3 Feb'],
  system: ['Android'],
  time: ['18:42'],
  title: ['A'],
  titles: ['A, B'],
  used: ['4 Feb'],
  weight: ['4 kg'],
  where: ['arm', 'leg'],
  which: ['left', 'right', 'both'],
  who: ['Ines Roth'],
};
const numbers = [1, 3] as const;

const slotNames = (text: string): readonly string[] =>
  [...text.matchAll(/\{([a-z-]+)(?::[a-z-]+)?\}/g)].map(([, name = '']) => name);

/** Where a sentence has a case for a joint, every joint is tried; else a few are enough to hear the grammar. */
const examplesOf = (name: string, { of, sentence }: SentenceRow): readonly (string | number)[] =>
  name === 'joint' && of !== null && typeof sentence !== 'string' && sentence.by === 'joint'
    ? joints
    : (examples[name] ?? numbers);

/** The text with its slots filled in, at most three times, with values that fall into its case. */
const filled = (row: SentenceRow, language: SpokenLanguage): readonly string[] => {
  const by = typeof row.sentence === 'string' ? [] : [row.sentence.by];
  const names = [...new Set([...by, ...slotNames(row.text)])];
  const lists = names.map((name) => [name, examplesOf(name, row)] as const);
  const most = Math.max(1, ...lists.map(([, list]) => list.length));
  const turns = Array.from(
    { length: most },
    (_, turn): Values => Object.fromEntries(lists.map(([name, list]) => [name, list[turn % list.length]!])),
  );
  const texts = turns
    .filter((values) => translate(row.sentence, values, language) === translate(row.text, values, language))
    .map((values) => translate(row.text, values, language));
  return texts.slice(0, 3);
};

interface Line {
  readonly area: string;
  readonly keys: readonly string[];
  readonly language: LanguageTag;
  readonly text: string;
  /** Name of the clinician who approved the wording; null until someone has. */
  readonly reviewer: string | null;
}

const keyOf = ({ key, of }: SentenceRow): string => (of === null ? key : `${key}/${of}`);

/** One line a distinct text of an area, in the order of its first key. */
export const messageLines = (tag: LanguageTag, isFilled: boolean): readonly Line[] => {
  const language = everyLanguage[tag];
  const keys = new Map<string, string[]>();
  const lines: Line[] = [];
  const ofStaff = tag === 'en' ? staffRows : [];
  for (const row of [...everyRow(language), ...ofStaff]) {
    for (const text of isFilled ? filled(row, language) : [row.text]) {
      const found = keys.get(`${row.area} ${text}`);
      if (found) found.push(keyOf(row));
      else {
        const own = [keyOf(row)];
        keys.set(`${row.area} ${text}`, own);
        lines.push({ area: row.area, keys: own, language: tag, text, reviewer: null });
      }
    }
  }
  return lines;
};

interface Asked {
  readonly tags: readonly LanguageTag[];
  readonly isFilled: boolean;
}

const asked = (args: readonly string[]): Asked | null => {
  let [tags, isFilled]: [readonly LanguageTag[], boolean] = [languages.map(({ tag }) => tag), false];
  for (let place = 0; place < args.length; place += 2) {
    const [name, value] = args.slice(place, place + 2);
    const tag = languages.find((language) => language.tag === value)?.tag;
    if (name === '--language' && tag) tags = [tag];
    else if (name === '--slots' && value === 'filled') isFilled = true;
    else return null;
  }
  return { tags, isFilled };
};

export const run = async (args: readonly string[]): Promise<number> => {
  const what = asked(args);
  if (what === null) {
    process.stderr.write(usage);
    return 2;
  }
  for (const tag of what.tags) {
    for (const line of messageLines(tag, what.isFilled)) process.stdout.write(`${JSON.stringify(line)}\n`);
  }
  return 0;
};
