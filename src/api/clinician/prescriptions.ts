/** Prescribing: propose, save a draft, sign by name, end. */
import { z } from 'zod';
import { dosesBeforeCorrection } from '#core/corrections/doses-before.ts';
import { limitedExercises } from '#core/episode/limit-bounds.ts';
import { exercises, exerciseTitle } from '#core/exercises/catalogue.ts';
import { occlusionSchemes } from '#core/prescribing/occlusion/schemes.ts';
import { daysPlanned } from '#core/prescribing/programme/days-planned.ts';
import type { ProgrammeItem } from '#core/prescribing/programme/planned-sessions.ts';
import { programmeFields } from '#core/record/staff-fields.ts';
import type { Access } from '#data/access.ts';
import { noteRead } from '#data/audit/audit.ts';
import { correctedMeasurements } from '#data/corrections/corrections.ts';
import { limitsOfPerson } from '#data/episode/limits-of-person.ts';
import { endPrescription, replacedReason, signPrescription } from '#data/prescribing/prescribing.ts';
import {
  inForce,
  type Prescription,
  prescriptionsOf,
  sameInForce,
  unsigned,
} from '#data/prescribing/prescriptions.ts';
import { programmesOf } from '#data/prescribing/programmes.ts';
import { type Withdrawal, withdrawSignature } from '#data/prescribing/withdraw-signature.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { madeId, nothing } from '../outputs.ts';
import { requireNoted } from '../require-noted.ts';
import { recordProcedure, router } from '../trpc.ts';
import { withPatientWords } from './caution-words.ts';
import { exerciseChoices, searchInput } from './exercise-choices.ts';
import { keepProposal } from './keep-proposal.ts';
import { requireNothingNewer } from './nothing-newer.ts';
import { propose, requireOpen } from './propose.ts';
import { signingStoppedText } from './require-signing.ts';
import { planningValues, saveWeek } from './week.ts';

const signedText = {
  'not-found': 'This patient has no such prescription.',
  'already-signed': 'It is already signed.',
  overtaken: 'There is a newer version. Open that one and sign it.',
  ...signingStoppedText,
} as const;

const notWithdrawn: Readonly<Record<Exclude<Withdrawal, 'withdrawn'>, string>> = {
  'not-signed': 'It is not signed, or its signature was withdrawn already. Reload the page.',
  'signed-by-another':
    'A colleague signed it. Only whoever signed withdraws a signature; write a new dose, or end it.',
  overtaken: 'There is a newer version, or it has ended. Nothing was withdrawn; reload the page.',
  'replaced-another':
    'This signature ended another prescription, which would not come back. Write a new dose, or end this one.',
  'handed-over':
    'The patient’s phone was sent this dose already, so it may have been shown. Write a new dose, or end it.',
  'session-done': 'A session was done at this dose already. Write a new dose, or end it.',
};

/** Ends the same exercise in force where the clinician has seen it and said so; asks where not. */
const replace = async (
  access: Access,
  patientId: string,
  same: Prescription | null,
  isConfirmed: boolean,
): Promise<void> => {
  if (!same) return;
  if (!isConfirmed) {
    const title = exerciseTitle(same.dose.exerciseId);
    throw new Problem(
      'not-confirmed',
      `“${title}” is in force already for this side and method, signed by ${same.signedName}.`,
      {
        questions: [
          `“${title}” is in force already for this side and method, signed by ${same.signedName}. Replace it with this one?`,
        ],
      },
    );
  }
  await endPrescription(access, patientId, same.id, replacedReason);
};

