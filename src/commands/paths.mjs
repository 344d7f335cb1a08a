/** Where things are, for the commands: everything hangs on the repository's root. */
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** @param {...string} parts */
export const inRoot = (...parts) => path.join(root, ...parts);
