/** The settings that decisions rest on, each set stored once: what a decision names is found here. */
import { createHash } from 'node:crypto';
import { eq } from 'drizzle-orm';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Access } from '../access.ts';
import type { Db } from '../database/connection.ts';
import { insertRows } from '../database/insert-rows.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import { decision, decisionSettings } from '../schema/schema.ts';

/** Few, however long a clinic works: as many as its settings had versions. */
export const settingsIds = prepared((db) =>
  db.select({ id: decisionSettings.id }).from(decisionSettings).where(ofClinic(decisionSettings)),
);

/** Equal settings in another order are the same. */
export const inOrder = (settings: SettingValues): SettingValues =>
  Object.fromEntries(Object.entries(settings).sort(([a], [b]) => (a < b ? -1 : 1)));

/** Of a clinic: no row belongs to two. */
export const settingsIdOf = (clinicId: string, settings: SettingValues): string =>
  createHash('sha256')
    .update(JSON.stringify([clinicId, inOrder(settings)]))
    .digest('hex');

/** Stores what is not stored yet; the id of each in the same order. */
export const storeSettings = async (
  tx: Db,
  { clinicId }: Pick<Access, 'clinicId'>,
  made: readonly SettingValues[],
): Promise<readonly string[]> => {
  const ids = made.map((settings) => settingsIdOf(clinicId, settings));
  if (ids.length === 0) return ids;
  const known = new Set((await settingsIds(tx, { clinicId })).map(({ id }) => id));
  const rows = new Map(made.map((settings, place) => [ids[place]!, inOrder(settings)]));
  const fresh = [...rows].filter(([id]) => !known.has(id));
  insertRows(
    tx,
    decisionSettings,
    fresh.map(([id, settings]) => ({ id, clinicId, settings })),
  );
  return ids;
};

/** For a query over decisions that reads the settings of each. */
export const ofItsSettings = () => eq(decisionSettings.id, decision.settingsId);
