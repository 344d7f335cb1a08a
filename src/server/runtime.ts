/**
 * The one running instance: settings, store, keys, clock and sign-in. Opened lazily, on the first
 * request or by the server's start; importing this module opens nothing.
 */
import path from 'node:path';
import type { Person } from '#api/person.ts';
import { readEnvironment } from '#commands/environment.mjs';
import { CannotGoOn } from '#commands/say.mjs';
import { requireKeyAtFlush } from '#data/audit/audit.ts';
import { dayAt } from '#data/civil-time.ts';
import { migrateStore, removeStore, schemaRefused } from '#data/database/migrate.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import { clinicOf } from '#data/patients/people.ts';
import { demoNow } from '#demo/clinic.ts';
import { type ClinicalClock, clinicalClock } from './clock.ts';
import { holdsOnlyTheDemo, inventedClinics, isDemoFile } from './demo-file.ts';
import { requireOwnFiles } from './file-modes.ts';
import { type Keys, keysFor, noteKeys, requireAuditKey } from './keys.ts';
import { type Auth, makeAuth } from './sign-in/auth.ts';
import { unusableFile } from './unusable-file.ts';

type Settings = ReturnType<typeof readEnvironment>;

export interface Runtime {
  readonly settings: Settings;
  readonly store: Store;
  readonly keys: Keys;
  readonly clock: ClinicalClock;
  readonly auth: Auth;
}

const migrations = () => path.join(process.cwd(), 'drizzle');

/** A store on a file whose schema this release can use. A demo of an earlier baseline begins afresh. */
const storeFor = (settings: Settings): Store => {
  const store = openStore(settings.DATABASE_FILE);
  const refused = schemaRefused(store, migrations());
  if (!refused) return store;
  if (refused.found === 'earlier-baseline' && settings.DEMO && holdsOnlyTheDemo(store)) {
    removeStore(store);
    return storeFor(settings);
  }
  store.close();
  throw new CannotGoOn(refused.reason);
};

/** What a file needs before it is used, in an order in which a start that is refused has changed nothing. */
const prepared = (store: Store, settings: Settings): Keys => {
  const { DATABASE_FILE, AUDIT_KEY_FILE, ENCRYPTION_KEY_FILE } = settings;
  // Invented people need no guard, and a demo file may be older than this rule.
  if (!isDemoFile(store)) requireOwnFiles(DATABASE_FILE, [AUDIT_KEY_FILE, ENCRYPTION_KEY_FILE]);
  const keys = keysFor(store, settings);
  const migrated = migrateStore(store, migrations(), keys.audit);
  if (!migrated.ok) throw new CannotGoOn(migrated.reason);
  noteKeys(store, settings);
  return keys;
};

const storeWithKeys = (settings: Settings): { readonly store: Store; readonly keys: Keys } => {
  try {
    const store = storeFor(settings);
    try {
      return { store, keys: prepared(store, settings) };
    } catch (error) {
      store.close();
      throw error;
    }
  } catch (error) {
    throw unusableFile(settings.DATABASE_FILE, error);
  }
};

/** Opens a store on a file and brings it to this release's schema. Throws the reason when the file cannot be used. */
export const openRuntime = (settings: Settings): Runtime => {
  const { store, keys } = storeWithKeys(settings);
  requireKeyAtFlush(store, () => requireAuditKey(store, keys.audit));
  const from = settings.CLINIC_NOW ?? (settings.DEMO || isDemoFile(store) ? demoNow : null);
  const clock = clinicalClock(from === null ? null : Date.parse(from));
  const auth = makeAuth(store, {
    secret: keys.signIn,
    origin: settings.PUBLIC_ORIGIN,
    closedClinics: settings.DEMO ? [] : inventedClinics,
    context: () => ({ store, auditKey: keys.audit, now: clock.now() }),
  });
  return { settings, store, keys, clock, auth };
};

const held = globalThis as typeof globalThis & { loadgateRuntime?: Runtime };

export const runtime = (): Runtime => {
  held.loadgateRuntime ??= openRuntime(readEnvironment());
  return held.loadgateRuntime;
};

/** Clinic zone, read once per process and clinic: a change of zone needs a restart. */
const zones = new Map<string, string>();

export const zoneOf = async (at: Runtime, clinicId: string): Promise<string> => {
  const known = zones.get(`${at.store.file} ${clinicId}`);
  if (known) return known;
  const clinic = await clinicOf(at.store, clinicId);
  if (!clinic) throw new Error('The account names a clinic that does not exist.');
  zones.set(`${at.store.file} ${clinicId}`, clinic.zone);
  return clinic.zone;
};

/** What data functions need to know of a caller. */
export const accessFor = async (at: Runtime, person: Person) => {
  const now = at.clock.now();
  return {
    store: at.store,
    auditKey: at.keys.audit,
    clinicId: person.clinicId,
    actorId: person.userId,
    actorName: person.name,
    now,
    day: dayAt(now, await zoneOf(at, person.clinicId)),
  };
};
