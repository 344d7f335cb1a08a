/** The certificate of a decision as a file to save, read from the procedure as whoever asks. */
import { z } from 'zod';
import { createCaller } from '#api/root.ts';
import type { Runtime } from '../runtime.ts';
import { fileHandler } from './file-handler.ts';

const callsOfOne = 2;

const asked = z.object({ patient: z.string().max(64), decision: z.string().max(64) });

export const certificateHandler = (at: Runtime, request: Request): Promise<Response> => {
  const found = asked.safeParse(Object.fromEntries(new URL(request.url).searchParams));
  return fileHandler(at, request, {
    route: 'certificate',
    calls: callsOfOne,
    isKnown: found.success,
    make: async (context, { access }) => {
      const { patient: patientId, decision: decisionId } = found.data!;
      const { review } = createCaller(context).clinician;
      const { text } = await review.certificate({ patientId, decisionId });
      return new Response(text, {
        headers: {
          'Content-Type': 'application/json; charset=utf-8',
          'Content-Disposition': `attachment; filename="decision-${access.day}.json"`,
          'Cache-Control': 'no-store',
        },
      });
    },
  });
};
