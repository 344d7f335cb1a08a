/** What a patient sent: sessions and mornings, as they were sent, and what became of each. */
import { z } from 'zod';
import { swellings } from '#core/record/morning-questions.ts';
import { stopReasons } from '#core/record/record.ts';
import { morningEntriesOf, sessionEntriesOf } from '#data/programs/person-entries.ts';
import { civilDay, instant, instantText, jointName, listOf, score } from './outputs/words.ts';
import { listInput, pageOf, scopedRecordProcedure } from './program-procedure.ts';

const sent = {
  id: z.string(),
  day: civilDay,
  arrivedAt: instant,
  changedAt: instant.describe('When it arrived, or what replaced it.'),
  replacedById: z.string().nullable().describe('A later entry stands in its place; null = it stands.'),
  clockDoubtful: z.boolean().describe('The clock of the phone disagreed with its arrival.'),
  enteredByClinic: z.boolean(),
  redFlags: z
    .array(z.string())
    .readonly()
    .nullable()
    .describe('Warning signs that were ticked; null = not asked.'),
};

const set = z.object({
  prescriptionId: z.string(),
  itemId: z.string(),
  setNumber: z.number(),
  repetitions: z.number().nullable(),
  loadKg: z.number().nullable(),
  reserve: z.number().nullable(),
  stopReason: z.enum(stopReasons),
});

const session = z.object({
  ...sent,
  kind: z.enum(['full', 'bad-day', 'test']),
  beganAt: instant,
  endedAt: instant,
  joints: z.array(
    z.object({
      joint: jointName,
      painBefore: score,
      painDuring: score,
      painAfter: score,
      gaveWay: z.boolean().nullable().describe('null = not answered.'),
    }),
  ),
  sets: z.array(set),
});

const morning = z.object({
  ...sent,
  joints: z.array(
    z.object({
      joint: jointName,
      pain: score,
      stiffnessMinutes: z.number().nullable(),
      swelling: z.enum(swellings).nullable(),
      flare: z.boolean().nullable(),
    }),
  ),
});

type SentRow =
  | Awaited<ReturnType<typeof sessionEntriesOf>>[number]
  | Awaited<ReturnType<typeof morningEntriesOf>>[number];

const sentIn = (row: SentRow) => ({
  ...{ id: row.id, day: row.day, replacedById: row.replacedById, clockDoubtful: row.clockDoubtful },
  arrivedAt: instantText(row.arrivedAt),
  changedAt: instantText(row.changedAt),
  enteredByClinic: row.enteredAs?.startsWith('clinic-') ?? false,
  redFlags: row.redFlags,
});

export const listSessions = scopedRecordProcedure('sessions')
  .input(listInput)
  .output(listOf(session))
  .query(async ({ ctx: { access, patient }, input }) => {
    const { rows, next } = pageOf(await sessionEntriesOf(access, patient.id), input);
    return {
      rows: rows.map((row) => ({
        ...sentIn(row),
        kind: row.kind,
        beganAt: instantText(row.beganAt),
        endedAt: instantText(row.endedAt),
        // Kept at yes where nobody answered; told as it was answered.
        joints: row.joints.map((one) => ({ ...one, gaveWay: one.gaveWayUnanswered ? null : one.gaveWay })),
        sets: row.sets,
      })),
      next,
    };
  });

export const listMornings = scopedRecordProcedure('mornings')
  .input(listInput)
  .output(listOf(morning))
  .query(async ({ ctx: { access, patient }, input }) => {
    const { rows, next } = pageOf(await morningEntriesOf(access, patient.id), input);
    return { rows: rows.map((row) => ({ ...sentIn(row), joints: [...row.joints] })), next };
  });
