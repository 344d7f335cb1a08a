/** The certificate of one decision, to be handed on and verified by command. */
import { z } from 'zod';
import { Problem } from '#api/errors.ts';
import { recordProcedure } from '#api/trpc.ts';
import { certificateOf, certificateText } from '#data/decision/certificate/certificate.ts';

const refusals = {
  'no-such-decision': 'This patient has no such decision.',
  'audit-row-away':
    'The audit row of this decision was archived, so nothing here seals it. Whoever runs the server has the archive.',
} as const;

export const certificateProcedure = recordProcedure
  .input(z.object({ decisionId: z.string().max(64) }))
  .query(async ({ ctx: { access, patient }, input }) => {
    const certified = await certificateOf(access, patient.id, input.decisionId);
    if (!certified.ok) throw new Problem('not-found', refusals[certified.why]);
    return { text: certificateText(certified.certificate) };
  });
