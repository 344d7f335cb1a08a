/** A backup as its parts: an encrypted one is opened beside the file it is wanted for, and what was opened goes again. */
import { mkdirSync, readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { encryptedWith } from '#data/backup/encrypted-file.ts';
import { decryptFiles, Unopened } from '#data/backup/open-encrypted.ts';
import { keyFrom } from '#server/keys.ts';
import { CannotGoOn } from '../say.mjs';

const wayOut: Readonly<Record<string, string>> = {
  key: 'Name the file of the key it was made with by --key, or type that key back from its printed page: npm run keys -- --type-back backup --to FILE',
  bytes: 'Take another backup, or another copy of this one.',
};

const opened = (backup: string, folder: string, keyFile: string | null): string => {
  if (keyFile === null) {
    throw new CannotGoOn(`${backup} is encrypted, and no key is named. ${wayOut.key}`, 2);
  }
  try {
    decryptFiles(backup, folder, keyFrom(keyFile));
  } catch (error) {
    if (!(error instanceof Unopened)) throw error;
    const way = error.is === 'other-key' ? wayOut.key : wayOut.bytes;
    throw new CannotGoOn(`${backup} was not opened: ${error.message}. ${way}`);
  }
  const name = readdirSync(folder).find((one) => one.endsWith('.sqlite'));
  if (!name) throw new CannotGoOn(`${backup} holds no database. ${wayOut.bytes}`);
  return path.join(folder, name);
};

/** `beside`: the database whose disk may hold it in the clear. */
export const withUnpacked = async <T>(
  backup: string,
  { beside, keyFile }: { readonly beside: string; readonly keyFile: string | null },
  work: (file: string) => Promise<T>,
): Promise<T> => {
  if (encryptedWith(backup) === null) return work(backup);
  const folder = `${beside}.unpacked`;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  try {
    return await work(opened(backup, folder, keyFile));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
