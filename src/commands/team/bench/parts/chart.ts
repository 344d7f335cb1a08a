/**
 * The review picture of three years of daily answers: its data against the same rows read raw, and the
 * time from each thing done to it until the next paint on a processor slowed to a quarter.
 */
import type { Browser, Page } from 'playwright-core';
import type { Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { openStore } from '#data/open-store.ts';
import { lengthenRecord } from '../group/long-record.ts';
import { accessTo } from '../group/make-group.ts';
import { leastPairs, measurePairs, medianOf, pairedOf } from '../pairs.ts';
import { type Measured, type Part, rounded } from '../part.ts';
import { rawReview } from '../raw-record.ts';
import { type Pages, withPages } from './page-servers.ts';
import { reviewRead } from './record.ts';
import {
  inBrowser,
  longestEvent,
  mostMs,
  slowed,
  taskMs,
  untilDrawn,
  visitor,
  watchEvents,
} from './slowed-page.ts';

const patient = 'steady-progress';
const days = 1095;
const serverBar = 1.5;
const desk = { viewport: { width: 1280, height: 900 } };
const warmUp = 5;

/** The demo patient's own clinic, on the last day answered. */
const accessOfPatient = (store: Access['store']): Access => {
  const row = store.reader.client
    .prepare('SELECT clinic_id, day, arrived_at FROM morning WHERE patient_id = ? ORDER BY day DESC LIMIT 1')
    .get(patient) as { readonly clinic_id: string; readonly day: Day; readonly arrived_at: number };
  return { ...accessTo(store, row.arrived_at), clinicId: row.clinic_id, day: row.day };
};

const dataOf = async (databaseFile: string, until: number): Promise<Measured> => {
  const store = openStore(databaseFile);
  try {
    const access = accessOfPatient(store);
    const raw = rawReview(store.reader.client);
    const side = (work: () => unknown) => ({ ready: async () => work });
    const paired = await measurePairs(
      side(() => reviewRead(access, patient, days)),
      side(() => raw.read(access, patient, days)),
      until,
    );
    const figures = {
      rows: raw.read(access, patient, days),
      'product ms': rounded(paired.firstMs),
      'raw ms': rounded(paired.secondMs),
    };
    const title = 'review picture of three years ÷ the same rows read raw';
    return { part: 'picture', title, bar: serverBar, paired, figures };
  } finally {
    store.close();
  }
};

interface Act {
  readonly title: string;
  /** Puts the focus or the pointer where it is needed; not counted. */
  readonly ready: (page: Page) => Promise<void>;
  readonly act: (page: Page, round: number) => Promise<void>;
}

const handle = 'input.range-handle[aria-label="First day shown"]';

const acts: readonly Act[] = [
  {
    title: 'a key on the handle of the strip',
    ready: (page) => page.locator(handle).focus(),
    act: (page, round) => page.keyboard.press(round % 2 === 0 ? 'ArrowRight' : 'ArrowLeft'),
  },
  {
    title: 'going one day on',
    ready: (page) => page.locator('.chart-detail button:enabled').first().focus(),
    act: (page) => page.keyboard.press('Enter'),
  },
  {
    title: 'going one decision on',
    ready: (page) => page.locator('.chart-marker-link[tabindex="0"]').first().focus(),
    act: (page, round) => page.keyboard.press(round % 2 === 0 ? 'ArrowLeft' : 'ArrowRight'),
  },
];

interface Took {
  readonly toPaintMs: readonly number[];
  readonly threadMs: readonly number[];
}

const timesOf = async (page: Page, { ready, act }: Act): Promise<Took> => {
  const session = await slowed(page);
  await watchEvents(page);
  const took = { toPaintMs: [] as number[], threadMs: [] as number[] };
  for (let round = -warmUp; round < leastPairs; round++) {
    await ready(page);
    await untilDrawn(page);
    await longestEvent(page);
    const before = await taskMs(session);
    await act(page, round + warmUp);
    // The browser tells of an event after the paint that followed it.
    await untilDrawn(page);
    await untilDrawn(page);
    const thread = (await taskMs(session)) - before;
    const toPaint = await longestEvent(page);
    if (round < 0) continue;
    took.threadMs.push(thread);
    took.toPaintMs.push(toPaint);
  }
  return took;
};

const interactions = async (browser: Browser, { address, signIn }: Pages): Promise<readonly Measured[]> => {
  const cookie = await signIn('clinician@demo.invalid');
  const measured: Measured[] = [];
  for (const act of acts) {
    const context = await visitor(browser, desk, address, cookie);
    const page = await context.newPage();
    await page.goto(`${address}/patients/${patient}/review?days=${days}`);
    await page.locator('.chart-marker-link').first().waitFor();
    const { toPaintMs, threadMs } = await timesOf(page, act);
    const paired = pairedOf(toPaintMs.map((ms) => [ms, mostMs] as const));
    const figures = {
      'median ms': rounded(paired.firstMs),
      'longest ms': rounded(Math.max(...toPaintMs)),
      'whole work of the main thread, median ms': rounded(medianOf(threadMs)),
    };
    const title = `picture of three years: ${act.title}, to the next paint at 4× slower ÷ 100 ms`;
    measured.push({ part: 'picture', title, bar: 1, paired, figures });
    await context.close();
  }
  return measured;
};

export const chartPart: Part = {
  name: 'picture',
  about: 'review picture of three years: data ÷ raw rows, and what is done to it ÷ 100 ms',
  run: (settings): Promise<readonly Measured[]> =>
    withPages(async (pages) => {
      lengthenRecord(pages.databaseFile, patient, days);
      const data = await dataOf(pages.databaseFile, settings.until);
      const skipped = { part: 'picture', title: 'picture of three years, what is done to it', bar: 1 };
      return [data, ...(await inBrowser(skipped, (browser) => interactions(browser, pages)))];
    }),
};
