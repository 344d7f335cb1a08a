/** The picture of a measure draws what its sentences say, and nothing that is not on file. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { Drawn } from '#core/assessment/course/drawn.ts';
import type { DoseDay } from '#core/review/dose-days.ts';
import { LinePicture } from '#ui/clinician/outcomes/line-picture.tsx';
import { apart, lineScale } from '#ui/clinician/outcomes/line-scale.ts';
import { TimeAxis } from '#ui/clinician/outcomes/time-axis.tsx';

const span = { from: '2026-01-05', to: '2026-04-20' };
const stands: Drawn = {
  courses: [
    {
      name: null,
      points: [
        { day: '2026-01-05', figure: 9 },
        { day: '2026-03-30', figure: 12 },
      ],
    },
  ],
  unit: 'stands',
  error: 2.5,
  cut: { at: 11, words: 'under 11: below average' },
  better: 'higher',
};
const on = (day: string, ...steps: string[]): DoseDay => ({ day, isSigned: true, steps });

const draw = (drawn: Drawn, doses: readonly DoseDay[] = []) =>
  renderToStaticMarkup(<LinePicture title="Stands" drawn={drawn} span={span} doses={doses} />);
const numberOf = (html: string, pattern: RegExp): number => Number(pattern.exec(html)?.[1]);

describe('the picture of a measure', () => {
  it('draws the error as a band of its width on both sides of the first reading', () => {
    const { y } = lineScale(stands);
    const html = draw(stands);
    expect(numberOf(html, /class="line-error"[^>]* y="([\d.]+)"/)).toBe(y(11.5));
    expect(numberOf(html, /class="line-error"[^>]* height="([\d.]+)"/)).toBeCloseTo(y(6.5) - y(11.5), 5);
  });

  it('draws the cut at its figure with its words, the first reading as a ring and the later one as a dot', () => {
    const html = draw(stands);
    expect(html).toContain(`M44 ${lineScale(stands).y(11)}H376`);
    expect(html).toContain('under 11: below average');
    expect(html.match(/line-first/g)).toHaveLength(1);
    expect(html.match(/line-later/g)).toHaveLength(1);
  });

  it('draws no band where no error is on file, and no cut where none holds', () => {
    const html = draw({ ...stands, error: null, cut: null });
    expect(html).not.toMatch(/line-error|line-cut/);
  });

  it('draws a range as a bar from its low to its high, and never as a point or a line', () => {
    const points = [{ day: '2026-01-05', figure: { low: 8.1, high: 8.9 } }];
    const html = draw({ ...stands, error: null, cut: null, courses: [{ name: null, points }] });
    expect(html).toMatch(/class="line-range"/);
    expect(html).toContain('8.1–8.9');
    expect(html).not.toMatch(/<circle|line-course/);
  });

  it('draws several courses without a band, each named at its newest reading, apart from one another', () => {
    const course = (name: string, last: number) => ({
      name,
      points: [
        { day: '2026-01-05', figure: 4 },
        { day: '2026-03-30', figure: last },
      ],
    });
    const html = draw({ ...stands, cut: null, courses: [course('Stairs', 8), course('Market', 8)] });
    expect(html).not.toContain('line-error');
    const [a, b] = [...html.matchAll(/<text x="[\d.]+" y="([\d.]+)"[^>]*>8 (?:Stairs|Market)</g)].map(
      ([, at]) => Number(at),
    );
    expect(b! - a!).toBeCloseTo(12, 5);
  });

  it('draws nothing of a measure that gave no figure', () => {
    expect(draw({ ...stands, courses: [{ name: null, points: [] }] })).toBe('');
  });

  it('names a grade by its word', () => {
    const grades = ['zero', 'trace', '1+'];
    const points = [{ day: '2026-01-05', figure: 2 }];
    expect(draw({ ...stands, grades, error: 1, cut: null, courses: [{ name: null, points }] })).toContain(
      '>1+<',
    );
  });

  it('marks every day on which a dose changed, whole where it was signed and short where it was not', () => {
    const html = draw(stands, [on('2026-02-02', '3 × 12'), { ...on('2026-03-02', '× 14'), isSigned: false }]);
    const path = /line-signed" d="([^"]+)"/.exec(html)?.[1] ?? '';
    const from = [...path.matchAll(/M[\d.]+ (\d+)V/g)].map(([, y]) => Number(y));
    expect(from).toEqual([4, 114]);
  });
});

describe('the days over the pictures', () => {
  const axis = (...doses: DoseDay[]) =>
    renderToStaticMarkup(<TimeAxis span={span} doses={doses} day="2026-04-20" />);

  it('say what was signed, or how many doses were on one day', () => {
    expect(axis(on('2026-02-20', '3 × 12'))).toContain('>3 × 12<');
    expect(axis(on('2026-02-20', '× 25'))).toContain('>25 repetitions<');
    expect(axis(on('2026-02-20', '3 × 12', '5 kg'))).toContain('>2 doses<');
    expect(axis({ ...on('2026-02-20', '3 × 12'), isSigned: false })).not.toContain('3 × 12');
  });

  it('leave out the older of two that would stand on one another', () => {
    const html = axis(on('2026-02-20', 'older'), on('2026-02-22', 'newer'));
    expect(html).toContain('>newer<');
    expect(html).not.toContain('>older<');
  });
});

describe('the scale of a picture', () => {
  it('holds every figure, the band and the cut, with at most five ticks', () => {
    for (const figure of [0, 0.4, 3, 27, 480, 1200]) {
      const points = [{ day: '2026-01-05', figure }];
      const { y, ticks } = lineScale({
        ...stands,
        courses: [{ name: null, points }],
        cut: { at: figure * 2, words: '' },
      });
      for (const one of [figure, figure + 2.5, figure * 2]) {
        expect(y(one)).toBeGreaterThanOrEqual(16);
        expect(y(one)).toBeLessThanOrEqual(120);
      }
      expect(ticks.length).toBeGreaterThan(1);
      expect(ticks.length).toBeLessThanOrEqual(5);
    }
  });

  it('keeps one reading alone in the middle, with room on both sides', () => {
    const { y } = lineScale({
      ...stands,
      error: null,
      cut: null,
      courses: [{ name: null, points: [{ day: '2026-01-05', figure: 20 }] }],
    });
    expect(y(20)).toBe(68);
  });

  it('leaves names that stand clear of one another where they are', () => {
    const name = (y: number) => ({ key: String(y), text: 'a', x: 0, y });
    expect(apart([name(40), name(10)]).map(({ y }) => y)).toEqual([10, 40]);
  });
});
