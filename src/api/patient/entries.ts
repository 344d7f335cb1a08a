/** Entries of a phone: checked, kept once each, then looked at by the engine in the same transaction. */
import { z } from 'zod';
import { redFlags } from '#core/decision/facts/facts.ts';
import { carers } from '#core/record/entry-words.ts';
import type { Access } from '#data/access.ts';
import { reportEntrySigns } from '#data/danger/warning-signs.ts';
import { whyNotAmended } from '#data/entries/amendable.ts';
import { keepMorning } from '#data/entries/keep-morning.ts';
import { refusalText } from '#messages/refusals.ts';
import { Problem } from '../errors.ts';
import { nothing } from '../outputs.ts';
import { entryKinds, take, told } from '../take-entries.ts';
import { patientProcedure, router } from '../trpc.ts';
import { takeHomeAnswers } from './home-answers.ts';
import { takeMessage } from './messages.ts';
import { takeSign } from './reported-sign.ts';

/** On the patient's own phone types the patient, or somebody the patient has asked to. */
const byPatientOrCarer = (entry: unknown): void => {
  const typedBy =
    typeof entry === 'object' && entry !== null && 'enteredAs' in entry ? entry.enteredAs : null;
  if (typedBy !== null && !carers.some((carer) => carer === typedBy)) {
    throw new Problem('refused', refusalText('entry-of-another'));
  }
};

const fieldOf = (entry: unknown, field: 'entryId' | 'amends'): string | null => {
  const value =
    typeof entry === 'object' && entry !== null ? (entry as Record<string, unknown>)[field] : null;
  return typeof value === 'string' ? value : null;
};

const notAmended = {
  'another-day': 'answer-of-another-day',
  'not-found': 'answer-not-found',
  'changed-already': 'answer-changed-already',
} as const;

/** An answer can be changed on the day it was sent; later only the clinic can put it right. */
const whyNotSameDay = (
  access: Access,
  patientId: string,
  kind: (typeof entryKinds)[number],
  entry: unknown,
) => {
  const [entryId, amends] = [fieldOf(entry, 'entryId'), fieldOf(entry, 'amends')];
  return amends === null || entryId === null
    ? null
    : whyNotAmended(access, patientId, kind, { entryId, amends });
};

const signsIn = z.object({
  entryId: z.string(),
  amends: z.string(),
  redFlags: z.array(z.enum(redFlags)),
});

/** The answer is not taken; a warning sign it told is written down all the same. */
const keepSigns = async (access: Access, patientId: string, entry: unknown): Promise<void> => {
  const { data } = signsIn.safeParse(entry);
  if (data) await reportEntrySigns(access, patientId, { ...data, flags: data.redFlags, source: 'patient' });
};

const entryId = z.string().min(1).max(64);

export const entriesRouter = router({
  /** One morning answered on two phones: which answers count. */
  keepMorning: patientProcedure
    .input(z.object({ keep: entryId, instead: entryId }))
    .output(nothing)
    .mutation(async ({ ctx: { access, patient }, input }) => {
      if (!(await keepMorning(access, patient.id, input)))
        throw new Problem('refused', refusalText('answer-changed-already'));
    }),

  send: patientProcedure
    .input(z.object({ kind: z.enum([...entryKinds, 'message', 'sign', 'home-answers']), entry: z.unknown() }))
    .mutation(async ({ ctx: { access, patient }, input: { kind, entry } }) => {
      if (kind === 'message')
        return { stored: await takeMessage(access, patient.id, entry), clockDoubtful: false };
      if (kind === 'sign') return { stored: await takeSign(access, patient.id, entry), clockDoubtful: false };
      byPatientOrCarer(entry);
      if (kind === 'home-answers')
        return { stored: await takeHomeAnswers(access, patient.id, entry), clockDoubtful: false };
      const taken = await access.store.write(async () => {
        const refused = await whyNotSameDay(access, patient.id, kind, entry);
        if (!refused) return { stored: await take(access, patient.id, kind, entry) };
        await keepSigns(access, patient.id, entry);
        return { refused };
      });
      // Refused after the write: thrown within it, it would take the sign along.
      if (taken.refused) throw new Problem('refused', refusalText(notAmended[taken.refused]));
      return told(taken.stored);
    }),
});
