/** What is done to a clinic's file beside the saving of entries, and what has to hold however it was cut short. */
import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { archiveBefore } from '#data/audit/audit-archive.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { readManifest } from '#data/backup/manifest.ts';
import { differencesFrom } from '#data/backup/restore-backup.ts';
import { backupsIn, writeBackup } from '#data/backup/write-backup.ts';
import { findingsInFile } from '#data/database/file-check.mjs';
import { migrateStore } from '#data/database/migrate.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import { clinicIds } from '#data/patients/people.ts';

export const actsToKill = ['migration', 'backup', 'archive'] as const;
export type Act = (typeof actsToKill)[number];

const backupName = 'killed';
const foldersOfBackups = (file: string): readonly string[] =>
  [`${file}.copies`, `${file}.backups`].filter(existsSync);

/** All but the newest row of each chain, as after many years. */
const archiveAll = async (store: Store, auditKey: Uint8Array): Promise<void> => {
  const now = Date.now();
  for (const clinicId of await clinicIds(store)) {
    const access = { store, auditKey, clinicId, actorId: 'archive-audit', now };
    const [newest] = store.reader.client
      .prepare('SELECT max(at) AS at FROM audit WHERE clinic_id = ?')
      .all(clinicId) as { at: number }[];
    await archiveBefore(access, newest!.at + 1);
  }
};

export const doAct = async (act: Act, file: string, auditKey: Uint8Array, release: string): Promise<void> => {
  const store = openStore(file);
  try {
    if (act === 'migration') migrateStore(store, release, auditKey);
    else if (act === 'archive') await archiveAll(store, auditKey);
    else writeBackup(store, auditKey, { folder: `${file}.copies`, name: backupName, at: Date.now() });
  } finally {
    store.close();
  }
};

/** How many rows the chains have, stored and moved together; each has to hold to its end. */
export const rowsOfChains = async (
  store: Store,
  auditKey: Uint8Array,
): Promise<{ readonly rows: number; readonly findings: readonly string[] }> => {
  const findings: string[] = [];
  let rows = 0;
  for (const clinicId of await clinicIds(store)) {
    const verdict = await verifyChain(store, auditKey, clinicId);
    if (!verdict.ok) findings.push(`${clinicId}, row ${verdict.sequence}: ${verdict.finding}`);
    else if (verdict.away > 0) findings.push(`${clinicId}: ${verdict.away} moved rows are gone`);
    else rows += verdict.rows + verdict.archived;
  }
  return { rows, findings };
};

/** A backup that has its name is whole. */
const backupFindings = (file: string, auditKey: Uint8Array): readonly string[] =>
  foldersOfBackups(file)
    .flatMap((folder) => [backupName, 'before-.*-at'].flatMap((name) => namedLike(folder, name)))
    .flatMap((one) => {
      const read = readManifest(one, auditKey);
      if ('problem' in read) return [read.problem];
      return differencesFrom(read.manifest, one);
    });

const namedLike = (folder: string, name: string): readonly string[] => {
  const names = new Set(
    readdirSync(folder).flatMap((one) => new RegExp(`^(${name})-\\d{4}-`).exec(one)?.[1] ?? []),
  );
  return [...names].flatMap((one) => backupsIn(folder, one));
};

const unfinishedIn = (file: string): readonly string[] =>
  foldersOfBackups(file).flatMap((folder) =>
    readdirSync(folder)
      .filter((one) => one.includes('.unfinished'))
      .map((one) => `${path.join(folder, one)} was left`),
  );

/** What does not hold in a file that was cut short; `isDoneAgain` once the act was done to its end since. */
export const findingsAfter = async (
  file: string,
  auditKey: Uint8Array,
  leastRows: number,
  isDoneAgain: boolean,
): Promise<readonly string[]> => {
  const { damage, strays } = findingsInFile(file);
  if (damage.length > 0) return damage;
  const store = openStore(file);
  try {
    const { rows, findings } = await rowsOfChains(store, auditKey);
    return [
      ...strays,
      ...findings,
      ...(rows < leastRows ? [`${leastRows - rows} rows of the audit are gone`] : []),
      ...backupFindings(file, auditKey),
      ...(isDoneAgain ? unfinishedIn(file) : []),
    ];
  } finally {
    store.close();
  }
};
