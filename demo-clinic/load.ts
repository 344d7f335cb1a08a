/** Fills an empty store with the demo clinic, in the order in which it all happened. */
import type { Store } from '#data/database/store.ts';
import { createClinic } from '#data/patients/people.ts';
import { writeOwnQuestionnaire } from './at-home.ts';
import {
  type DemoRole,
  demoClinic,
  demoNow,
  demoPassphrase,
  demoSignIns,
  otherClinic,
  reviewerCodeSecret,
} from './clinic.ts';
import { accessAt, type DemoContext, instantOf } from './context.ts';
import { groupsPlannedAt, planGroupHours } from './group-hours.ts';
import { writeMachines } from './machines.ts';
import { otherClinicStory } from './other-clinic.ts';
import { stories } from './patients.ts';
import type { Story } from './story.ts';
import { openRecord, tell } from './tell.ts';

interface DemoAccount {
  readonly email: string;
  readonly name: string;
  readonly clinicId: string;
  readonly role: DemoRole;
  readonly patientId: string | null;
  readonly password: string;
  /** Asks for a one-time code as well, made from this secret. */
  readonly codeSecret?: string;
}

export interface DemoTarget {
  readonly store: Store;
  readonly auditKey: Uint8Array;
  /** Opens a sign-in and answers its user id. */
  readonly openAccount: (account: DemoAccount) => Promise<string>;
  /** Nothing later than this instant has happened; left out = the demo's today. */
  readonly now?: number;
}

const signInOf = (email: string) => {
  const found = demoSignIns.find((one) => one.email === email);
  if (!found) throw new RangeError(`No demo sign-in ${email}`);
  return found;
};

const open = async (
  at: DemoTarget,
  email: string,
  clinicId: string,
  patientId: string | null,
  codeSecret?: string,
): Promise<{ readonly id: string; readonly name: string }> => {
  const { who, role } = signInOf(email);
  const account = { email, name: who, clinicId, role, patientId, password: demoPassphrase };
  const id = await at.openAccount(codeSecret === undefined ? account : { ...account, codeSecret });
  return { id, name: who };
};

/** A clinic is created well before its first story. */
const createdAt = Date.parse('2025-09-01T09:00:00+01:00');

const contextOf = async (
  at: DemoTarget,
  place: typeof demoClinic | typeof otherClinic,
  clinicianEmail: string,
): Promise<DemoContext> => {
  await createClinic(at.store, place, createdAt);
  return {
    store: at.store,
    auditKey: at.auditKey,
    clinicId: place.id,
    zone: place.zone,
    clinician: await open(at, clinicianEmail, place.id, null),
    now: Math.min(at.now ?? Number.POSITIVE_INFINITY, Date.parse(demoNow)),
    today: demoNow.slice(0, 10),
  };
};

const tellStory = async (at: DemoTarget, context: DemoContext, story: Story): Promise<void> => {
  if (instantOf(context, story, 0, '09:30') > context.now) return;
  await openRecord(context, story);
  const self = story.email === null ? null : await open(at, story.email, context.clinicId, story.id);
  await tell(context, story, self ?? { id: story.id, name: story.person.givenName });
};

export const loadDemoClinic = async (at: DemoTarget): Promise<void> => {
  const context = await contextOf(at, demoClinic, 'clinician@demo.invalid');
  await open(at, 'reviewer@demo.invalid', demoClinic.id, null, reviewerCodeSecret);
  const administrator = await open(at, 'admin@demo.invalid', demoClinic.id, null);
  await open(at, 'reception@demo.invalid', demoClinic.id, null);
  await writeOwnQuestionnaire(accessAt(context, administrator, createdAt));
  await writeMachines(accessAt(context, administrator, createdAt));
  for (const story of stories) await tellStory(at, context, story);
  const groupsAt = Date.parse(groupsPlannedAt);
  if (groupsAt <= context.now) await planGroupHours(accessAt(context, context.clinician, groupsAt));
  const other = await contextOf(at, otherClinic, 'other-clinic@demo.invalid');
  await tellStory(at, other, otherClinicStory);
};
