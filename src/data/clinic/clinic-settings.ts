/** The clinic's own numbers, as versions. */
import { randomUUID } from 'node:crypto';
import { desc, eq } from 'drizzle-orm';
import type { ClinicSetting, SettingValues } from '#core/sources/clinic-setting.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { clinicChanged } from '../changed.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import { clinicSettingsVersion } from '../schema/schema.ts';

export const newestSettings = prepared((db) =>
  db
    .select({ settings: clinicSettingsVersion.settings })
    .from(clinicSettingsVersion)
    .where(ofClinic(clinicSettingsVersion))
    .orderBy(desc(clinicSettingsVersion.version))
    .limit(1),
);

/** One and the same, as are those of a version: what is worked out from settings is kept by them. */
const nothingSet: SettingValues = Object.freeze({});

export const settingVersions = prepared((db) =>
  db
    .select({ settings: clinicSettingsVersion.settings, changedAt: clinicSettingsVersion.changedAt })
    .from(clinicSettingsVersion)
    .where(ofClinic(clinicSettingsVersion))
    .orderBy(desc(clinicSettingsVersion.version)),
);

type Asking = Pick<Access, 'store' | 'clinicId' | 'knownAt'>;

/** Values the clinic has set; those it has not set are left out and take their defaults. */
export const settingsOf = async (access: Asking): Promise<SettingValues> => {
  const { knownAt } = access;
  if (knownAt !== undefined) {
    const versions = await settingVersions(access.store.read, { clinicId: access.clinicId });
    return versions.find(({ changedAt }) => changedAt <= knownAt)?.settings ?? nothingSet;
  }
  const [row] = await newestSettings(access.store.read, { clinicId: access.clinicId });
  return row?.settings ?? nothingSet;
};

/** One number as it holds now: the clinic's own, or the default of the list it stands in. */
export const settingValue = async (
  access: Asking,
  list: readonly ClinicSetting[],
  id: string,
): Promise<number> => {
  const setting = list.find((one) => one.id === id);
  if (!setting) throw new RangeError(`There is no clinic setting named ${id}.`);
  return (await settingsOf(access))[id] ?? setting.default;
};

export interface SettingChange {
  readonly version: number;
  readonly settings: SettingValues;
  readonly changedAt: number;
  readonly byName: string;
  readonly reason: string;
}

/** Every version, newest first. */
export const settingChanges = async (
  access: Pick<Access, 'store' | 'clinicId'>,
): Promise<readonly SettingChange[]> =>
  access.store.read
    .select({
      version: clinicSettingsVersion.version,
      settings: clinicSettingsVersion.settings,
      changedAt: clinicSettingsVersion.changedAt,
      byName: clinicSettingsVersion.byName,
      reason: clinicSettingsVersion.reason,
    })
    .from(clinicSettingsVersion)
    .where(eq(clinicSettingsVersion.clinicId, access.clinicId))
    .orderBy(desc(clinicSettingsVersion.version));

/** Values by setting; null is back to the default. */
export type SettingEntries = Readonly<Record<string, number | null>>;

const withChanges = (own: SettingValues, changes: SettingEntries): SettingValues => {
  const merged: SettingEntries = { ...own, ...changes };
  return Object.fromEntries(
    Object.entries(merged).filter((entry): entry is [string, number] => entry[1] !== null),
  );
};

export type SettingsSaved =
  | { readonly version: number }
  /** Settings that no longer are as they were seen; nothing was saved. */
  | { readonly changedMeanwhile: readonly string[] };

/**
 * Changes the settings named and no other, so that what a colleague changed meanwhile stays. `seen` is
 * what stood on the page of whoever changes them; left out, nothing is compared.
 */
export const saveSettings = (
  access: Access,
  changes: SettingEntries,
  reason: string,
  seen: SettingEntries = {},
): Promise<SettingsSaved> =>
  access.store.write(async (tx) => {
    const [last] = await tx
      .select({ version: clinicSettingsVersion.version, settings: clinicSettingsVersion.settings })
      .from(clinicSettingsVersion)
      .where(eq(clinicSettingsVersion.clinicId, access.clinicId))
      .orderBy(desc(clinicSettingsVersion.version))
      .limit(1);
    const own = last?.settings ?? {};
    const changedMeanwhile = Object.keys(seen).filter((id) => (own[id] ?? null) !== seen[id]);
    if (changedMeanwhile.length > 0) return { changedMeanwhile };
    const version = (last?.version ?? 0) + 1;
    const id = randomUUID();
    await tx.insert(clinicSettingsVersion).values({
      id,
      clinicId: access.clinicId,
      version,
      settings: withChanges(own, changes),
      changedAt: access.now,
      changedBy: access.actorId,
      byName: access.actorName,
      reason,
    });
    // Due dates rest on these numbers.
    clinicChanged(access);
    await auditWrite(tx, access, 'clinic-settings', {
      subjectId: id,
      detail: { version, fields: Object.keys(changes) },
    });
    return { version };
  });
