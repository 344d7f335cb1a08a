/** Who needs a clinician, most pressing first, as the clinic’s own list has it. */
import { z } from 'zod';
import { worklistItemKinds } from '#core/worklist/item.ts';
import { works } from '#core/worklist/work.ts';
import { digestOfIds, noteRead } from '#data/audit/audit.ts';
import { closedToMe } from '#data/patients/care-team.ts';
import { worklistPageWithDanger } from '#data/worklist/worklist.ts';
import { shownItem } from '../clinician/worklist-item.ts';
import { civilDay, instant, instantText } from './outputs/words.ts';
import { scopedProcedure } from './program-procedure.ts';

const item = z.object({
  kind: z.enum(worklistItemKinds),
  work: z.enum(works).describe('What is asked of a clinician.'),
  sentence: z.string(),
  since: instant,
  acknowledged: z.boolean(),
  assignedName: z.string().nullable(),
});

const worklist = z.object({
  day: civilDay,
  readAt: instant,
  rows: z.array(z.object({ patientId: z.string(), items: z.array(item) })),
  isWhole: z.boolean().describe('False = more people are on the list than one answer holds.'),
});

const mostListed = 500;

export const readWorklist = scopedProcedure('worklist')
  .input(
    z.object({
      changedSince: z.iso
        .datetime()
        .optional()
        .describe('Only people with an item that stands since this instant or later.'),
    }),
  )
  .output(worklist)
  .query(async ({ ctx: { access }, input }) => {
    const closed = await closedToMe(access);
    const query = {
      ...{ after: null, limit: mostListed, kind: null, assignedTo: null, siteId: null, closed },
    };
    const { lines, next } = await worklistPageWithDanger(access, query);
    const since = input.changedSince === undefined ? -Infinity : Date.parse(input.changedSince);
    const open = lines
      .filter(({ patientId }) => !closed.has(patientId))
      .filter(({ worklistItems }) => worklistItems.some((row) => row.since >= since));
    const ids = open.map(({ patientId }) => patientId);
    noteRead(access, { subject: 'programs.worklist', detail: { count: ids.length, ids: digestOfIds(ids) } });
    return {
      day: access.day,
      readAt: instantText(access.now),
      rows: open.map(({ patientId, worklistItems }) => ({
        patientId,
        items: worklistItems.map((row) => {
          const { kind, work, sentence, acknowledgedBy, assignedName } = shownItem(row, access.day);
          const isRead = acknowledgedBy !== null;
          return { kind, work, sentence, since: instantText(row.since), acknowledged: isRead, assignedName };
        }),
      })),
      isWhole: next === null,
    };
  });
