/** Start of the server. Whatever keeps it from working ends the process with the reason. */
import { CannotGoOn, say } from '#commands/say.mjs';
import { clinicIds } from '#data/patients/people.ts';
import { catchUp, isDemoFile } from './demo-file.ts';
import { keepWhileRunning, keepWordsOut } from './jobs/audit-anchoring.ts';
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

const start = async (): Promise<void> => {
  const at = runtime();
  if (at.settings.DEMO) {
    await fillWhenEmpty(at);
    await catchUp(at);
  } else if (isDemoFile(at.store)) {
    throw new CannotGoOn(
      `${at.settings.DATABASE_FILE} holds the demo clinic and nothing else. Start it with DEMO=1, or name the file of your clinic with DATABASE_FILE.`,
    );
  }
  keepWhileRunning(at);
  if (process.env.NODE_ENV === 'production') keepWordsOut();
};

/**
 * A start that fails ends the process. The page framework would go on and answer every request with a
 * fault, and nobody who watches the process would start it again.
 */
export const startOrEnd = async (): Promise<void> => {
  try {
    await start();
  } catch (error) {
    const isPlain = error instanceof CannotGoOn;
    say(`the server does not start. ${isPlain ? error.message : ((error as Error)?.stack ?? String(error))}`);
    process.exit(isPlain ? error.exitCode : 1);
  }
};
