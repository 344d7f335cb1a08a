/**
 * `npm run prove-rules`: runs each rule's own tests and the generated cases, and writes what the page of each rule
 * shows of them. Nothing is written where a test fails or the table stated a second time disagrees; exit 1 then.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { newestVersion } from '#core/decision/settings.ts';
import type { ProofRow, ProofRun } from '#simulation/kept/proof-row.ts';
import { ruleCounts } from '#simulation/proof/rule-counts.ts';
import { inRoot } from '../paths.mjs';
import { digestOfRule, testOfRule } from './prove/rule-digest.ts';

const generated = { seed: 20_260_131, facts: 40_000, people: 100 } as const;

interface Report {
  readonly numFailedTests: number;
  readonly testResults: readonly {
    readonly name: string;
    readonly assertionResults: readonly { readonly status: string }[];
  }[];
}

const testsRun = (): Report => {
  const folder = mkdtempSync(path.join(tmpdir(), 'prove-rules-'));
  const to = path.join(folder, 'report.json');
  try {
    spawnSync(
      process.execPath,
      [
        inRoot('node_modules', 'vitest', 'vitest.mjs'),
        ...['run', '--config', inRoot('tests', 'vitest.config.ts'), 'tests/core/decision/rules'],
        ...['--reporter', 'json', '--outputFile', to],
      ],
      { cwd: inRoot(), stdio: 'ignore' },
    );
    return JSON.parse(readFileSync(to, 'utf8')) as Report;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

const passedIn = ({ testResults }: Report, file: string): number =>
  testResults
    .filter(({ name }) => name.replaceAll('\\', '/').endsWith(file))
    .flatMap(({ assertionResults }) => assertionResults)
    .filter(({ status }) => status === 'passed').length;

const literal = (row: ProofRow): string =>
  `  [${row.map((value) => (typeof value === 'string' ? `'${value}'` : value)).join(', ')}],`;

const write = (run: ProofRun, rows: readonly ProofRow[]): void =>
  writeFileSync(
    inRoot('src', 'simulation', 'kept', 'rule-proof.ts'),
    [
      "import type { ProofRow, ProofRun } from './proof-row.ts';",
      '',
      '/** Written by `npm run prove-rules`. */',
      `export const proofRun: ProofRun = {`,
      ...Object.entries(run).map(
        ([name, value]) => `  ${name}: ${typeof value === 'string' ? `'${value}'` : value},`,
      ),
      '};',
      '',
      'export const proofRows: readonly ProofRow[] = [',
      ...rows.map(literal),
      '];',
      '',
    ].join('\n'),
  );

export const run = async (): Promise<number> => {
  const report = testsRun();
  const counts = ruleCounts(generated);
  const rows = counts.rows.map(({ rule, fired, firedUnchanged, decidedUnchanged }): ProofRow => {
    const file = testOfRule(rule);
    const group = path.basename(path.dirname(file));
    const counted = [fired, firedUnchanged, decidedUnchanged] as const;
    return [rule, group, passedIn(report, file), ...counted, digestOfRule(rule)];
  });
  const untested = rows.filter(([, , tests]) => tests === 0).map(([rule]) => rule);
  const { disagreements, looks } = counts;
  console.log(`${report.numFailedTests} tests failed, ${disagreements} disagreements, ${looks} looks`);
  if (report.numFailedTests + disagreements + untested.length > 0) {
    console.error(`Nothing was written. Without a test of its own: ${untested.join(', ') || 'none'}.`);
    return 1;
  }
  const ranOn = new Date().toISOString().slice(0, 10);
  write({ ranOn, version: newestVersion, ...generated, disagreements, looks }, rows);
  return 0;
};
