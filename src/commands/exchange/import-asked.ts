/** What the import command is asked for, read from its arguments. */
import { existsSync, statSync } from 'node:fs';
import { importFormats } from '#core/record/imported.ts';
import {
  csvKinds,
  type Decimal,
  dayForms,
  decimals,
  encodings,
  type Separator,
  separators,
} from '#exchange/import/csv/how.ts';
import type { Asked } from '#exchange/import/prepare.ts';
import { type QuestionId, questionIds } from '#exchange/import/questions.ts';
import { CannotGoOn } from '../say.mjs';
import { argumentsOf, flagOption, textOption } from './arguments.ts';

const separatorNames = Object.keys(separators) as Separator[];
const decimalNames = Object.keys(decimals) as Decimal[];

/** Named in place of a person's id: the one whom the file is about is added. */
export const newPerson = 'new';

export const usage = `Usage: DATABASE_FILE=… npm run --silent import -- --patient ID --format csv --kind ${csvKinds.join('|')} --from FILE [--dry-run]
or: … -- --patient ID --format fhir --from FILE [--lines] [--dry-run]
or, to take one back: … -- --patient ID --undo IMPORT --reason "…"

ID is a person's id; in a file of the demo clinic it is the story's name, such as steady-progress. With FHIR, ${newPerson} adds the Patient of the file.
csv   --separator ${separatorNames.join('|')} (comma)      --encoding ${encodings.join('|')} (utf-8)
      --days ${dayForms.join('|')} (YYYY-MM-DD)
      --decimal ${decimalNames.join('|')} (point)
      --map "day=Datum, pain=Schmerz": which heading holds what. Headings that are often used are found and
      shown; they count once they are said.
      --leave-out-faulty takes the rest where some rows cannot be taken
fhir  a Bundle (R4), or with --lines one resource a line. Weight, height, blood pressure, pain, grip and the text of
      conditions are taken; everything else is named with the reason.

--dry-run reads the file through and takes nothing. --confirm ID,ID answers what is asked: ${questionIds.join(', ')}.
What is taken is marked as imported: no rule reads it, and it begins no decision, dose or warning sign.
Ends with 0 when all was taken (or, in a dry run, could be), 1 when nothing was taken, 2 when the command was called
in a wrong way.`;

export interface Run {
  readonly patientId: string;
  readonly asked: Asked;
  readonly from: string;
  readonly isDry: boolean;
  readonly confirmed: readonly QuestionId[];
  readonly leavesOutFaulty: boolean;
}

export interface Undo {
  readonly patientId: string;
  readonly undo: string;
  readonly reason: string;
}

const { values: valuesOf, oneOf } = argumentsOf(usage);

const [text, flag] = [textOption, flagOption];
const options = {
  ...{ patient: text, format: text, kind: text, from: text, separator: text, encoding: text, days: text },
  ...{ decimal: text, map: text, confirm: text, undo: text, reason: text },
  ...{ lines: flag, 'dry-run': flag, 'leave-out-faulty': flag, help: flag },
};

const valuesIn = (args: readonly string[]) => valuesOf(args, options);

const needed = (name: string, given: string | undefined): string => {
  if (given?.trim()) return given;
  throw new CannotGoOn(`Missing: --${name}.\n${usage}`, 2);
};

type Values = ReturnType<typeof valuesIn>;

const askedIn = (given: Values): Asked => {
  const format = oneOf('format', importFormats, given.format);
  if (format === 'fhir') return { format, isLines: given.lines === true };
  return {
    format,
    kind: oneOf('kind', csvKinds, given.kind),
    separator: oneOf('separator', separatorNames, given.separator ?? 'comma'),
    encoding: oneOf('encoding', encodings, given.encoding ?? 'utf-8'),
    days: oneOf('days', dayForms, given.days ?? 'YYYY-MM-DD'),
    decimal: oneOf('decimal', decimalNames, given.decimal ?? 'point'),
    map: given.map ?? '',
  };
};

/** null asks for help. */
export const runIn = (args: readonly string[]): Run | Undo | null => {
  const given = valuesIn(args);
  if (given.help) return null;
  const patientId = needed('patient', given.patient);
  if (given.undo !== undefined)
    return { patientId, undo: needed('undo', given.undo), reason: needed('reason', given.reason) };
  const from = needed('from', given.from);
  if (!existsSync(from) || !statSync(from).isFile()) throw new CannotGoOn(`There is no file ${from}.`, 2);
  const confirmed = (given.confirm ?? '').split(',').filter((one) => one.trim() !== '');
  return {
    ...{ patientId, asked: askedIn(given), from, isDry: given['dry-run'] === true },
    confirmed: confirmed.map((one) => oneOf('confirm', questionIds, one.trim())),
    leavesOutFaulty: given['leave-out-faulty'] === true,
  };
};
