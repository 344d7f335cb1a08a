/** The server for people who work on it: the demo clinic on a file of its own, pages rebuilt as they change. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { readEnvironment } from '../environment.mjs';
import { inRoot, root } from '../paths.mjs';
import { checkPortIsFree } from '../server/server-process.mjs';

export const run = async (args: readonly string[]): Promise<number> => {
  if (args.length > 0) {
    process.stderr.write('Usage: npm run dev\n');
    return 2;
  }
  const env = {
    ...process.env,
    DEMO: '1',
    DATABASE_FILE: process.env.DATABASE_FILE || path.join('.local', 'dev.sqlite'),
  };
  const settings = readEnvironment(env);
  await checkPortIsFree(settings);
  mkdirSync(path.dirname(path.resolve(root, settings.DATABASE_FILE)), { recursive: true });
  const next = inRoot('node_modules', 'next', 'dist', 'bin', 'next');
  const place = ['--port', String(settings.PORT), '--hostname', settings.HOST];
  const child = spawn(process.execPath, [next, 'dev', ...place], { cwd: root, env, stdio: 'inherit' });
  // Ctrl-C reaches the child by itself; this process only waits for it to end.
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => child.kill('SIGTERM'));
  const [code] = await once(child, 'close');
  return code ?? 0;
};
