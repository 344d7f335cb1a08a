/** Version 3 among the clinic settings: what its one button looks at and saves. */
import { describe, expect, it } from 'vitest';
import { engineDefaults, engineSettings } from '#core/decision/settings.ts';
import { version3 } from '#core/decision/version-3-settings.ts';
import { version3Change } from '#ui/admin/settings/version-3-part.tsx';

const all = (own: Readonly<Record<string, number>>) =>
  engineSettings.map((one) => ({ id: one.id, default: one.default, value: own[one.id] ?? one.default }));

describe('version 3 among the clinic settings', () => {
  it('is not in force as delivered, and is saved as a whole set that touches no other setting', () => {
    const { isInForce, wanted } = version3Change(all({ 'severe-pain': 9 }));
    expect(isInForce).toBe(false);
    expect(wanted.values).toEqual(version3);
    expect(Object.keys(wanted.seen).sort()).toEqual(Object.keys(version3).sort());
  });

  it('once in force, gives back what was delivered and touches no other setting', () => {
    const { isInForce, wanted } = version3Change(all({ ...version3, 'severe-pain': 9 }));
    expect(isInForce).toBe(true);
    for (const [id, value] of Object.entries(wanted.values))
      expect(value).toBe(engineDefaults[id as keyof typeof engineDefaults]);
    expect(Object.keys(wanted.values).sort()).toEqual(Object.keys(version3).sort());
  });

  it('with one of its numbers changed it is not in force', () => {
    expect(version3Change(all({ ...version3, 'swap-rise': 1 })).isInForce).toBe(false);
  });
});
