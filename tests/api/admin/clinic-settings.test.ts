/** The clinic's settings: listed by group, saved one by one, with who changed what. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { settingOrders } from '#core/sources/setting-order.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import type { Store } from '#data/database/store.ts';
import { asAdministrator, asPerson } from '#tests/support/callers.ts';
import { accessOf, type Setting, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
});
afterEach(() => store.close());

const admin = (who = 'admin-a') => asAdministrator(accessOf(store, 'a', who)).admin.clinicSettings;
const settings = async () =>
  new Map(
    (await admin().list()).groups.flatMap((group) => group.settings).map((one) => [one.id, one] as const),
  );
/** Saves one setting as somebody who saw it as it stands, or as `seen`. */
const save = async (id: string, value: number, more: { who?: string; seen?: number } = {}) => {
  const seen = more.seen ?? (await settings()).get(id)!.value;
  return admin(more.who).save({ values: { [id]: value }, seen: { [id]: seen }, reason: 'Local rule' });
};

describe('the settings of a clinic', () => {
  it('stand in groups of ten or fewer, each setting in one, with value, bounds and reason', async () => {
    const { groups } = await admin().list();
    const ids = groups.flatMap((group) => group.settings.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    for (const group of groups) {
      expect(group.settings.length, group.id).toBeGreaterThan(1);
      expect(group.settings.length, group.id).toBeLessThanOrEqual(10);
    }
    for (const one of (await settings()).values()) {
      expect(one.value).toBe(one.default);
      expect(one.why.length).toBeGreaterThan(20);
    }
  });

  it('are kept only within their bounds, refused in words, and only where they differ from the default', async () => {
    const hours = (await settings()).get('emergency-access-hours')!;
    await expect(save(hours.id, hours.min - 1)).rejects.toThrow(/at least 1/);
    await expect(save(hours.id, hours.max + 1)).rejects.toThrow(/at most 24/);
    await expect(save(hours.id, 2.5)).rejects.toThrow(/whole number/);
    await save(hours.id, hours.max);
    expect(await settingsOf(setting.clinician)).toEqual({ [hours.id]: 24 });
    await save(hours.id, hours.default);
    expect(await settingsOf(setting.clinician)).toEqual({});
  });

  it('that are two ends of a band are held against each other as they stand: under, at and over', async () => {
    await save('low-load-repetitions-high', 20);
    await save('low-load-repetitions-low', 19);
    await save('low-load-repetitions-low', 20);
    await expect(save('low-load-repetitions-low', 21)).rejects.toThrow(
      /is at most 20: .*Change that one first/,
    );
    await expect(save('low-load-repetitions-high', 19)).rejects.toThrow(/is at least 20: /);
    expect((await settings()).get('low-load-repetitions-low')!.value).toBe(20);
  });

  it('every band is named by settings there are, and stands in order before anybody changes it', async () => {
    const all = await settings();
    for (const [lower, upper] of settingOrders)
      expect(all.get(lower)!.default, `${lower} and ${upper}`).toBeLessThanOrEqual(all.get(upper)!.default);
  });

  it('need a reason and a fresh sign-in', async () => {
    const sent = { values: {}, seen: {}, reason: '  ' };
    await expect(admin().save(sent)).rejects.toThrow();
    const stale = asPerson(accessOf(store, 'a', 'admin-a'), { administers: true, provedAt: 0 }).admin
      .clinicSettings;
    await expect(stale.save({ ...sent, reason: 'Local rule' })).rejects.toMatchObject({
      problem: 'fresh-sign-in',
    });
  });

  it('two changed at the same time by two people are both kept', async () => {
    await Promise.all([
      save('invitation-days', 3, { who: 'admin-a', seen: 7 }),
      save('emergency-access-hours', 2, { who: 'admin-b', seen: 4 }),
    ]);
    expect(await settingsOf(setting.clinician)).toEqual({
      'invitation-days': 3,
      'emergency-access-hours': 2,
    });
  });

  it('the same one changed by a colleague meanwhile is not overwritten: who changed it to what is said', async () => {
    await save('invitation-days', 3, { who: 'Imelda' });
    await expect(save('invitation-days', 14, { seen: 7 })).rejects.toMatchObject({
      problem: 'conflict',
      refusals: [
        {
          field: 'input.choices.invitation-days',
          reason: expect.stringMatching(/^Imelda has changed .* to 3 meanwhile\. Nothing was saved/),
        },
      ],
    });
    expect(await settingsOf(setting.clinician)).toEqual({ 'invitation-days': 3 });
    await save('invitation-days', 14, { seen: 3 });
    expect(await settingsOf(setting.clinician)).toEqual({ 'invitation-days': 14 });
  });

  it('each tell who changed it, from what to what and why, and nothing of the others', async () => {
    await save('invitation-days', 3, { who: 'Imelda' });
    await save('emergency-access-hours', 2, { who: 'Piotr' });
    await save('invitation-days', 7, { who: 'Piotr' });
    const told = (await settings()).get('invitation-days')!.history;
    expect(told).toMatchObject([
      { before: 3, after: 7, by: 'Piotr', reason: 'Local rule' },
      { before: 7, after: 3, by: 'Imelda', reason: 'Local rule' },
    ]);
    expect((await settings()).get('staff-two-factor')!.history).toEqual([]);
  });
});
