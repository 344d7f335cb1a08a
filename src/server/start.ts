/** Start of the server. A file that cannot be used ends the process with the reason. */
import { lastRecordedAt } from '#data/patients/last-recorded.ts';
import { clinicIds } from '#data/patients/people.ts';
import { type Runtime, runtime } from './runtime.ts';
import { openAccount } from './sign-in/auth.ts';

const fillWhenEmpty = async (at: Runtime): Promise<void> => {
  if ((await clinicIds(at.store)).length > 0) return;
  const { loadDemoClinic } = await import('#demo/load.ts');
  await loadDemoClinic({
    store: at.store,
    auditKey: at.keys.audit,
    openAccount: (account) => openAccount(at.auth, account),
    now: at.clock.now(),
  });
};

export const start = async (): Promise<void> => {
  const at = runtime();
  if (!at.settings.DEMO) return;
  await fillWhenEmpty(at);
  // A demo left open last week goes on from there: the clock never runs behind what is stored.
  at.clock.moveTo((await lastRecordedAt(at.store)) ?? 0);
};
