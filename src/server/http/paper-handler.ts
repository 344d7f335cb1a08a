/** A paper as a file: asked for by an address, made from what the procedures give the person who asks. */
import { z } from 'zod';
import type { Person } from '#api/person.ts';
import { createCaller } from '#api/root.ts';
import { languages } from '#messages/languages.ts';
import { flareNoteSheet } from '#papers/flare-note/flare-note-sheet.ts';
import { handoverSheet } from '#papers/handover/handover-sheet.ts';
import { type PaperKind, paperKinds } from '#papers/kinds.ts';
import { letterFileName, printLetter, printWords } from '#papers/letter/print-letter.ts';
import { type Look, paperSizes } from '#papers/look.ts';
import { planFileName, printPlan } from '#papers/plan/print-plan.ts';
import { recordFileName, recordSheet } from '#papers/record/record-sheet.ts';
import { printSheet } from '#papers/sheet/print-sheet.ts';
import type { SheetPaper } from '#papers/sheet/sheet-paper.ts';
import type { Typeset } from '#papers/typesetting/typeset.ts';
import type { Runtime } from '../runtime.ts';
import { fileHandler } from './file-handler.ts';
import { refusal } from './requests.ts';
import { inTurnOf } from './turns.ts';

/** A paper costs the server as much as so many calls; a person needs a few in a minute. */
const callsOfOne = 20;
/** By command a plan may be longer: there it holds nobody else. */
const mostWeeks = 4;

const asked = z.object({
  patient: z.string().max(64).default(''),
  paper: z.enum(paperSizes).default('a4'),
  language: z.enum(languages.map(({ tag }) => tag)).default('en'),
  large: z.enum(['0', '1']).default('0'),
  weeks: z.coerce.number().default(1),
  episode: z.string().max(64).optional(),
  note: z.array(z.string().max(64)).max(20).default([]),
  /** A letter that is kept; left out = straight from the record. */
  letter: z.string().max(64).optional(),
});
type Asked = z.infer<typeof asked>;

interface Made extends Typeset {
  readonly fileName: string;
}

type Caller = ReturnType<typeof createCaller>;

const sheetMade = async (kind: PaperKind, sheet: SheetPaper, look: Look): Promise<Made> => ({
  ...(await printSheet(sheet, look)),
  fileName: `${kind}-${look.printedOn}.pdf`,
});

/** From the own phone, or at the desk: access is what each procedure says it is. */
const made: Readonly<
  Record<PaperKind, (caller: Caller, role: Person['role'], look: Look, asked: Asked) => Promise<Made>>
> = {
  plan: async ({ patient, clinician }, role, look, { weeks, patient: patientId }) => {
    const plan =
      role === 'patient'
        ? await patient.papers.plan({ weeks })
        : await clinician.papers.plan({ patientId, weeks });
    return { ...(await printPlan(plan, look)), fileName: planFileName(look) };
  },
  letter: async ({ clinician }, _role, look, { patient: patientId, note: notes, letter: letterId }) => {
    const fileName = letterFileName(look);
    if (letterId === undefined)
      return {
        ...(await printLetter(await clinician.papers.letter({ patientId, notes }), look)),
        fileName,
      };
    const { words, voided } = await clinician.letters.get({ patientId, letterId });
    return { ...(await printWords(words, look, voided)), fileName };
  },
  discharge: async ({ clinician }, _role, look, { patient: patientId, episode: episodeId }) => {
    const { language } = look;
    return sheetMade('discharge', await clinician.papers.discharge({ patientId, episodeId, language }), look);
  },
  'self-management': async ({ clinician }, _role, look, { patient: patientId, episode: episodeId }) => {
    const { language } = look;
    const sheet = await clinician.papers.selfManagement({ patientId, episodeId, language });
    return sheetMade('self-management', sheet, look);
  },
  'flare-note': async ({ clinician }, _role, look, { patient: patientId }) =>
    sheetMade('flare-note', flareNoteSheet(await clinician.papers.flareNote({ patientId }), look), look),
  record: async ({ patient, clinician }, role, look, { patient: patientId }) => {
    const record =
      role === 'patient' ? await patient.papers.record() : await clinician.papers.record({ patientId });
    return { ...(await printSheet(recordSheet(record, look), look)), fileName: recordFileName(look) };
  },
  handover: async ({ clinician }, _role, look, { patient: patientId }) =>
    sheetMade('handover', handoverSheet(await clinician.papers.handover({ patientId }), look), look),
};

const fileOf = ({ pdf, fileName }: Made): Response =>
  new Response(new Blob([new Uint8Array(pdf)]), {
    headers: {
      'Content-Type': 'application/pdf',
      'Content-Disposition': `inline; filename="${fileName}"`,
      'Cache-Control': 'no-store',
    },
  });

const isKind = (kind: string): kind is PaperKind => (paperKinds as readonly string[]).includes(kind);

/** What was asked for, or null where the address names no paper we have. */
const askedIn = (kind: string, url: string): { readonly kind: PaperKind; readonly how: Asked } | null => {
  const { searchParams } = new URL(url);
  const read = asked.safeParse({ ...Object.fromEntries(searchParams), note: searchParams.getAll('note') });
  if (!isKind(kind) || !read.success) return null;
  return { kind, how: read.data };
};

export const paperHandler = (at: Runtime, request: Request, kind: string): Promise<Response> => {
  const found = askedIn(kind, request.url);
  return fileHandler(at, request, {
    route: 'papers',
    calls: callsOfOne,
    isKnown: found !== null,
    make: async (context, { person, access }) => {
      const { paper, language, large, weeks } = found!.how;
      if (!Number.isInteger(weeks) || weeks < 1 || weeks > mostWeeks)
        return refusal(400, 'refused', `A plan made here is of 1 to ${mostWeeks} weeks.`);
      const look: Look = { paper, language, isLarge: large === '1', printedOn: access.day };
      // One paper at a time, whoever asks, and a turn for everybody else between two of them.
      return fileOf(
        await inTurnOf('papers')(() =>
          made[found!.kind](createCaller(context), person.role, look, found!.how),
        ),
      );
    },
  });
};
