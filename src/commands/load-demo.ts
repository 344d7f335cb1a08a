/** Makes a file of the demo clinic without serving it. Its keys stand beside it. */
import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { removeStore } from '#data/database/migrate.ts';
import { loadDemoClinic } from '#demo/load.ts';
import { openRuntime } from '#server/runtime.ts';
import { openAccount } from '#server/sign-in/auth.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';

const usage = 'Usage: npm run --silent load-demo -- --to FILE';

const fileIn = (args: readonly string[]): string => {
  try {
    const { to } = parseArgs({ args: [...args], options: { to: { type: 'string' } } }).values;
    if (to) return to;
  } catch {
    // Said below, as for a file that is not named.
  }
  throw new CannotGoOn(usage, 2);
};

export const run = async (args: readonly string[]): Promise<number> => {
  const file = fileIn(args);
  if (existsSync(file)) {
    throw new CannotGoOn(`${file} is there already. Name a file that is not, or delete it first.`, 2);
  }
  const at = openRuntime(readEnvironment({ DATABASE_FILE: file, DEMO: '1' }));
  try {
    await loadDemoClinic({
      store: at.store,
      auditKey: at.keys.audit,
      openAccount: (account) => openAccount(at.auth, account),
      now: at.clock.now(),
    });
  } catch (error) {
    removeStore(at.store);
    throw error;
  }
  at.store.close();
  console.log(`demo clinic ${file}`);
  return 0;
};
