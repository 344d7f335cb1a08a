/** The hashed files that the patient's kept pages need, read from what the build wrote. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** Pages that open without signal; the first is the one a phone starts at. */
export const keptPages = ['today', 'history', 'handout', 'messages'] as const;

const folderOf = (page: string): string => path.join('server', 'app', '(patient)', page);
const hashed = /static\/chunks\/[\w~./-]+?\.(?:js|css)/g;

const filesOfPage = (build: string, name: string): readonly string[] => {
  const page = path.join(build, folderOf(name), 'page');
  if (!existsSync(page)) return [];
  return [
    path.join(build, folderOf(name), 'page_client-reference-manifest.js'),
    ...readdirSync(page).map((name) => path.join(page, name)),
  ];
};

/** Only old browsers load these, and those run no worker. */
const polyfills = (build: string): readonly string[] => {
  const file = path.join(build, folderOf(keptPages[0]), 'page', 'build-manifest.json');
  if (!existsSync(file)) return [];
  return (JSON.parse(readFileSync(file, 'utf8')) as { polyfillFiles?: string[] }).polyfillFiles ?? [];
};

const namesIn = (file: string): readonly string[] =>
  existsSync(file) ? (readFileSync(file, 'utf8').match(hashed) ?? []) : [];

/** What is loaded later, such as a second language, is named only inside the files loaded at once. */
const withWhatTheyName = (build: string, names: readonly string[]): ReadonlySet<string> => {
  const found = new Set(names);
  for (const name of found) {
    if (name.endsWith('.js')) for (const next of namesIn(path.join(build, name))) found.add(next);
  }
  return found;
};

/** Addresses of every hashed file the patient's kept pages may load. */
export const assetsOfPatientPages = (build: string): readonly string[] => {
  const left = new Set(polyfills(build));
  const found = withWhatTheyName(
    build,
    keptPages.flatMap((name) => filesOfPage(build, name)).flatMap(namesIn),
  );
  return [...found]
    .filter((name) => !left.has(name))
    .sort()
    .map((name) => `/_next/${name}`);
};

export const buildId = (build: string): string => {
  const file = path.join(build, 'BUILD_ID');
  return existsSync(file) ? readFileSync(file, 'utf8').trim() : '';
};
