/**
 * The whole check in one command. Two lanes run side by side; at the end stand a table of the
 * parts with their times against tests/budgets.json, and one line with the sums.
 *   npm test                      everything
 *   npm test -- --only core,desk  these parts
 * A time over its budget is shown and fails nothing.
 */
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { findBrowser } from '../browser.mjs';
import { inRoot, root } from '../paths.mjs';
import { CannotGoOn, runCommand } from '../say.mjs';
import { quietEnvironment, setUp } from '../setup.mjs';
import { lanes } from './test-parts.mjs';
import { closingLine, exitCodeOf, failOnMissingTool, failuresText, tableOf } from './test-report.mjs';

const allParts = lanes.flat().map((part) => part.name);
const isCi = process.env.CI === 'true' || process.env.CI === '1';

const wantedParts = (args) => {
  if (args.length === 0) return allParts;
  const [flag, names = ''] = args;
  const wanted = names.split(',');
  if (flag !== '--only' || args.length !== 2 || !wanted.every((name) => allParts.includes(name))) {
    throw new CannotGoOn(`Usage: npm test -- --only ${allParts.join(',')}`, 2);
  }
  // The browser tests drive what was built.
  return wanted.includes('browser') ? [...wanted, 'build'] : wanted;
};

const children = new Set();

/** Starts one Node program of a part; each line it prints carries the part's name. */
const starter = (part) => (file, args, env) =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [file, ...args], {
      cwd: root,
      env: { ...process.env, ...quietEnvironment, NO_COLOR: '1', ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    children.add(child);
    for (const stream of [child.stdout, child.stderr]) {
      createInterface({ input: stream }).on('line', (line) => console.log(`${part.padEnd(7)} | ${line}`));
    }
    child.on('error', reject);
    child.on('close', (code) => {
      children.delete(child);
      resolve(code ?? 1);
    });
  });

const runPart = async (part, state) => {
  if (!part.exists())
    return { name: part.name, seconds: 0, passed: 0, failed: 0, skipped: 0, note: 'nothing here yet' };
  console.log(`== ${part.name}: started`);
  const began = performance.now();
  const counts = failOnMissingTool(await part.run(starter(part.name), state), isCi);
  const seconds = (performance.now() - began) / 1000;
  console.log(`== ${part.name}: ${counts.failed > 0 ? 'FAILED' : 'done'} in ${seconds.toFixed(1)} s`);
  return { name: part.name, seconds, ...counts };
};

const runLane = async (lane, wanted, state) => {
  const results = [];
  for (const part of lane) if (wanted.includes(part.name)) results.push(await runPart(part, state));
  return results;
};

/** `read` holds back the build until the types of the routes have been read, where they are read at all. */
const typesOnce = (wanted) => {
  let done = () => {};
  const read = new Promise((resolve) => {
    done = resolve;
  });
  if (!wanted.includes('checks')) done();
  return { read, done };
};

const endChildrenWithThisProcess = () => {
  for (const [signal, code] of [
    ['SIGINT', 130],
    ['SIGTERM', 143],
  ]) {
    process.on(signal, () => {
      for (const child of children) child.kill('SIGTERM');
      process.exit(code);
    });
  }
};

await runCommand(async () => {
  const wanted = wantedParts(process.argv.slice(2));
  setUp();
  endChildrenWithThisProcess();
  const budgets = JSON.parse(readFileSync(inRoot('tests', 'budgets.json'), 'utf8'));
  const hasBrowserPart =
    wanted.includes('browser') && lanes.flat().some((p) => p.name === 'browser' && p.exists());
  const types = typesOnce(wanted);
  const state = { browser: hasBrowserPart ? findBrowser() : null, isBuilt: true, types };
  const began = performance.now();
  const results = (await Promise.all(lanes.map((lane) => runLane(lane, wanted, state)))).flat();
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  const failures = failuresText(results);
  if (failures !== '') console.log(`\n${failures}`);
  console.log(`\n${tableOf(results, budgets)}`);
  console.log(`all parts ${seconds} s; generated cases use seed 20260131; no test is tried twice`);
  console.log(closingLine(results));
  return exitCodeOf(results);
});
