/** Every address that is no procedure: pages, papers, files, forms, what stands at the doors. */
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { paperKinds } from '#papers/kinds.ts';
import { inRoot } from '../../paths.mjs';

/** Addresses as the folders of the pages say, with what varies still in brackets. */
export const addressesOfPages = (): readonly string[] => {
  const folder = inRoot('src', 'app');
  const found = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((one) => /(^|\/)(page\.tsx|route\.ts)$/.test(one))
    .map(
      (one) =>
        `/${path
          .dirname(one)
          .split(path.sep)
          .filter((part) => part !== '.' && !part.startsWith('('))
          .join('/')}`,
    )
    .filter((one) => !one.startsWith('/api/trpc'));
  return [...new Set(found), '/no-such-page', '/icon/none'].sort();
};

export const kindsOfPapers: readonly string[] = [...paperKinds];
