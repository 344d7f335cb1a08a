/**
 * The service worker of the patient's pages: a short script of ours with the list of hashed files that
 * they need, read from what the build wrote. It keeps the documents of the day, the plan, the history and
 * the messages, and those files; answers of the API are never looked at, nor are the clinic's pages but the one that
 * opens a sealed group hour and holds nobody's data. A phone that was signed out without signal is locked here:
 * nothing kept is shown until the server has heard of it.
 */
import { languages } from '#messages/languages.ts';
import { pageWord } from '#messages/page-words.ts';
import { keptPages } from './worker-assets.ts';

/** The script as it runs in the browser. It is text here so that nothing of a bundler gets into it. */
const script = `const patience = 5000;
/** A page that was kept is fetched anew behind today's page, but not at each opening. */
const freshFor = 3600000;
const lock = 'locked';
/** Shows nothing of a person, and is not opened from a locked phone either. */
const own = [...pages, '/', '/access-log', '/account', '/pre-visit', '/pre-visit/consents', '/papers/plan', '/exports/csv', '/exports/fhir', '/exports/calendar'];

/** However it is written: the server reads %70lan as plan. */
const plain = (path) => { try { return decodeURIComponent(path); } catch { return path; } };
const isHashed = (url) => url.origin === self.location.origin && url.pathname.startsWith('/_next/static/');
const isPage = (response, page) =>
  response.ok && !response.redirected && response.type === 'basic' && new URL(response.url).pathname === page;

/** Keeps a document only together with every file it names, so that a kept page always opens. */
const keepPage = async (response, page, isNobodys = false) => {
  const text = await response.clone().text();
  const named = [...new Set(text.match(/\\/_next\\/static\\/chunks\\/[\\w~./-]+?\\.(?:js|css)/g) || [])];
  const cache = await caches.open(cacheName);
  for (const name of named) if (!(await cache.match(name))) await cache.add(name);
  if (isNobodys || !(await caches.has(lock))) await cache.put(page, response);
};

const keepNow = async (page) => {
  const response = await fetch(page, { credentials: 'same-origin' }).catch(() => null);
  if (response && isPage(response, page)) await keepPage(response, page);
};

const isFresh = async (page) => {
  const found = await (await caches.open(cacheName)).match(page);
  return found !== undefined && Date.now() - Date.parse(found.headers.get('date') || '') < freshFor;
};

const keepOthers = async () => {
  for (const page of pages.slice(1)) if (!(await isFresh(page))) await keepNow(page);
};

const isOurs = (name) => name.startsWith('loadgate-');

const kept = async (page) => {
  for (const name of [cacheName, ...(await caches.keys()).filter(isOurs)]) {
    const found = await (await caches.open(name)).match(page);
    if (found) return found;
  }
  return null;
};

self.addEventListener('install', (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(cacheName);
    await cache.addAll(assets);
    await keepNow(pages[0]);
    if (await kept(hourPage)) await askHour().catch(() => null);
  })());
});

self.addEventListener('activate', (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(cacheName);
    // Without a page of its own this version keeps the older one, with the files that belong to it.
    const isHourHere = (await cache.match(hourPage)) || !(await kept(hourPage));
    if (((await cache.match(pages[0])) || !(await kept(pages[0]))) && isHourHere) {
      for (const name of await caches.keys()) if (isOurs(name) && name !== cacheName) await caches.delete(name);
    }
    await self.clients.claim();
  })());
});

/** A new version takes over when the page says that no session runs. */
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') self.skipWaiting();
  // Shown without having come through here, as after signing in: it is fetched once more to be kept.
  // A tablet takes an hour along: the page that opens it is held, and the asker told whether it is.
  if (event.data === 'keep-hour') event.waitUntil(askHour().catch(() => null).then(async () =>
    event.ports[0]?.postMessage((await (await caches.open(cacheName)).match(hourPage)) !== undefined)));
  if (event.data === 'keep-page') event.waitUntil(keepNow(pages[0]).then(keepOthers));
});

const soon = (promise) => Promise.race([promise, new Promise((resolve) => setTimeout(() => resolve(null), patience))]);

const openPage = async (event, page) => {
  const asked = fetch(event.request);
  event.waitUntil(asked
    .then((response) => (isPage(response, page) ? keepPage(response.clone(), page) : null))
    .then(() => (page === pages[0] ? keepOthers() : null))
    .catch(() => null));
  const response = await soon(asked.catch(() => null));
  if (response && response.status < 500) return response;
  return (await kept(page)) || response || (await asked.catch(() => Response.error()));
};

/** Asked for without cookies, so that nothing of who is signed in is in it; it opens on a locked device too. */
const askHour = async () => {
  const response = await fetch(hourPage, { credentials: 'omit' });
  if (isPage(response, hourPage)) await keepPage(response.clone(), hourPage, true);
  return response;
};

const openHour = async () => {
  const response = await soon(askHour().catch(() => null));
  return response && response.status < 500 ? response : (await kept(hourPage)) || response || Response.error();
};

/** The sign-out that did not reach the server goes first; until it has, the phone stays locked. */
const openLocked = async (event) => {
  const told = await soon(fetch('/api/auth/sign-out', {
    method: 'POST',
    credentials: 'same-origin',
    headers: { 'content-type': 'application/json' },
    body: '{}',
  }).catch(() => null));
  if (!told || told.status >= 500)
    return new Response(lockedPage, { headers: { 'content-type': 'text/html; charset=utf-8' } });
  await caches.delete(lock);
  return fetch(event.request);
};

/** Signed in by the form alone: the page, whose part it is otherwise, may have no scripts. */
const forgetPages = async () => {
  for (const cache of await Promise.all((await caches.keys()).filter(isOurs).map((name) => caches.open(name))))
    for (const { url } of await cache.keys()) if (!isHashed(new URL(url)) && new URL(url).pathname !== hourPage) await cache.delete(url);
};

const open = async (event, page) => page === '/?signed-in' ? forgetPages().then(() => fetch(event.request)) :
  (await caches.has(lock)) ? openLocked(event) : pages.includes(page) ? openPage(event, page) : fetch(event.request);

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET') return;
  const url = new URL(request.url);
  const path = plain(url.pathname);
  if (request.mode === 'navigate' && url.origin === self.location.origin && path === hourPage) {
    event.respondWith(openHour());
  } else if (request.mode === 'navigate' && url.origin === self.location.origin && own.includes(path)) {
    // With a question behind it, it is another page under the same name: it is not kept as the page itself.
    event.respondWith(open(event, path + url.search));
  } else if (isHashed(url)) event.respondWith(caches.match(request).then((found) => found || fetch(request)));
});
`;

/** Shown by a locked phone without signal: in every language, since it may not read what was chosen. */
const lockedPage = (): string => {
  const parts = languages.map(
    ({ tag }) =>
      `<section lang="${tag}"><h1>${pageWord(tag, 'locked.title')}</h1><p>${pageWord(tag, 'locked.text')}</p><p><a href="/today">${pageWord(tag, 'locked.again')}</a></p></section>`,
  );
  return `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Loadgate</title><style>:root{color-scheme:light dark}body{max-width:30rem;margin:2rem auto;padding:0 1.25rem;font:1.125rem/1.5 system-ui,sans-serif}a{display:inline-block;padding:.8rem 0}</style><main>${parts.join('')}</main></html>`;
};

export const workerScript = (version: string, assets: readonly string[]): string =>
  `'use strict';
const cacheName = ${JSON.stringify(`loadgate-${version}`)};
const hourPage = '/group-hour';
const pages = ${JSON.stringify(keptPages.map((name) => `/${name}`))};
const assets = ${JSON.stringify(assets)};
const lockedPage = ${JSON.stringify(lockedPage())};
${script}`;
