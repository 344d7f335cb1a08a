/** A record in an open format as a file to save: for its own patient, and for the clinic. */
import { z } from 'zod';
import { createCaller } from '#api/root.ts';
import { type Download, downloadOf } from '#exchange/download.ts';
import { type ExportFormat, exportFormats } from '#exchange/person-files.ts';
import { languages } from '#messages/languages.ts';
import type { Runtime } from '../runtime.ts';
import { fileHandler } from './file-handler.ts';
import { inTurnOf } from './turns.ts';

/** A whole record costs the server as much as so many calls; a person needs a few in a minute. */
const callsOfOne = 20;

const asked = z.object({
  patient: z.string().max(64).default(''),
  language: z.enum(languages.map(({ tag }) => tag)).default('en'),
});

const fileOf = ({ name, type, bytes }: Download): Response =>
  new Response(new Blob([new Uint8Array(bytes)]), {
    headers: {
      'Content-Type': type,
      'Content-Disposition': `attachment; filename="${name}"`,
      'Cache-Control': 'no-store',
    },
  });

/** null where the address names no format we have. */
const askedIn = (
  name: string,
  url: string,
): (z.infer<typeof asked> & { readonly format: ExportFormat }) | null => {
  const format = exportFormats.find((one) => one === name);
  const read = asked.safeParse(Object.fromEntries(new URL(url).searchParams));
  return format && read.success ? { format, ...read.data } : null;
};

export const exportHandler = (at: Runtime, request: Request, name: string): Promise<Response> => {
  const found = askedIn(name, request.url);
  return fileHandler(at, request, {
    route: 'exports',
    calls: callsOfOne,
    isKnown: found !== null,
    make: async (context, { person, access }) => {
      const { format, language, patient: patientId } = found!;
      const { patient, clinician } = createCaller(context);
      // One at a time, whoever asks, and a turn for everybody else between two of them.
      return inTurnOf('exports')(async () =>
        fileOf(
          downloadOf(
            format,
            person.role === 'patient'
              ? await patient.exports.files({ format, language })
              : await clinician.exports.files({ patientId, format, language }),
            access,
          ),
        ),
      );
    },
  });
};
