/** The small forms of administration, each through its procedure. */

import type { ConsentKind } from '#core/episode/consent.ts';
import { say } from '#messages/en/staff/administration.ts';
import { isAddressLike } from '#ui/account/address-like.ts';
import type { AskedForm } from '../account/asked-form.ts';

export const addSite: AskedForm = {
  name: 'site',
  about: [],
  names: () => ['site-name', 'site-address'],
  missing: (typed) =>
    (typed['site-name'] ?? '').trim().length < 2 ? [{ field: 'site-name', text: say('site.no-name') }] : [],
  path: 'admin.sites.add',
  input: (typed) => ({ name: typed['site-name'], address: typed['site-address']?.trim() || null }),
  page: () => '/administration',
};

export const nameCoveringClinician: AskedForm = {
  name: 'covering-clinician',
  about: [],
  names: () => ['covering'],
  missing: () => [],
  path: 'admin.care.nameCoveringClinician',
  input: (typed) => ({ userId: typed.covering || null }),
  page: () => '/administration/care',
};

/** As the procedure takes it. */
const shortest = 20;
const longest = 4000;

const wordingName = (kind: string | undefined): string => `wording-${kind}`;

export const writeWording: AskedForm = {
  name: 'wording',
  about: ['kind'],
  names: ({ kind }) => [wordingName(kind)],
  missing: (typed, { kind }) => {
    const field = wordingName(kind);
    const count = (typed[field] ?? '').trim().length;
    return count < shortest || count > longest
      ? [{ field, text: say('wording.length', { least: shortest, most: longest, count }) }]
      : [];
  },
  path: 'admin.care.writeWording',
  input: (typed, { kind }) => ({ kind: kind as ConsentKind, text: typed[wordingName(kind)] }),
  page: () => '/administration/care',
};

const kindsOfStaff = ['clinician', 'both', 'administrator', 'reception'] as const;
export type KindOfStaff = (typeof kindsOfStaff)[number];

const rolesOf = (kind: string | undefined) => ({
  role: kind === 'both' ? 'clinician' : kind,
  administers: kind === 'both' || kind === 'administrator',
});

export const addStaff: AskedForm = {
  name: 'staff',
  about: [],
  names: () => ['name', 'email', 'kind'],
  missing: ({ name = '', email = '', kind = '' }) => [
    ...(name.trim().length < 2 ? [{ field: 'name', text: say('no-name') }] : []),
    ...(isAddressLike(email) ? [] : [{ field: 'email', text: say('no-email') }]),
    ...((kindsOfStaff as readonly string[]).includes(kind) ? [] : [{ field: 'kind', text: say('no-kind') }]),
  ],
  path: 'admin.staff.add',
  input: ({ name, email, kind }) => ({ name, email, ...rolesOf(kind) }),
  page: () => '/administration',
  // Made for handing over, and shown once.
  done: (answer, { name = '' }) =>
    `${say('handed-over', { name })}: ${(answer as { readonly passphrase: string }).passphrase} ${say('handed-over-note')}`,
};
