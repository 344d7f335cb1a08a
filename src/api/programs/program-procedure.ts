/** Who of other programs may ask: whoever holds a token of the clinic, for what the token names, and to read alone. */
import { z } from 'zod';
import type { TokenScope } from '#core/clinic/token-scopes.ts';
import { noteRead } from '#data/audit/audit.ts';
import { mayOpen } from '#data/patients/care-team.ts';
import { refusalText } from '#messages/refusals.ts';
import { Problem } from '../errors.ts';
import { requireReadable } from '../inputs/readable.ts';
import { ofPatientId, requirePatient } from '../patient-of-clinic.ts';
import { requireNoted } from '../require-noted.ts';
import { watched } from '../trpc.ts';

const programProcedure = watched
  .meta({ roles: ['program'], guard: 'token of own clinic' })
  .use(async ({ ctx, getRawInput, next }) => {
    if (ctx.person) throw new Problem('not-yours', 'This is for other programs, which ask with a token.');
    if (!ctx.token || !ctx.access) throw new Problem('signed-out', refusalText('signed-out'));
    requireReadable(await getRawInput());
    requireNoted(ctx.access);
    return next({ ctx: { token: ctx.token, access: ctx.access } });
  });

/** What a token names, and nothing else. */
export const scopedProcedure = (scope: TokenScope) =>
  programProcedure.use(({ ctx, next }) => {
    if (!ctx.token.scopes.includes(scope))
      throw new Problem(
        'not-yours',
        `The token does not name "${scope}". An administrator makes one that does.`,
      );
    return next();
  });

/** On one person, looked up first; that it was read stands in the audit and in what the patient sees of it. */
export const scopedRecordProcedure = (scope: TokenScope) =>
  scopedProcedure(scope)
    .meta({ roles: ['program'], guard: 'token of own clinic, patient of it, none kept to a care team' })
    .input(ofPatientId)
    .use(async ({ ctx, input, path, next }) => {
      const patient = await requirePatient(ctx.access, input.patientId, path);
      if (!(await mayOpen(ctx.access, patient.id)))
        throw new Problem('care-team', 'This record is kept to its care team, and no program is of one.');
      noteRead(ctx.access, { subject: path, patientId: patient.id });
      return next({ ctx: { patient } });
    });

const mostInPage = 200;

/** What every list takes. */
export const listInput = z.object({
  changedSince: z.iso
    .datetime()
    .optional()
    .describe('Only what was recorded, replaced or marked as entered in error at this instant or later.'),
  after: z.string().max(100).optional().describe('`next` of the page before; left out for the first.'),
  limit: z.int().min(1).max(mostInPage).default(mostInPage).describe('Most rows of one page.'),
});

type ListInput = z.infer<typeof listInput>;

/** Epoch milliseconds; null = all. */
export const sinceOf = ({ changedSince }: ListInput): number | null =>
  changedSince === undefined ? null : Date.parse(changedSince);

interface Changing {
  readonly id: string;
  /** Epoch milliseconds. */
  readonly changedAt: number;
}

const placeOf = ({ changedAt, id }: Changing): string => `${String(changedAt).padStart(15, '0')}~${id}`;

/** In the order in which they changed, so that a program that goes on from the last one misses nothing. */
export const pageOf = <R extends Changing>(rows: readonly R[], input: ListInput) => {
  const since = sinceOf(input);
  const { after, limit } = input;
  const placed = rows
    .filter(({ changedAt }) => since === null || changedAt >= since)
    .map((row) => ({ row, place: placeOf(row) }))
    .filter(({ place }) => after === undefined || place > after)
    .sort((one, other) => (one.place < other.place ? -1 : 1));
  const page = placed.slice(0, limit);
  return {
    rows: page.map(({ row }) => row),
    next: placed.length > limit ? (page.at(-1)?.place ?? null) : null,
  };
};
