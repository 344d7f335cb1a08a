/**
 * The service worker of the patient's page: a short script of ours with the list of hashed files that
 * the page needs, read from what the build wrote. It keeps that one document and those files; answers
 * of the API and the clinic's pages are never looked at.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

const pageFolder = path.join('server', 'app', '(patient)', 'today');
const hashed = /static\/chunks\/[\w~./-]+?\.(?:js|css)/g;

const filesOfPage = (build: string): readonly string[] => {
  const page = path.join(build, pageFolder, 'page');
  if (!existsSync(page)) return [];
  return [
    path.join(build, pageFolder, 'page_client-reference-manifest.js'),
    ...readdirSync(page).map((name) => path.join(page, name)),
  ];
};

/** Only old browsers load these, and those run no worker. */
const polyfills = (build: string): readonly string[] => {
  const file = path.join(build, pageFolder, 'page', 'build-manifest.json');
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

/** Addresses of every hashed file the patient's page may load. */
export const assetsOfPatientPage = (build: string): readonly string[] => {
  const left = new Set(polyfills(build));
  const found = withWhatTheyName(build, filesOfPage(build).flatMap(namesIn));
  return [...found]
    .filter((name) => !left.has(name))
    .sort()
    .map((name) => `/_next/${name}`);
};

export const buildId = (build: string): string => {
  const file = path.join(build, 'BUILD_ID');
  return existsSync(file) ? readFileSync(file, 'utf8').trim() : '';
};

/** The script as it runs in the browser. It is text here so that nothing of a bundler gets into it. */
const script = `const page = '/today';
const patience = 5000;

const isHashed = (url) => url.origin === self.location.origin && url.pathname.startsWith('/_next/static/');
const isPage = (response) =>
  response.ok && !response.redirected && response.type === 'basic' && new URL(response.url).pathname === page;

/** Keeps a document only together with every file it names, so that a kept page always opens. */
const keepPage = async (response) => {
  const text = await response.clone().text();
  const named = [...new Set(text.match(/\\/_next\\/static\\/chunks\\/[\\w~./-]+?\\.(?:js|css)/g) || [])];
  const cache = await caches.open(cacheName);
  for (const name of named) if (!(await cache.match(name))) await cache.add(name);
  await cache.put(page, response);
};

const keepNow = async () => {
  const response = await fetch(page, { credentials: 'same-origin' }).catch(() => null);
  if (response && isPage(response)) await keepPage(response);
};

const isOurs = (name) => name.startsWith('loadgate-');

self.addEventListener('install', (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(cacheName);
    await cache.addAll(assets);
    await keepNow();
  })());
});

self.addEventListener('activate', (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(cacheName);
    // Without a page of its own this version keeps the older one, with the files that belong to it.
    if (await cache.match(page)) {
      for (const name of await caches.keys()) if (isOurs(name) && name !== cacheName) await caches.delete(name);
    }
    await self.clients.claim();
  })());
});

/** A new version takes over when the page says that no session runs. */
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') self.skipWaiting();
  // Shown without having come through here, as after signing in: it is fetched once more to be kept.
  if (event.data === 'keep-page') event.waitUntil(keepNow());
});

const soon = (promise) => Promise.race([promise, new Promise((resolve) => setTimeout(() => resolve(null), patience))]);

const kept = async () => {
  for (const name of [cacheName, ...(await caches.keys()).filter(isOurs)]) {
    const found = await (await caches.open(name)).match(page);
    if (found) return found;
  }
  return null;
};

const openPage = async (event) => {
  const asked = fetch(event.request);
  event.waitUntil(asked.then((response) => (isPage(response) ? keepPage(response.clone()) : null)).catch(() => null));
  const response = await soon(asked.catch(() => null));
  if (response && response.status < 500) return response;
  return (await kept()) || response || (await asked.catch(() => Response.error()));
};

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET') return;
  const url = new URL(request.url);
  if (request.mode === 'navigate' && url.origin === self.location.origin && url.pathname === page) {
    event.respondWith(openPage(event));
  } else if (isHashed(url)) {
    event.respondWith(caches.match(request).then((found) => found || fetch(request)));
  }
});
`;

export const workerScript = (version: string, assets: readonly string[]): string =>
  `'use strict';
const cacheName = ${JSON.stringify(`loadgate-${version}`)};
const assets = ${JSON.stringify(assets)};
${script}`;
