/** People of the clinic: who they are, and whether anything of them changed. */
import { z } from 'zod';
import { digestOfIds, noteRead } from '#data/audit/audit.ts';
import { closedToMe } from '#data/patients/care-team.ts';
import { changedPeople } from '#data/programs/changed-people.ts';
import { civilDay, instant, instantOrNull, listOf } from './outputs/words.ts';
import { listInput, scopedProcedure, sinceOf } from './program-procedure.ts';

const person = z.object({
  id: z.string(),
  givenName: z.string(),
  familyName: z.string(),
  birthDay: civilDay,
  patientNumber: z.string().nullable(),
  changedAt: instant
    .nullable()
    .describe('When anything of the record was last written; null = longer ago than the audit in the file.'),
});

export const listPeople = scopedProcedure('people')
  .input(listInput)
  .output(listOf(person))
  .query(async ({ ctx: { access }, input }) => {
    // Kept to a care team, to which no program belongs.
    const closed = await closedToMe(access);
    const found = await changedPeople(access, {
      since: sinceOf(input),
      after: input.after ?? null,
      limit: input.limit + 1,
    });
    const page = found.slice(0, input.limit);
    const open = page.filter(({ id }) => !closed.has(id));
    const ids = open.map(({ id }) => id);
    noteRead(access, { subject: 'programs.people', detail: { count: ids.length, ids: digestOfIds(ids) } });
    return {
      rows: open.map((row) => ({ ...row, changedAt: instantOrNull(row.changedAt) })),
      next: found.length > input.limit ? (page.at(-1)?.id ?? null) : null,
    };
  });
