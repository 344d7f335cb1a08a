/** A certificate as a file from outside gives it: every field it has to have, and nothing beside them. */
import { z } from 'zod';
import { inputSchema } from '#api/inputs/from-descriptor.ts';
import { contacts, decisions, steps, todays } from '#core/decision/answers.ts';
import { factFields } from '#core/decision/facts/fact-fields.ts';
import type { Certificate } from '#data/decision/certificate/certificate.ts';

/** Printed by the command: one line, so that no field can pass for a line of its own. */
const text = z.string().regex(/^\P{Cc}*$/u, 'has a control character');
const values = z.record(text, z.unknown());

const effect = z.strictObject({
  decision: z.enum(decisions).optional(),
  largestStep: z.enum(steps).optional(),
  today: z.enum(todays).optional(),
  contact: z.enum(contacts).optional(),
});

const certificate = z.strictObject({
  certificate: z.literal('decision'),
  format: z.literal(1),
  decision: z.strictObject({
    ...{ id: text, clinicId: text, patientId: text, joint: text, day: text },
    ...{ sessionId: text.nullable(), morningId: text.nullable() },
    cause: z.enum(['session', 'morning', 'amendment', 'clinician']),
    evaluatedAt: z.int(),
    facts: inputSchema(factFields),
    ...{ settingsId: text, engineVersion: text },
    decision: z.enum(decisions),
    largestStep: z.enum(steps).nullable(),
    today: z.enum(todays),
    contact: z.enum(contacts),
    reasons: z.array(
      z.strictObject({ rule: text, observed: values, threshold: text, support: text, effect }),
    ),
  }),
  settings: z.record(text, z.number()),
  audit: z.strictObject({
    ...{ clinicId: text, sequence: z.int(), at: z.int(), actorId: text, act: text, subject: text },
    ...{ subjectId: text.nullable(), patientId: text.nullable(), detail: values },
    ...{ previous: text, seal: text },
  }),
  sha256: text,
});

/** The certificate as it stands in the file, in its own order; or what is amiss. */
export const readCertificate = (file: string): Certificate | string => {
  let found: unknown;
  try {
    found = JSON.parse(file);
  } catch {
    return 'it is not JSON.';
  }
  const read = certificate.safeParse(found);
  if (read.success) return found as Certificate;
  const [first] = read.error.issues;
  return `${first!.path.join('.') || 'the file'}: ${first!.message}`;
};
