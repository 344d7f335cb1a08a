/** A digest of all that a rule’s proof rests on: where it differs, the proof is of something else. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { inRoot } from '../../paths.mjs';
import { filesUnder } from '../mutants/reached-by.ts';

/** The rule’s file, by its id. */
const fileOfRule = (rule: string): string => {
  const name = `/${rule.toLowerCase()}.ts`;
  const file = filesUnder('src/core/decision/rules', '.ts').find((one) => one.endsWith(name));
  if (!file) throw new Error(`There is no file of rule ${rule}.`);
  return file;
};

export const testOfRule = (rule: string): string =>
  fileOfRule(rule).replace(/^src/, 'tests').replace(/\.ts$/, '.test.ts');

const shared = [
  'tests/core/decision/rules/thresholds.ts',
  'tests/core/decision/base-facts.ts',
  'src/core/decision/independent/independent-table.ts',
  'src/core/decision/independent/independent-table-2.ts',
];

export const digestOfRule = (rule: string): string => {
  const hash = createHash('sha256');
  for (const file of [fileOfRule(rule), testOfRule(rule), ...shared]) hash.update(readFileSync(inRoot(file)));
  return hash.digest('hex').slice(0, 16);
};
