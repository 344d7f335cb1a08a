/**
 * Before every test file: passphrases are hashed by the same function at a sixty-fourth of its work. Hundreds
 * are, and none of these tests is about the cost; the browser's tests and the commands run whole pay all of it.
 */
import crypto from 'node:crypto';
import { syncBuiltinESMExports } from 'node:module';

type Scrypt = (...args: Parameters<typeof crypto.scrypt>) => void;

const known = crypto.scrypt as Scrypt & { readonly isQuick?: true };

if (!known.isQuick) {
  const quick: Scrypt = (text, salt, length, options, done) =>
    known(text, salt, length, { ...options, N: 256 }, done);
  crypto.scrypt = Object.assign(quick, { isQuick: true }) as unknown as typeof crypto.scrypt;
  syncBuiltinESMExports();
}