export const prescriptionsRouter = router({
  /** Exercises by a search: first those a dose can be proposed for now, then the others with why not. */
  choices: recordProcedure
    .input(z.object({ search: searchInput.prefault({}) }))
    .query(({ ctx, input }) => exerciseChoices(ctx.access, ctx.patient, input.search)),

  catalogue: recordProcedure.query(async ({ ctx }) => {
    const limits = await limitsOfPerson(ctx.access, ctx.patient.id);
    return { exercises, schemes: occlusionSchemes, limited: limitedExercises(limits, ctx.access.day) };
  }),

  list: recordProcedure.query(async ({ ctx }) => {
    const versions = await prescriptionsOf(ctx.access, ctx.patient.id);
    const corrected = await correctedMeasurements(ctx.access, ctx.patient.id);
    const before = dosesBeforeCorrection(versions, corrected);
    const programmes = await programmesOf(ctx.access, ctx.patient.id);
    const planned = (itemId: string | null) => daysPlanned(programmes, ctx.access.day, itemId);
    const shown = (rows: typeof versions) =>
      rows.map((row) => ({
        ...withPatientWords(row),
        correctedSince: before.has(row.id),
        /** Days the planned week gives its line; null = no week was planned. */
        plannedDays: planned(row.itemId),
      }));
    return {
      versions: shown(versions),
      inForce: shown(inForce(versions)),
      unsigned: shown(unsigned(versions)),
      /** Of a line that is new. */
      plannedDaysOfNew: planned(null),
    };
  }),

  propose: recordProcedure
    .input(z.object({ request: z.unknown() }))
    .mutation(async ({ ctx, input, path }) => {
      // Computes from the record and writes nothing, so it is an opening of the record like a query.
      requireNoted(ctx.access);
      noteRead(ctx.access, { subject: path, patientId: ctx.patient.id });
      return withPatientWords(await propose(ctx.access, ctx.patient, input.request));
    }),

  /** Keeps the proposal as an unsigned version; it is computed again here, never taken from the page. */
  saveDraft: recordProcedure
    .input(
      z.object({
        request: z.unknown(),
        itemId: z.string().max(64).optional(),
        confirmed: z.boolean().default(false),
        /** The dose as it was shown; left out where nobody read one. */
        shown: z.unknown().optional(),
      }),
    )
    .output(madeId)
    .mutation(({ ctx, input }) => keepProposal(ctx.access, ctx.patient, input)),

  sign: recordProcedure
    .input(
      z.object({
        prescriptionId: z.string().max(64),
        /** The clinician has seen that the same exercise is in force and ends it by this signature. */
        replace: z.boolean().default(false),
        readAt: z.number().int().optional(),
      }),
    )
    .mutation(({ ctx, input }) => {
      const { access, patient } = ctx;
      return access.store.write(async () => {
        await requireNothingNewer(access, patient, input.readAt);
        const versions = await prescriptionsOf(access, patient.id);
        const row = versions.find((version) => version.id === input.prescriptionId);
        if (!row) throw new Problem('not-found', signedText['not-found']);
        await requireOpen(access, patient, row.dose);
        await replace(access, patient.id, sameInForce(versions, row), input.replace);
        const signed = await signPrescription(access, patient.id, input.prescriptionId);
        if (signed !== 'signed')
          throw new Problem(signed === 'not-found' ? 'not-found' : 'conflict', signedText[signed]);
        return { signedName: access.actorName, signedAt: access.now };
      });
    }),

  /** By whoever signed, until the phone was sent the dose or a session was done at it; it waits to be signed again. */
  withdrawSignature: recordProcedure
    .input(z.object({ prescriptionId: z.string().max(64) }))
    .mutation(async ({ ctx, input }) => {
      const answer = await withdrawSignature(ctx.access, ctx.patient.id, input.prescriptionId);
      if (answer === 'not-found') throw new Problem('not-found', signedText['not-found']);
      if (answer !== 'withdrawn') throw new Problem('conflict', notWithdrawn[answer]);
    }),

  end: recordProcedure
    .input(z.object({ prescriptionId: z.string().max(64), reason: z.string().trim().min(1).max(500) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const { access, patient } = ctx;
      const isEnded = await access.store.write(async () => {
        const versions = await prescriptionsOf(access, patient.id);
        const row = versions.find((version) => version.id === input.prescriptionId);
        if (!row || !(await endPrescription(access, patient.id, row.id, input.reason))) return false;
        // A newer version still waiting would bring the ended exercise back once signed.
        for (const waiting of unsigned(versions).filter(
          (one) => one.itemId === row.itemId && one.id !== row.id,
        )) {
          await endPrescription(access, patient.id, waiting.id, input.reason);
        }
        return true;
      });
      if (!isEnded) throw new Problem('conflict', 'It was already ended, or belongs to another patient.');
    }),

  programme: recordProcedure.query(
    async ({ ctx }) => (await programmesOf(ctx.access, ctx.patient.id)).at(-1) ?? null,
  ),

  /** The clinic's numbers for planning a week. */
  planning: recordProcedure.query(({ ctx }) => planningValues(ctx.access)),

  saveProgramme: recordProcedure.input(z.object({ programme: z.unknown() })).mutation(({ ctx, input }) => {
    const { lines } = checked(programmeFields, input.programme);
    return saveWeek(ctx.access, ctx.patient.id, lines as readonly ProgrammeItem[]);
  }),
});
