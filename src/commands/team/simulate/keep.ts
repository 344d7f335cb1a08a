/** Runs every arm and the oracle's line on both models and writes what the rules page shows of it. */
import { writeFileSync } from 'node:fs';
import { engineDefaults } from '#core/decision/settings.ts';
import { type KeptRow, type KeptRun, keptRowOf } from '#simulation/kept/kept-row.ts';
import { keptSettings } from '#simulation/kept/kept-trial.ts';
import { secondModel } from '#simulation/second-model/model.ts';
import { armsWithFrontier } from '#simulation/trial/arms.ts';
import { firstModel, trialRows } from '#simulation/trial/trial.ts';
import { inRoot } from '../../paths.mjs';

const people = 20;
const weeks = 12;

/** Text as the formatter of the project leaves it. */
const literal = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(literal).join(', ')}]`;
  return typeof value === 'string' ? `'${value}'` : String(value);
};

const write = (name: string, type: string, constant: string, value: string): void =>
  writeFileSync(
    inRoot('src', 'simulation', 'kept', `${name}.ts`),
    [
      `import type { ${type} } from './kept-row.ts';`,
      '',
      '/** Written by `npm run simulate -- --keep`. */',
      `export const ${constant} = ${value};`,
      '',
    ].join('\n'),
  );

const rowsText = (rows: readonly KeptRow[]): string =>
  `[\n${rows.map((row) => `  ${literal(row)},\n`).join('')}]`;

export const keepTrial = (seed: number): void => {
  const run: KeptRun = { seed, people, weeks, ranOn: new Date().toISOString().slice(0, 10) };
  for (const [name, model] of Object.entries({ first: firstModel, second: secondModel })) {
    const rows = armsWithFrontier(engineDefaults).flatMap((arm) => {
      console.log(`${name} model: ${arm.title}`);
      return trialRows(arm, keptSettings(run), model).map(keptRowOf);
    });
    write(`${name}-rows`, 'KeptRow', `${name}Rows: readonly KeptRow[]`, rowsText(rows));
  }
  const { ranOn } = run;
  const told = `{ seed: ${seed}, people: ${people}, weeks: ${weeks}, ranOn: '${ranOn}' }`;
  write('kept-run', 'KeptRun', 'keptRun: KeptRun', told);
};
