/** Scripts the patient's page loads first, gzipped, against an empty page of the same framework. */
import { gzipSync } from 'node:zlib';
import { type Measured, type Part, rounded } from '../part.ts';
import { withPages } from './page-servers.ts';

const bar = 1.22;

/** Scripts named in the document; what only old browsers load is left out. */
const scriptsIn = (html: string): readonly string[] => {
  const tags = [...html.matchAll(/<(?:script|link)\b[^>]*>/g)].map(([tag]) => tag);
  const wanted = tags.filter(
    (tag) => !/nomodule/i.test(tag) && (/^<script/.test(tag) || /as="script"/.test(tag)),
  );
  const addresses = wanted.flatMap((tag) => /(?:src|href)="([^"]+\.js[^"]*)"/.exec(tag)?.[1] ?? []);
  return [...new Set(addresses.map((address) => address.replaceAll('&amp;', '&')))];
};

const weightOf = async (page: string, cookie: string) => {
  const answer = await fetch(page, { headers: { cookie }, redirect: 'error' });
  if (!answer.ok) throw new Error(`${page} answered ${answer.status}.`);
  const scripts = scriptsIn(await answer.text());
  let bytes = 0;
  for (const script of scripts) {
    const body = await fetch(new URL(script, page));
    if (!body.ok) throw new Error(`${script} answered ${body.status}.`);
    bytes += gzipSync(Buffer.from(await body.arrayBuffer())).length;
  }
  return { scripts: scripts.length, bytes };
};

export const pageWeightPart: Part = {
  name: 'page-weight',
  about: 'scripts of the patient’s page, gzipped ÷ of an empty page',
  run: (): Promise<readonly Measured[]> =>
    withPages(async ({ patientPage, emptyPage, cookie }) => {
      const patient = await weightOf(patientPage, cookie);
      const empty = await weightOf(emptyPage, '');
      const ratio = patient.bytes / empty.bytes;
      // A weight has no scatter: its interval is the figure itself.
      const paired = { pairs: 1, ratio, low: ratio, high: ratio, firstMs: 0, secondMs: 0 };
      const figures = {
        'patient kB': rounded(patient.bytes / 1000, 4),
        'empty kB': rounded(empty.bytes / 1000, 4),
        scripts: `${patient.scripts} and ${empty.scripts}`,
      };
      return [{ part: 'page-weight', title: pageWeightPart.about, bar, paired, figures }];
    }),
};
