/**
 * Makes sure that the packages of the lock file are installed. Uses Node's own modules only,
 * because nothing else may be there yet.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { inRoot, root } from './paths.mjs';
import { CannotGoOn, say } from './say.mjs';

const oldestNode = [20, 19];
const stampFile = inRoot('node_modules', '.loadgate-setup.json');

const checkNode = () => {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [needMajor = 0, needMinor = 0] = oldestNode;
  if (major < needMajor || (major === needMajor && minor < needMinor)) {
    throw new CannotGoOn(
      `Node ${oldestNode.join('.')} or newer is needed; this is ${process.versions.node}. Install a newer Node and run the command again.`,
    );
  }
};

/** Native packages are chosen by platform, so a copied folder must not pass for installed. */
const platform = () => `${process.platform} ${process.arch} node-${process.versions.node.split('.')[0]}`;

const lockHash = () =>
  createHash('sha256')
    .update(readFileSync(inRoot('package-lock.json')))
    .digest('hex');

const readJson = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : null);

/** npm notes what it installed; when that agrees with the lock file nothing needs installing. */
const npmAgrees = () => {
  const installed = readJson(inRoot('node_modules', '.package-lock.json'))?.packages;
  if (!installed) return false;
  const wanted = readJson(inRoot('package-lock.json')).packages;
  return Object.entries(wanted).every(
    ([place, entry]) =>
      place === '' || (installed[place]?.version ?? (entry.optional && entry.version)) === entry.version,
  );
};

const isInstalled = (stamp) => {
  if (stamp && stamp.platform !== platform()) return false;
  return stamp?.lock === lockHash() || npmAgrees();
};

const install = () => {
  say('installing packages (npm ci), about a minute …');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const { status, error } = spawnSync(npm, ['ci', '--ignore-scripts', '--no-audit', '--no-fund'], {
    cwd: root,
    // npm's own words go to standard error: standard output belongs to the command's results.
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (error || status !== 0) {
    const cause = error ? error.message : `npm ended with code ${status}`;
    throw new CannotGoOn(
      `The packages could not be installed: ${cause}. Put that right and run the command again.`,
    );
  }
};

/** Checks Node, then installs when the packages are not those of the lock file. Quiet when all is well. */
export const setUp = () => {
  checkNode();
  const stamp = readJson(stampFile);
  const isDone = isInstalled(stamp);
  if (!isDone) install();
  const next = { lock: lockHash(), platform: platform() };
  if (stamp?.lock !== next.lock || stamp?.platform !== next.platform) {
    writeFileSync(stampFile, `${JSON.stringify(next)}\n`);
  }
};

/** What child processes see: nobody is called home to. */
export const quietEnvironment = {
  NEXT_TELEMETRY_DISABLED: '1',
  DRIZZLE_KIT_TELEMETRY: '0',
  BETTER_AUTH_TELEMETRY: '0',
};
