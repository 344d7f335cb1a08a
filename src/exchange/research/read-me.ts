/** What stands beside the files: every column, what was done, what was left out and what is not protected against. */
import { csvLines } from '../csv/cells.ts';
import { fewestAlike } from './classes.ts';
import { researchColumns } from './columns.ts';
import type { Left } from './facts.ts';
import { droppedFor } from './treatments.ts';

export const researchDictionary = (): string =>
  csvLines([
    ['file', 'column', 'what it says', 'made from'],
    ...researchColumns.map(({ file, column, says, from }) => [file, column, says, from.join(' ')]),
  ]);

const leftWords: Readonly<Record<Left, string>> = {
  refused: 'refused or withdrew consent to keeping the record, telling others or handing over a file',
  merged: 'a record merged into another one',
  'no course': 'no care profile, or no session',
};

interface Told {
  readonly told: number;
  readonly alone: number;
  readonly left: readonly Left[];
  readonly files: readonly {
    readonly file: string;
    readonly rows: readonly unknown[];
    readonly leftOut: number;
  }[];
}

export const readMeOf = ({ told, alone, left, files }: Told): string => `A clinic for research, without names.

People: ${told}. Left out:
- alone even in the widest class: ${alone}
${Object.entries(leftWords)
  .map(([why, words]) => `- ${words}: ${left.filter((one) => one === why).length}`)
  .join('\n')}

${files.map(({ file, rows, leftOut }) => `${file}.csv: ${rows.length} rows; left out because too few share them: ${leftOut}`).join('\n')}

dictionary.csv explains every column of these files; treatments.csv says of every column of the record what became of it.

What was done
- Everybody stands in a class of sex, age band, joint and diagnosis with at least ${fewestAlike} people. Where fewer
  were alike, the age band was made wider, then the diagnosis, then the joint; at last the sex was withheld, and then
  the age.
- In people.csv each course that is told is that of half of the class or more, and of ${fewestAlike} people or more;
  else it reads "withheld". Ages are told in bands and at most as 90 or over.
- All days of a person moved by one number of whole weeks, drawn for this export under a key that is written nowhere.
  The first week may lie anywhere in ten years and says nothing of when it was. Other days are told as a part of the
  course, since the days between sessions alone tell nearly everybody apart.
- Rows of the other files have no person: those of one person cannot be put together. Each stands only where
  ${fewestAlike} people or more of its class have the same one; else its last columns are withheld.
- Loads and figures are told against the person’s own first, never in kilograms.
- Entries marked as entered in error, and those a later one replaced, are not counted.
Left out for everybody:
${Object.values(droppedFor)
  .map((what) => `- ${what}`)
  .join('\n')}
Empty means not answered, not asked or not known, never zero; "withheld" means answered or not, and not told.

What it does not protect against
- Whoever knows that somebody is in these files learns what the whole class shares, for example that nobody’s pain was
  lower at the end.
- Whoever holds the full record still finds somebody by guessing within the class: one time in ${fewestAlike} in the
  smallest, and up to twice as often with the course and the answers.
- Two exports of one clinic compared: somebody who came between them may stand out by what changed. Hand on one.
- Nobody was asked about research: only consents that the record keeps were looked at. Whether this may be handed on
  is for the clinic, and where the law asks for it an ethics committee, to say.
`;
