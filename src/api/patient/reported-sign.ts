/** A warning sign told outside a session and a morning check: written down as any other, and at once. */
import { z } from 'zod';
import { redFlags } from '#core/decision/facts/facts.ts';
import type { Access } from '#data/access.ts';
import { flagsByEntry } from '#data/danger/danger-record.ts';
import { reportEntrySigns } from '#data/danger/warning-signs.ts';
import { refusalText } from '#messages/refusals.ts';
import { Problem } from '../errors.ts';

const signFields = z.object({
  entryId: z.uuid(),
  redFlags: z.array(z.enum(redFlags)).min(1),
});

/** Out of a phone's queue: however often it is sent, it opens one warning sign. */
export const takeSign = (access: Access, patientId: string, entry: unknown): Promise<'stored' | 'known'> => {
  const { data } = signFields.safeParse(entry);
  if (!data) throw new Problem('refused', refusalText('request-unread'));
  const { entryId, redFlags: flags } = data;
  return access.store.write(async () => {
    const isKnown = (await flagsByEntry(access, patientId)).some((one) => one.entryId === entryId);
    await reportEntrySigns(access, patientId, { entryId, flags, amends: null, source: 'patient' });
    return isKnown ? 'known' : 'stored';
  });
};
