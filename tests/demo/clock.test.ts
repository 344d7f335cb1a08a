/** Where the clinical clock of a demo starts. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';
import { openRuntime } from '#server/runtime.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-clock-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const clockAt = (name: string, env: Record<string, string>): number => {
  const at = openRuntime(readEnvironment({ DATABASE_FILE: path.join(folder, name), ...env }));
  const now = at.clock.now();
  at.store.close();
  return now;
};

describe('the clinical clock', () => {
  it('starts on the Monday morning of the demo clinic, and runs from there', () => {
    const start = Date.parse('2026-04-20T08:30:00+01:00');
    const now = clockAt('demo', { DEMO: '1' });
    expect(now - start).toBeGreaterThanOrEqual(0);
    expect(new Date(now).toISOString().slice(0, 10)).toBe('2026-04-20');
  });

  it('starts where the setting says when it is given', () => {
    const now = clockAt('set', { DEMO: '1', CLINIC_NOW: '2026-05-04T09:00:00+01:00' });
    expect(new Date(now).toISOString().slice(0, 10)).toBe('2026-05-04');
  });

  it('is the system’s own outside the demo', () => {
    const before = Date.now();
    expect(clockAt('own', {})).toBeGreaterThanOrEqual(before);
  });
});
