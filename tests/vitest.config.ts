import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  root,
  // The marker package is empty on the server and throws elsewhere; tests are the server.
  resolve: { alias: { 'server-only': fileURLToPath(new URL('./support/empty.ts', import.meta.url)) } },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    globalSetup: [fileURLToPath(new URL('./support/run-folder.ts', import.meta.url))],
    setupFiles: [fileURLToPath(new URL('./support/quick-passphrases.ts', import.meta.url))],
    exclude: ['tests/browser/**', 'node_modules/**'],
    pool: 'threads',
    isolate: false,
    maxWorkers: 2,
    // Against what hangs; a busy machine is no failure.
    testTimeout: 180_000,
    hookTimeout: 300_000,
    retry: 0,
    // Reading one file's modules took longer than running it; what has not changed is kept between runs.
    experimental: { fsModuleCache: true },
  },
});
