/** Works the worklist of every clinic out anew from the record. */
import { dayAt } from '#data/civil-time.ts';
import { clinicIds } from '#data/patients/people.ts';
import { rebuildWorklist } from '#data/worklist/worklist-items.ts';
import { runtime, zoneOf } from '#server/runtime.ts';

export const run = async (args: readonly string[]): Promise<number> => {
  if (args.length > 0) {
    process.stderr.write('Usage: npm run rebuild-worklist\n');
    return 2;
  }
  const at = runtime();
  const now = at.clock.now();
  for (const clinicId of await clinicIds(at.store)) {
    const day = dayAt(now, await zoneOf(at, clinicId));
    const who = { actorId: 'rebuild-worklist', actorName: 'Rebuild of the worklist' };
    const count = await rebuildWorklist({
      store: at.store,
      auditKey: at.keys.audit,
      clinicId,
      ...who,
      now,
      day,
    });
    process.stdout.write(`${clinicId}: ${count} matters\n`);
  }
  return 0;
};
