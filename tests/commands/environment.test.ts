/** Settings are checked once, at start: wrong ones are named, all of them together. */
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';

const problemsOf = (env: Record<string, string>): string => {
  try {
    readEnvironment(env);
    return '';
  } catch (error) {
    expect((error as { exitCode: number }).exitCode).toBe(1);
    return (error as Error).message;
  }
};

describe('settings from the environment', () => {
  it('have these defaults', () => {
    expect(readEnvironment({})).toEqual({
      PORT: 3000,
      HOST: '127.0.0.1',
      DATABASE_FILE: path.join('.local', 'clinic.sqlite'),
      DEMO: false,
      PUBLIC_ORIGIN: 'http://127.0.0.1:3000',
      JOBS: true,
      TRUSTED_PROXY: [],
      METRICS_ADDRESS: null,
      ENCRYPTION_KEY_FILE: null,
      AUDIT_KEY_FILE: null,
      BACKUP_KEY_FILE: null,
      CLINIC_NOW: null,
    });
  });

  it('an empty value is as good as none', () => {
    expect(readEnvironment({ PORT: '', CLINIC_NOW: '' })).toMatchObject({ PORT: 3000, CLINIC_NOW: null });
  });

  it.each([
    ['PORT', '0'],
    ['PORT', '65536'],
    ['PORT', '3e3'],
    ['PORT', 'http'],
    ['PORT', '-1'],
    ['HOST', 'a b'],
    ['DEMO', 'true'],
    ['JOBS', 'yes'],
    ['DATABASE_FILE', '.'],
    ['TRUSTED_PROXY', 'proxy.clinic.example'],
    ['TRUSTED_PROXY', '10.0.0.0/33'],
    ['TRUSTED_PROXY', '10.0.0.1/8/8'],
    ['METRICS_ADDRESS', '0.0.0.0:9464'],
    ['METRICS_ADDRESS', '127.0.0.1'],
    ['METRICS_ADDRESS', '127.0.0.1:65536'],
    ['PUBLIC_ORIGIN', 'clinic.example'],
    ['PUBLIC_ORIGIN', 'http://clinic.example'],
    ['PUBLIC_ORIGIN', 'https://clinic.example/path'],
    ['PUBLIC_ORIGIN', 'ftp://127.0.0.1'],
    ['ENCRYPTION_KEY_FILE', './no-such-file'],
    ['AUDIT_KEY_FILE', '.'],
    ['CLINIC_NOW', 'yesterday'],
    ['CLINIC_NOW', '2026-03-02T09:00:00'],
    ['CLINIC_NOW', '2026-03-02'],
  ])('%s=%s is refused by name, with the value', (name, value) => {
    expect(problemsOf({ DEMO: '1', [name]: value })).toMatch(new RegExp(`^ {2}${name} .*"${value}"`, 'm'));
  });

  it.each([
    ['PORT', '65535', 65535],
    ['PORT', '1', 1],
    ['PUBLIC_ORIGIN', 'https://clinic.example/', 'https://clinic.example'],
    ['PUBLIC_ORIGIN', 'http://localhost:8080', 'http://localhost:8080'],
    ['CLINIC_NOW', '2026-03-02T09:00:00+01:00', '2026-03-02T09:00:00+01:00'],
    ['CLINIC_NOW', '2026-03-02T09:00Z', '2026-03-02T09:00Z'],
  ])('%s=%s is taken', (name, value, expected) => {
    expect(readEnvironment({ DEMO: '1', [name]: value })).toMatchObject({ [name]: expected });
  });

  it('names every wrong setting at once', () => {
    const text = problemsOf({ PORT: 'x', DEMO: '2', PUBLIC_ORIGIN: 'x' });
    expect(text.match(/^ {2}(PORT|DEMO|PUBLIC_ORIGIN) /gm)).toHaveLength(3);
  });

  it('the clinical clock is set in the demo only', () => {
    expect(problemsOf({ CLINIC_NOW: '2026-03-02T09:00:00Z' })).toContain('CLINIC_NOW');
  });

  it('an IPv6 address is shown in brackets', () => {
    expect(readEnvironment({ HOST: '::1' }).PUBLIC_ORIGIN).toBe('http://[::1]:3000');
  });
});
