/**
 * The pages of a usual day as the server renders them for somebody signed in, over HTTP, each against the
 * emptiest page one signs in for (own codes: the frame and a few sentences), both in the same run.
 */
import { patientId } from '../group/plan.ts';
import { measurePairs } from '../pairs.ts';
import { type Measured, type Part, rounded } from '../part.ts';
import { type GroupServer, withGroupServer } from './group-server.ts';

const bar = 2;
/** A year holds three times the sessions of the usual window. */
const yearBar = 4;
const emptyPage = '/account/codes';

interface Page {
  readonly title: string;
  readonly bar: number;
  readonly as: 'clinician' | 'patient';
  /** Another patient in each pair, so that no page is read twice from what was just read. */
  readonly path: (patient: string) => string;
}

const pages: readonly Page[] = [
  { title: 'worklist', bar, as: 'clinician', path: () => '/worklist' },
  { title: 'summary', bar, as: 'clinician', path: (id) => `/patients/${id}` },
  { title: 'review', bar, as: 'clinician', path: (id) => `/patients/${id}/review` },
  {
    title: 'review of a year',
    bar: yearBar,
    as: 'clinician',
    path: (id) => `/patients/${id}/review?days=365`,
  },
  { title: 'prescribe', bar, as: 'clinician', path: (id) => `/patients/${id}/prescribe` },
  { title: 'today', bar, as: 'patient', path: () => '/today' },
];

const htmlOf = async (address: string, cookie: string): Promise<string> => {
  const answer = await fetch(address, { headers: { cookie }, redirect: 'manual' });
  if (answer.status !== 200) throw new Error(`${address} answered ${answer.status}.`);
  return answer.text();
};

const measuredPage = async (server: GroupServer, page: Page, patients: number, until: number) => {
  const { address, clinician } = server;
  const of = (pair: number) => address + page.path(patientId((pair * 13) % patients));
  const html = await htmlOf(of(1), server[page.as]);
  const paired = await measurePairs(
    { ready: async (pair) => () => htmlOf(of(pair), server[page.as]) },
    { ready: async () => () => htmlOf(address + emptyPage, clinician) },
    until,
  );
  const figures = {
    'page ms': rounded(paired.firstMs),
    'empty ms': rounded(paired.secondMs),
    'html kB': rounded(Buffer.byteLength(html) / 1000, 4),
  };
  const title = `page rendered: ${page.title} ÷ an empty signed-in page`;
  return { part: renderedPagesPart.name, title, bar: page.bar, paired, figures };
};

export const renderedPagesPart: Part = {
  name: 'rendered-pages',
  about: 'pages of a usual day, rendered for somebody signed in ÷ an empty signed-in page',
  run: ({ plan, until }): Promise<readonly Measured[]> =>
    withGroupServer(plan, async (server) => {
      const found: Measured[] = [];
      const share = Math.max(0, until - performance.now()) / pages.length;
      for (const page of pages)
        found.push(await measuredPage(server, page, plan.patients, performance.now() + share));
      return found;
    }),
};
