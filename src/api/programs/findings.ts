/** What was measured, and what the rules decided. */
import { z } from 'zod';
import { distanceWays } from '#core/assessment/measurements/at-distance.ts';
import { contacts, decisions, steps, todays } from '#core/decision/answers.ts';
import { decisionEntriesOf, measurementEntriesOf } from '#data/programs/person-entries.ts';
import { measurementKinds, measurementValue } from './outputs/measurement-value.ts';
import { civilDay, instant, instantOrNull, instantText, jointName, listOf } from './outputs/words.ts';
import { listInput, pageOf, scopedRecordProcedure } from './program-procedure.ts';

const measurement = z.object({
  id: z.string(),
  day: civilDay,
  kind: z.enum(measurementKinds),
  value: measurementValue,
  recordedAt: instant,
  changedAt: instant.describe(
    'When it was recorded, was from then on told as entered in error, or its appointment was corrected.',
  ),
  confirmed: z.boolean().describe('Far from the one before, and confirmed by whoever entered it.'),
  answeredAtHome: z.boolean(),
  atDistance: z
    .enum(distanceWays)
    .nullable()
    .describe('Taken in an appointment at a distance; null = in person, or nobody has said.'),
  enteredInErrorAt: instant.nullable(),
  replacedById: z.string().nullable(),
});

export const listMeasurements = scopedRecordProcedure('measurements')
  .input(listInput)
  .output(listOf(measurement))
  .query(async ({ ctx: { access, patient }, input }) => {
    const { rows, next } = pageOf(await measurementEntriesOf(access, patient.id), input);
    return {
      rows: rows.map(
        ({ id, day, kind, value, confirmed, homeAnswersId, replacedById, atDistance, ...at }) => ({
          ...{
            id,
            day,
            kind,
            value,
            confirmed,
            replacedById,
            atDistance,
            answeredAtHome: homeAnswersId !== null,
          },
          recordedAt: instantText(at.recordedAt),
          changedAt: instantText(at.changedAt),
          enteredInErrorAt: instantOrNull(at.enteredInErrorAt),
        }),
      ),
      next,
    };
  });

const decision = z.object({
  id: z.string(),
  joint: jointName,
  day: civilDay,
  evaluatedAt: instant,
  changedAt: instant,
  cause: z.enum(['session', 'morning', 'amendment', 'clinician']),
  sessionId: z.string().nullable(),
  morningId: z.string().nullable(),
  decision: z.enum(decisions),
  largestStep: z.enum(steps).nullable(),
  today: z.enum(todays),
  contact: z.enum(contacts),
  reasons: z
    .array(z.object({ rule: z.string(), threshold: z.string(), support: z.string() }))
    .describe('Rules of the table that led to it, with the threshold in words and the source.'),
  engineVersion: z.string(),
});

export const listDecisions = scopedRecordProcedure('decisions')
  .input(listInput)
  .output(listOf(decision))
  .query(async ({ ctx: { access, patient }, input }) => {
    const { rows, next } = pageOf(await decisionEntriesOf(access, patient.id), input);
    return {
      rows: rows.map((row) => ({
        ...row,
        evaluatedAt: instantText(row.evaluatedAt),
        changedAt: instantText(row.changedAt),
        reasons: row.reasons.map(({ rule, threshold, support }) => ({ rule, threshold, support })),
      })),
      next,
    };
  });
