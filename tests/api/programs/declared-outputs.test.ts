/** Procedures that declare no answer. Each of them can change what it answers without anybody noticing. */
import { expect, it } from 'vitest';
import { appRouter } from '#api/root.ts';

interface Built {
  readonly _def: { readonly type: string; readonly output?: unknown };
}

const built = Object.entries(appRouter._def.procedures as unknown as Record<string, Built>);
const open = (kind: string): number =>
  built.filter(([, { _def }]) => _def.type === kind && _def.output === undefined).length;

/** May only become fewer. */
const most = { query: 115, mutation: 41 } as const;

it.each(['query', 'mutation'] as const)(
  'of each %s but those counted here the answer is declared',
  (kind) => {
    expect(open(kind)).toBe(most[kind]);
  },
);

it('is declared of every procedure for other programs', () => {
  const ofPrograms = built.filter(([path]) => path.startsWith('programs.'));
  expect(ofPrograms.length).toBeGreaterThan(0);
  expect(ofPrograms.filter(([, { _def }]) => _def.output === undefined)).toEqual([]);
});
