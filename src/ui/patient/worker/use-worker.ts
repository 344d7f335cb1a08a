'use client';
/** Puts the service worker in place; a new version takes over only while today's page is shown. */
import { useEffect } from 'react';

let isBusy = false;
let registration: ServiceWorkerRegistration | null = null;

const takeOver = () => {
  if (!isBusy) registration?.waiting?.postMessage('take-over');
};

/** While questions are answered no new version is let in. */
export const usePausedUpdates = (busy: boolean) => {
  useEffect(() => {
    isBusy = busy;
    takeOver();
  }, [busy]);
};

/** Whoever signed in dropped the pages that were kept; they are kept again for days without signal, the last of them last. */
const keepOwnPages = async () => {
  const { active } = await navigator.serviceWorker.ready;
  const hasAll = (await caches.match('/today')) && (await caches.match('/messages'));
  if (!hasAll) active?.postMessage('keep-page');
};

export const useWorker = () => {
  useEffect(() => {
    if (process.env.NODE_ENV !== 'production' || !('serviceWorker' in navigator)) return;
    navigator.serviceWorker
      .register('/sw.js')
      .then((found) => {
        registration = found;
        takeOver();
        void keepOwnPages();
        found.addEventListener('updatefound', () => {
          const { installing } = found;
          installing?.addEventListener('statechange', () => {
            if (installing.state === 'installed' && navigator.serviceWorker.controller) takeOver();
          });
        });
      })
      // Without a worker the page still keeps its answers; only opening it needs a signal.
      .catch(() => undefined);
  }, []);
};
