/** Builds the pages when their sources changed since the last build; says so either way. */
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { inRoot, root } from './paths.mjs';
import { CannotGoOn, runCommand, say } from './say.mjs';
import { quietEnvironment, setUp } from './setup.mjs';

const stampFile = inRoot('.next', 'loadgate-build');
const builtFrom = [
  'src',
  'demo-clinic',
  'drizzle',
  'next.config.js',
  'tsconfig.json',
  'package.json',
  'package-lock.json',
];

const filesUnder = (place) => {
  const full = inRoot(place);
  if (!existsSync(full)) return [];
  const entries = readdirSync(path.dirname(full), { withFileTypes: true });
  const isFolder = entries.find((entry) => entry.name === path.basename(full))?.isDirectory();
  if (!isFolder) return [place];
  return readdirSync(full, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(root, path.join(entry.parentPath ?? entry.path, entry.name)))
    .sort();
};

/** A hash over every file the build reads, with the Node version that reads them. */
const sourcesHash = () => {
  const hash = createHash('sha256').update(`node ${process.versions.node}\n`);
  // The screenshots are made from what was built, and nothing built shows them.
  const isRead = (file) => !file.startsWith(path.join('demo-clinic', 'screenshots'));
  for (const file of builtFrom.flatMap(filesUnder).filter(isRead)) {
    hash
      .update(`${file}\n`)
      .update(readFileSync(inRoot(file)))
      .update('\n');
  }
  return hash.digest('hex');
};

const isBuilt = (hash) =>
  existsSync(inRoot('.next', 'BUILD_ID')) &&
  existsSync(stampFile) &&
  readFileSync(stampFile, 'utf8') === hash;

/**
 * What the build sees of the environment: a page it tries out may open the database, and that must be none
 * with records in it. Beside a running server the file would be brought to a schema that server does not know.
 * @param {Readonly<Record<string, string | undefined>>} env
 * @param {string} folder an empty one, removed after the build
 */
export const environmentForBuild = (env, folder) => {
  const { AUDIT_KEY_FILE: _audit, ENCRYPTION_KEY_FILE: _encryption, CLINIC_NOW: _now, ...others } = env;
  return {
    ...others,
    ...quietEnvironment,
    NODE_ENV: 'production',
    DATABASE_FILE: path.join(folder, 'none.sqlite'),
    DEMO: '0',
    JOBS: '0',
  };
};

const nextBuild = (folder) =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [inRoot('node_modules', 'next', 'dist', 'bin', 'next'), 'build'], {
      cwd: root,
      env: environmentForBuild(process.env, folder),
      stdio: ['ignore', 2, 2],
    });
    child.on('error', reject);
    child.on('close', resolve);
  });

/** Builds unless the last build was made from the same files. */
export const build = async () => {
  const hash = sourcesHash();
  if (isBuilt(hash)) {
    say('the pages are built already.');
    return;
  }
  say('building the pages, about half a minute …');
  rmSync(stampFile, { force: true });
  const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-build-'));
  const code = await nextBuild(folder).finally(() => rmSync(folder, { recursive: true, force: true }));
  if (code !== 0) throw new CannotGoOn('The pages could not be built; the reason stands above.');
  // The build may write to tsconfig.json, so the hash is taken again.
  writeFileSync(stampFile, sourcesHash());
};

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await runCommand(async () => {
    setUp();
    await build();
  });
}
