/** Types, lint, formatting, migrations and the house rules: the first part of `npm test`, alone. */
import { spawnSync } from 'node:child_process';
import { inRoot, root } from '../paths.mjs';

export const run = (args: readonly string[]): number => {
  if (args.length > 0) {
    process.stderr.write('Usage: npm run check\n');
    return 2;
  }
  const command = [inRoot('src', 'commands', 'team', 'test.mjs'), '--only', 'checks'];
  return spawnSync(process.execPath, command, { cwd: root, stdio: 'inherit' }).status ?? 1;
};
