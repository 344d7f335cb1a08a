/**
 * Makes one paper as a file: the same that the clinic's desk and the phone give; with `--everybody` the plan of each
 * person who has one, for hours without the server. For whoever runs the server; that it was made stands in the
 * audit as an opening of the record.
 */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { dischargePaperFor, selfManagementPaperFor } from '#api/papers/end-of-care-papers.ts';
import { flareNotePaperFor } from '#api/papers/flare-note-paper.ts';
import { handoverPaperFor } from '#api/papers/handover-paper.ts';
import { letterPaperFor } from '#api/papers/letter-paper.ts';
import { mostWeeks, planPaperFor } from '#api/papers/plan-paper.ts';
import { recordPaperFor } from '#api/papers/record-paper.ts';
import type { Access } from '#data/access.ts';
import { flushReads, noteRead } from '#data/audit/audit.ts';
import { type Patient, patientOf, peopleOf } from '#data/patients/people.ts';
import { languages } from '#messages/languages.ts';
import { flareNoteSheet } from '#papers/flare-note/flare-note-sheet.ts';
import { handoverSheet } from '#papers/handover/handover-sheet.ts';
import { type PaperKind, paperKinds } from '#papers/kinds.ts';
import { printLetter } from '#papers/letter/print-letter.ts';
import { type Look, paperSizes } from '#papers/look.ts';
import { printPlan } from '#papers/plan/print-plan.ts';
import { recordSheet } from '#papers/record/record-sheet.ts';
import { printSheet } from '#papers/sheet/print-sheet.ts';
import type { Typeset } from '#papers/typesetting/typeset.ts';
import { accessesOf, onFileOfToday, patientIn } from '#server/command-access.ts';
import type { Runtime } from '#server/runtime.ts';
import { argumentsOf } from './exchange/arguments.ts';
import { CannotGoOn, say } from './say.mjs';

const tags = languages.map(({ tag }) => tag);

const usage = `Usage: DATABASE_FILE=… npm run --silent document -- --patient ID --kind ${paperKinds.join('|')} --paper ${paperSizes.join('|')} --language ${tags.join('|')} [--large] [--weeks N] --out FILE
or, the plans of all on paper: … -- --everybody --paper … --language … [--large] [--weeks N] --out FOLDER`;

interface Asked extends Omit<Look, 'printedOn'> {
  /** Null asks for everybody. */
  readonly patientId: string | null;
  readonly kind: PaperKind;
  readonly weeks: number;
  readonly out: string;
}

const { oneOf } = argumentsOf(usage);

const needed = (name: string, given: string | undefined): string => {
  if (given) return given;
  throw new CannotGoOn(`Missing: --${name}. ${usage}`, 2);
};

const weeksIn = (given: string | undefined): number => {
  const weeks = Number(given ?? '1');
  if (Number.isInteger(weeks) && weeks >= 1 && weeks <= mostWeeks) return weeks;
  throw new CannotGoOn(`--weeks is a whole number from 1 to ${mostWeeks}.`, 2);
};

const valuesIn = (args: readonly string[]) => {
  const text = { type: 'string' } as const;
  const options = { patient: text, kind: text, paper: text, language: text, weeks: text, out: text };
  try {
    const flag = { type: 'boolean' } as const;
    return parseArgs({ args: [...args], options: { ...options, large: flag, everybody: flag } }).values;
  } catch {
    throw new CannotGoOn(usage, 2);
  }
};

const askedIn = (args: readonly string[]): Asked => {
  const given = valuesIn(args);
  const isAll = given.everybody === true;
  if (isAll && (given.patient ?? given.kind)) throw new CannotGoOn(usage, 2);
  return {
    kind: isAll ? 'plan' : oneOf('kind', paperKinds, given.kind),
    patientId: isAll ? null : needed('patient', given.patient),
    paper: oneOf('paper', paperSizes, given.paper),
    language: oneOf('language', tags, given.language),
    isLarge: given.large === true,
    weeks: weeksIn(given.weeks),
    out: needed('out', given.out),
  };
};

const make: Readonly<
  Record<PaperKind, (access: Access, patient: Patient, look: Look, asked: Asked) => Promise<Typeset>>
> = {
  plan: async (access, patient, look, { weeks }) =>
    printPlan(await planPaperFor(access, patient, weeks), look),
  letter: async (access, patient, look) => printLetter(await letterPaperFor(access, patient), look),
  discharge: async (access, patient, look) =>
    printSheet(await dischargePaperFor(access, patient, null, look.language), look),
  'self-management': async (access, patient, look) =>
    printSheet(await selfManagementPaperFor(access, patient, null, look.language), look),
  'flare-note': async (access, patient, look) =>
    printSheet(flareNoteSheet(await flareNotePaperFor(access, patient), look), look),
  record: async (access, patient, look) =>
    printSheet(recordSheet(await recordPaperFor(access, patient), look), look),
  handover: async (access, patient, look) =>
    printSheet(handoverSheet(await handoverPaperFor(access, patient), look), look),
};

const lookOf = ({ paper, language, isLarge }: Asked, { day }: Access): Look => ({
  ...{ paper, language, isLarge, printedOn: day },
});

const makeOne = async (at: Runtime, patientId: string, asked: Asked): Promise<void> => {
  const { access, patient } = await patientIn(at, 'document', patientId);
  const made = await make[asked.kind](access, patient, lookOf(asked, access), asked);
  noteRead(access, { subject: `document.${asked.kind}`, patientId: patient.id });
  await flushReads(at.store);
  writeFileSync(asked.out, made.pdf);
  if (made.unprintable.length > 0)
    say(`characters that cannot be printed stand as a mark: ${made.unprintable.join(', ')}`);
  console.log(`${asked.out} ${made.pages} ${made.pages === 1 ? 'page' : 'pages'}`);
};

/** A plan each, and a list by which somebody is found: the files are named by numbers and not by people. */
const makeAll = async (at: Runtime, asked: Asked): Promise<void> => {
  const list: string[] = [];
  for (const access of await accessesOf(at, 'document')) {
    for (const { id } of await peopleOf(access)) {
      const patient = await patientOf(access, id);
      const plan = patient && (await planPaperFor(access, patient, asked.weeks));
      if (!plan || plan.exercises.length === 0) continue;
      const made = await printPlan(plan, lookOf(asked, access));
      noteRead(access, { subject: 'document.plan', patientId: id });
      const name = `${String(list.length + 1).padStart(4, '0')}.pdf`;
      writeFileSync(path.join(asked.out, name), made.pdf);
      list.push(`${patient.familyName}, ${patient.givenName}, born ${patient.birthDay}: ${name}`);
    }
  }
  await flushReads(at.store);
  writeFileSync(path.join(asked.out, 'people.txt'), `${list.sort().join('\n')}\n`);
  console.log(`${asked.out} ${list.length} ${list.length === 1 ? 'plan' : 'plans'}`);
};

/** Only into a folder of its own: an older plan beside a newer one would be taken for it. */
const makeFolder = (folder: string): void => {
  if (existsSync(folder)) {
    throw new CannotGoOn(`${folder} is there already. Name a folder that is not there yet.`, 2);
  }
  mkdirSync(folder, { recursive: true, mode: 0o700 });
};

export const run = async (args: readonly string[]): Promise<number> => {
  const asked = askedIn(args);
  return onFileOfToday(async (at) => {
    if (asked.patientId === null) {
      makeFolder(asked.out);
      await makeAll(at, asked);
    } else await makeOne(at, asked.patientId, asked);
    return 0;
  });
};
