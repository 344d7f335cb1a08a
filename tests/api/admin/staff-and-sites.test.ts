import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { asAdministrator } from '#tests/support/callers.ts';
import { accessOf, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
beforeEach(async () => {
  store = freshStore();
  await twoClinics(store);
});
afterEach(() => store.close());

const admin = () => asAdministrator(accessOf(store, 'a', 'admin-a')).admin;
const colleague = {
  name: 'New Colleague',
  email: 'New@test.invalid',
  role: 'clinician',
  administers: false,
} as const;

describe('the people of the clinic', () => {
  it('are added with a passphrase to hand over, shown once and good for a week', async () => {
    const { userId, passphrase } = await admin().staff.add(colleague);
    expect(passphrase).toMatch(/^([0-9a-hjkmnp-tv-z]{5}-){3}[0-9a-hjkmnp-tv-z]{5}$/);
    const [row] = await admin().staff.list();
    expect(row).toMatchObject({ id: userId, email: 'new@test.invalid', twoFactorEnabled: false });
    const days = (row!.startingUntil!.getTime() - Date.now()) / 86_400_000;
    expect(days).toBeGreaterThan(6.9);
    expect(days).toBeLessThanOrEqual(7);
    expect(JSON.stringify(store.reader.client.prepare('SELECT * FROM auth_account').all())).not.toContain(
      passphrase,
    );
  });

  it('an address signs in for one person only, whatever its capitals', async () => {
    await admin().staff.add(colleague);
    await expect(admin().staff.add({ ...colleague, email: 'NEW@test.invalid' })).rejects.toMatchObject({
      problem: 'conflict',
    });
  });

  it('of another clinic cannot be reached', async () => {
    const { userId } = await admin().staff.add(colleague);
    const stranger = asAdministrator(accessOf(store, 'b', 'admin-b')).admin.staff;
    expect(await stranger.list()).toEqual([]);
    const acts = [
      () => stranger.deactivate({ userId }),
      () => stranger.reset({ userId }),
      () => stranger.setRoles({ userId, role: 'administrator', administers: true }),
    ];
    for (const act of acts) await expect(act()).rejects.toMatchObject({ problem: 'not-found' });
  });

  it('nobody changes the own powers, and somebody who can administer is always left', async () => {
    const { userId } = await admin().staff.add({ ...colleague, role: 'administrator' });
    const self = asAdministrator(accessOf(store, 'a', userId)).admin.staff;
    await expect(self.deactivate({ userId })).rejects.toMatchObject({ problem: 'refused' });
    await expect(self.setRoles({ userId, role: 'clinician', administers: true })).rejects.toMatchObject({
      problem: 'refused',
    });
    await expect(admin().staff.deactivate({ userId })).rejects.toThrow(/would have no administrator/);
    await expect(admin().staff.setRoles({ userId, role: 'clinician', administers: false })).rejects.toThrow(
      /would have no administrator/,
    );
    await admin().staff.add({ ...colleague, email: 'second@test.invalid', administers: true });
    await admin().staff.deactivate({ userId });
    expect((await admin().staff.list()).filter((row) => row.deactivatedAt)).toMatchObject([{ id: userId }]);
  });
});

describe('the places of the clinic', () => {
  it('are added and closed, seen by the own clinic only', async () => {
    const siteId = await admin().sites.add({ name: 'Harbour room', address: null });
    await admin().sites.close({ siteId });
    expect(await admin().sites.list()).toMatchObject([
      { name: 'Harbour room', closedAt: expect.any(Number) },
    ]);
    expect(await asAdministrator(accessOf(store, 'b', 'admin-b')).admin.sites.list()).toEqual([]);
  });
});
