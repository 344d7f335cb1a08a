/** What a fault of the database file means for whoever starts the server, and the way out. */
import { CannotGoOn } from '#commands/say.mjs';

const restore = 'Stop every program that uses it, and put a backup in its place.';

const meanings: readonly (readonly [code: RegExp, meaning: string])[] = [
  [/^SQLITE_NOTADB/, `It is not a database, or its beginning was overwritten. ${restore}`],
  [/^SQLITE_CORRUPT/, `It is damaged or was cut short. ${restore}`],
  [
    /^SQLITE_(READONLY|PERM)/,
    'It cannot be written to. Give the user the server runs as the right to write.',
  ],
  [
    /^(SQLITE_CANTOPEN|E[A-Z]+$)/,
    'It cannot be opened. Look whether its folder and that of its keys are there and may be used.',
  ],
  [/^SQLITE_(BUSY|LOCKED)/, 'Another program holds it locked. End that one, then start again.'],
  [/^SQLITE_FULL/, 'The disk is full. Make room, then start again.'],
  [/^SQLITE_IOERR/, `The disk does not give it back as it should. ${restore}`],
];

/** A fault of the file as a reason in words; any other fault as it is. */
export const unusableFile = (file: string, error: unknown): unknown => {
  if (!(error instanceof Error) || error instanceof CannotGoOn) return error;
  const code = (error as { readonly code?: unknown }).code;
  if (typeof code !== 'string' || !/^(SQLITE_|E[A-Z]+$)/.test(code)) return error;
  const [, meaning = restore] = meanings.find(([one]) => one.test(code)) ?? [];
  return new CannotGoOn(`The database file ${file} cannot be used: ${error.message} (${code}). ${meaning}`);
};
