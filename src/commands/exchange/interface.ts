/** Writes the document of the interface for other programs, which the server also gives at `/api/programs/v1/openapi.json`. */
import { existsSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { interfaceDocument } from '#api/programs/document.ts';
import { CannotGoOn } from '../say.mjs';

const usage = `Usage: npm run --silent interface -- [--out FILE]
Writes the OpenAPI 3.1 document of the interface for other programs, to the screen where no file is named.
What is there already is never written over. Ends with 0, or 2 when the command was called in a wrong way.`;

const askedIn = (args: readonly string[]) => {
  try {
    const options = { out: { type: 'string' }, help: { type: 'boolean' } } as const;
    return parseArgs({ args: [...args], options }).values;
  } catch {
    throw new CannotGoOn(usage, 2);
  }
};

export const run = async (args: readonly string[]): Promise<number> => {
  const { out, help } = askedIn(args);
  if (help) {
    console.log(usage);
    return 0;
  }
  const text = JSON.stringify(interfaceDocument(), null, 1);
  if (out === undefined) console.log(text);
  else {
    if (existsSync(out)) throw new CannotGoOn(`${out} is there already. Name one that is not there yet.`, 2);
    writeFileSync(out, `${text}\n`, { flag: 'wx' });
    console.log(out);
  }
  return 0;
};
