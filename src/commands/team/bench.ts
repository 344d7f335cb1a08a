/**
 * `npm run bench -- [--only NAME] [--patients N] [--sessions N] [--minutes N] [--json FILE]`: how fast
 * the product is, as ratios against doing the same without it. Each part runs in a process of its own,
 * so that its peak memory is its own. Exit 1 on a missed bar, 2 on wrong use.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { copyFileSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { inRoot, root } from '../paths.mjs';
import { say } from '../say.mjs';
import { benchFolder } from './bench/group/make-group.ts';
import { growthOf, type Options, planOf, readOptions, usage } from './bench/options.ts';
import type { Measured, Part } from './bench/part.ts';
import { isMissed } from './bench/part.ts';
import { batchCommandPart } from './bench/parts/batch-command.ts';
import { chartPart } from './bench/parts/chart.ts';
import { clientsPart } from './bench/parts/clients.ts';
import { exchangePart } from './bench/parts/exchange.ts';
import { firstPaintPart } from './bench/parts/first-paint.ts';
import { growthFile, growthPart } from './bench/parts/growth.ts';
import { pageWeightPart } from './bench/parts/page-weight.ts';
import { paperPart } from './bench/parts/paper.ts';
import { recordPart, reviewPart } from './bench/parts/record.ts';
import { renderedPagesPart } from './bench/parts/rendered-pages.ts';
import { replayPart } from './bench/parts/replay.ts';
import { savedAndDecidedPart, savePart } from './bench/parts/save.ts';
import { tapPart } from './bench/parts/tap.ts';
import { worklistPart } from './bench/parts/worklist.ts';
import { jsonOf, lastLine, type Told, tableOf } from './bench/report.ts';

const parts: readonly Part[] = [
  worklistPart,
  recordPart,
  reviewPart,
  chartPart,
  paperPart,
  savePart,
  savedAndDecidedPart,
  clientsPart,
  growthPart,
  replayPart,
  batchCommandPart,
  exchangePart,
  renderedPagesPart,
  pageWeightPart,
  firstPaintPart,
  tapPart,
];

const runHere = async (part: Part, options: Options): Promise<Told> => {
  const until = performance.now() + (options.minutes * 60_000) / (options.only ? 1 : parts.length);
  const measured = await part.run({ plan: planOf(options), growth: growthOf(options), until });
  const peak = Math.round(process.resourceUsage().maxRSS / 1024);
  return { measured, peakMb: { [part.name]: peak } };
};

/** The part in a process of its own; what it found comes back in a file. */
const runApart = async (part: Part, options: Options): Promise<Told> => {
  const file = path.join(benchFolder, `part-${part.name}.json`);
  const { patients, sessions, minutes } = options;
  const sizes = ['--patients', patients, '--sessions', sessions, '--minutes', minutes / parts.length];
  const args = ['bench', '--only', part.name, ...sizes.map(String), '--json', file];
  rmSync(file, { force: true });
  const child = spawn(process.execPath, [inRoot('src', 'commands', 'run.mjs'), ...args], {
    cwd: root,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  const [code] = await once(child, 'close');
  if (!existsSync(file)) {
    const broken: Measured = { part: part.name, title: part.about, bar: null, paired: null, figures: {} };
    return {
      measured: [{ ...broken, failed: true, figures: { 'exit code': code ?? 'killed' } }],
      peakMb: {},
    };
  }
  const told = JSON.parse(readFileSync(file, 'utf8')) as Told;
  rmSync(file);
  return told;
};

const runAll = async (options: Options): Promise<Told> => {
  const told: Told[] = [];
  for (const part of parts) {
    say(`${part.about} …`);
    told.push(await runApart(part, options));
  }
  return {
    measured: told.flatMap((one) => one.measured),
    peakMb: Object.assign({}, ...told.map((one) => one.peakMb)),
  };
};

export const run = async (args: readonly string[]): Promise<number> => {
  const options = readOptions(args);
  const part = parts.find((one) => one.name === options?.only);
  if (!options || (options.only !== null && !part)) {
    process.stderr.write(usage(parts.map((one) => one.name)));
    return 2;
  }
  mkdirSync(benchFolder, { recursive: true });
  const told = part ? await runHere(part, options) : await runAll(options);
  if (options.json) {
    writeFileSync(options.json, jsonOf(told, new Date().toISOString()));
    const hasCurves = told.measured.some((row) => row.part === growthPart.name && !row.failed);
    if (hasCurves) copyFileSync(growthFile, options.json.replace(/(\.json)?$/, '-growth.svg'));
  }
  process.stdout.write(`${tableOf(told)}\n\n${lastLine(told)}\n`);
  return told.measured.some(isMissed) ? 1 : 0;
};
