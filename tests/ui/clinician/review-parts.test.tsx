/** Parts of the review: a range chosen by its address, going from day to day, and the strip with two handles. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import { reviewChartOf } from '#core/review/review-chart.ts';
import { addDays } from '#core/time/day.ts';
import { answeredSessions, record, series, since, today } from '#tests/core/review/builders.ts';
import type { Patient } from '#ui/clinician/answers.ts';
import { fromText } from '#ui/clinician/as-text.ts';
import { neighbourOf } from '#ui/clinician/review/chart/chart-detail.tsx';
import { RangeSelector } from '#ui/clinician/review/chart/range-selector.tsx';
import { chartFrom, sentChart } from '#ui/clinician/review/chart/sent-chart.ts';
import { LimbView } from '#ui/clinician/review/limb-view.tsx';
import { choiceFrom, rangeOf } from '#ui/clinician/review/review-choice.ts';

// Forms ask the framework for its router, which is not there outside a request.
vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

const patient = { profile: { followedJoints: record({}).followedJoints } } as unknown as Patient;
const loaded = { since: '2026-01-01', day: '2026-03-31' };

describe('a range in the address', () => {
  it.each([
    [
      { from: '2026-02-01', to: '2026-02-15' },
      { since: '2026-02-01', today: '2026-02-15' },
    ],
    // Thirteen days, an unreadable day, a day not loaded: the whole time is shown.
    [
      { from: '2026-02-01', to: '2026-02-14' },
      { since: loaded.since, today: loaded.day },
    ],
    [
      { from: 'soon', to: '2026-02-15' },
      { since: loaded.since, today: loaded.day },
    ],
    [
      { from: '2025-12-01', to: '2026-02-15' },
      { since: loaded.since, today: loaded.day },
    ],
    [
      { from: '2026-02-01', to: '2026-04-15' },
      { since: loaded.since, today: loaded.day },
    ],
    [{}, { since: loaded.since, today: loaded.day }],
  ])('%j reads %j', (query, read) => {
    expect(rangeOf(choiceFrom(query, patient, []), loaded)).toEqual(read);
  });
});

const chart = reviewChartOf(series(answeredSessions(['2026-03-04', '2026-03-10', '2026-03-20'], 2)));

describe('going from day to day', () => {
  it('begins at the newest day with something on it and stops at the ends', () => {
    const days = chart.days.map((one) => one.day);
    expect(neighbourOf(chart.days, null, -1)?.day).toBe(days.at(-1));
    expect(neighbourOf(chart.days, days[1]!, 1)?.day).toBe(days[2]);
    expect(neighbourOf(chart.days, days[1]!, -1)?.day).toBe(days[0]);
    expect(neighbourOf(chart.days, days[0]!, -1)).toBeNull();
    expect(neighbourOf(chart.days, days.at(-1)!, 1)).toBeNull();
  });

  it('from a day outside the range goes to its nearer end, and from an empty range nowhere', () => {
    const inside = chart.days.slice(1, -1);
    for (const by of [1, -1] as const) {
      expect(neighbourOf(inside, chart.days[0]!.day, by)).toBe(inside[0]);
      expect(neighbourOf(inside, chart.days.at(-1)!.day, by)).toBe(inside.at(-1));
      expect(neighbourOf([], chart.days[0]!.day, by)).toBeNull();
    }
  });
});

describe('the strip', () => {
  const strip = (from: string, to: string) =>
    renderToStaticMarkup(
      <RangeSelector chart={chart} range={{ from, to }} onRange={() => undefined} address="/r?days=84" />,
    );

  it('has two named handles that say their day, over the whole time', () => {
    const markup = strip(since, today);
    expect(markup).toContain('aria-label="First day shown" aria-valuetext="1 Mar 2026"');
    expect(markup).toContain('aria-label="Last day shown" aria-valuetext="31 Mar 2026"');
    expect(markup).toContain('Days shown: 1 Mar to 31 Mar, 30 days');
    expect(markup).not.toContain('Show the whole time');
  });

  it('of a range leads back, and to the words and the table of these days alone', () => {
    const markup = strip(addDays(since, 3), addDays(since, 20));
    expect(markup).toContain('Show the whole time');
    expect(markup).toContain('href="/r?days=84&amp;from=2026-03-04&amp;to=2026-03-21"');
  });
});

describe('fingers or toes after the cuff', () => {
  const check = {
    sessionId: 's',
    day: '2026-03-04',
    itemId: 'line',
    moment: 'after',
    colour: 'usual',
    feeling: 'not-usual',
    pulse: null,
    pulseState: 'asked',
  } as const;
  const cells = (over: Partial<Parameters<typeof LimbView>[0]['checks'][number]>) =>
    [
      ...renderToStaticMarkup(
        <LimbView
          checks={[{ ...check, ...over }]}
          prescriptions={[]}
          clock={{ zone: 'UTC', now: Date.parse('2026-03-31T09:00:00Z') }}
        />,
      ).matchAll(/<td>([^<]*)<\/td>/g),
    ].map(([, text]) => text);

  it('says what was seen and when, sign by sign', () => {
    expect(cells({}).slice(1)).toEqual([
      'two minutes after release',
      'as usual',
      'not as usual',
      'not known',
    ]);
  });

  it.each([
    [{ pulse: 'usual' }, 'as usual'],
    [{ pulse: 'not-usual' }, 'not as usual'],
    [{ pulseState: 'not-shown' }, 'says: never shown how'],
    [{ pulseState: 'not-asked' }, 'not asked'],
  ] as const)('pulse %j reads “%s”', (over, text) => {
    expect(cells(over).at(-1)).toBe(text);
  });
});

describe('the picture as it is sent', () => {
  const pictured = reviewChartOf(
    series(
      answeredSessions(
        [0, 2, 4].map((place) => addDays(since, place)),
        3,
      ),
    ),
  );

  it('comes out as it went in', () => {
    expect(chartFrom(sentChart(pictured))).toEqual(pictured);
  });

  it('holds each sentence once, however many days it is said of', () => {
    const { sentences, days } = fromText(sentChart(pictured));
    const said = pictured.days.flatMap(({ lines }) => lines);
    expect([...sentences].sort()).toEqual([...new Set(said)].sort());
    expect(days).toHaveLength(pictured.days.length);
    expect(sentences.length).toBeLessThan(said.length);
  });
});
