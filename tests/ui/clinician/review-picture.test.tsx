/** Where the marks of the review's picture stand: one scale beside it too, nothing on top of anything. */
import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { loadRange } from '#core/review/chart-steps.ts';
import { corridorOf, type DoseAnswers } from '#core/review/dose/corridor.ts';
import { measuresOf } from '#core/review/load-of-session.ts';
import { reviewChartOf } from '#core/review/review-chart.ts';
import { addDays } from '#core/time/day.ts';
import { baseline, dose, morning, series, session, since, version } from '#tests/core/review/builders.ts';
import { holdsIn } from '#tests/support/holds.ts';
import type { Patient, Version } from '#ui/clinician/answers.ts';
import { Tally } from '#ui/clinician/review/by-dose/tally.tsx';
import { corridorLines, mostRows, tallyRows } from '#ui/clinician/review/by-dose/tally-rows.ts';
import { ChartLegend } from '#ui/clinician/review/chart/chart-legend.tsx';
import {
  chartHeight,
  headHeight,
  loadDomain,
  loadY,
  scaleFor,
} from '#ui/clinician/review/chart/chart-scale.ts';
import { DosePanel } from '#ui/clinician/review/chart/dose-panel.tsx';
import { OtherMarks } from '#ui/clinician/review/chart/other-marks.tsx';
import { JointPictures } from '#ui/clinician/review/joints/joint-pictures.tsx';
import { choiceFrom } from '#ui/clinician/review/review-choice.ts';
import { stepNames } from '#ui/clinician/step-names.ts';

const dayOf = (place: number) => addDays(since, place);

const seen = series(
  {
    sessions: [session(dayOf(2)), session(dayOf(9), { kg: null })],
    mornings: [morning(dayOf(2), 2), morning(dayOf(3), 4)],
    baselines: [baseline],
  },
  { measure: 'dose' },
);

const stepped = (share: number | null) =>
  reviewChartOf(
    seen,
    {},
    {
      steps: [{ from: dayOf(1), to: null, share, inShort: '2 × 15, 4 kg', way: 'signed' }] as never,
    },
  );

const areaOf = (chart: ReturnType<typeof stepped>) => ({
  x: 50,
  y: headHeight,
  width: 500,
  height: chartHeight(chart) - headHeight,
});

const drawn = (share: number | null) => {
  const chart = stepped(share);
  const area = areaOf(chart);
  return renderToStaticMarkup(
    <svg aria-hidden="true">
      <DosePanel chart={chart} area={area} scale={scaleFor(area, chart)} />
    </svg>,
  );
};

const oneDayOther = (way: 'more-cautious' | 'bolder') =>
  reviewChartOf(seen, { others: new Map([[dayOf(3), { way, text: '' }]]) });

describe('a day that would have been another one', () => {
  it.each(['more-cautious', 'bolder'] as const)('stands under the decisions and over the pain: %s', (way) => {
    const chart = oneDayOther(way);
    const scale = scaleFor(areaOf(chart), chart);
    expect(scale.others).toBeGreaterThan(scale.lane + 14);
    // The answers that are missing stand 8 over the pain.
    expect(scale.others).toBeLessThan(scale.painHead - 16);
    const html = renderToStaticMarkup(
      <svg aria-hidden="true">
        <OtherMarks chart={chart} scale={scale} area={areaOf(chart)} />
      </svg>,
    );
    expect(html.match(/<rect/g)).toHaveLength(1);
    expect(html).toContain(`chart-other-${way}`);
    expect(renderToStaticMarkup(<ChartLegend chart={chart} />)).toContain(
      way === 'bolder' ? 'would have been bolder' : 'would have been more cautious',
    );
  });

  it('takes no room where there is none', () => {
    const without = reviewChartOf(seen);
    expect(chartHeight(oneDayOther('bolder')) - chartHeight(without)).toBe(20);
    expect(renderToStaticMarkup(<ChartLegend chart={without} />)).not.toContain('would have been');
  });
});

describe('the picture', () => {
  it('shows the dose unless another measure is asked for', () => {
    const patient = { profile: null } as unknown as Patient;
    const one = { ...version(1), itemId: 'line' } as unknown as Version;
    expect(choiceFrom({}, patient, [one]).measure).toBe('dose');
    expect(choiceFrom({ measure: 'load' }, patient, [one]).measure).toBe('load');
    expect(measuresOf(dose)[0]).toBe('dose');
  });

  it('names a signed step in bold, and says of one whose load is not known that it has no line', () => {
    expect(drawn(1)).toContain('chart-step-signed');
    expect(drawn(1)).not.toContain('no line');
    expect(drawn(null)).toContain('load not known: no line');
    expect(drawn(null)).not.toContain('2 × 15, 4 kg');
  });

  it('marks a session whose dose is not known, and gives it no height', () => {
    expect(drawn(1).match(/>\?</g)).toHaveLength(1);
  });

  it('stands a morning left of the session of its day, and the two marks beside each other', () => {
    const chart = stepped(1);
    const scale = scaleFor(areaOf(chart), chart);
    const day = dayOf(2);
    expect(scale.morningX(day)).toBeLessThan(scale.x(day));
    expect(scale.sessionX(day) - scale.morningX(day)).toBeGreaterThanOrEqual(scale.half * 2);
  });

  it('draws the line of the chart where its own marks stand', () => {
    const chart = stepped(1);
    const [from, to] = loadDomain(chart);
    const { y, height } = { y: headHeight, height: chartHeight(chart) - headHeight - 22 };
    const { low, high } = chart.loadRange;
    for (const value of [low, high])
      expect(y + height * (1 - (value - from) / (to - from))).toBeCloseTo(loadY(chart.loadRange)(value), 6);
  });

  it('never draws a higher dose lower, across a break of the axis either', () => {
    const shares = fc.array(fc.double({ min: 0.05, max: 4, noNaN: true }), { minLength: 2, maxLength: 8 });
    holdsIn(300, shares, (values) => {
      const sorted = values.toSorted((a, b) => a - b);
      const ys = sorted.map(loadY(loadRange(sorted, sorted.at(-1)!)));
      for (const [place, y] of ys.entries()) expect(y).toBeLessThanOrEqual((ys[place - 1] ?? y) + 1e-9);
    });
  });
});

describe('names of steps', () => {
  const place = {
    x: ({ at }: { at: number }) => at,
    y: (share: number) => 100 - share * 40,
    from: 40,
    to: 500,
    perLetter: 7,
  };
  const step = fc.record({
    at: fc.integer({ min: 40, max: 490 }),
    share: fc.option(fc.double({ min: 0.3, max: 2, noNaN: true })),
    inShort: fc.constantFrom('× 13', '3 × 12, 4.5 kg', '× 23–25'),
    isSigned: fc.boolean(),
  });

  it('never stand on each other, and a step without height has none', () => {
    holdsIn(300, fc.array(step, { maxLength: 9 }), (steps) => {
      const sorted = steps.toSorted((a, b) => a.at - b.at);
      const names = stepNames({ ...place, steps: sorted });
      expect(names.length).toBeLessThanOrEqual(sorted.filter(({ share }) => share !== null).length);
      const boxes = names.map(({ text, x, y, anchor }) => ({
        from: anchor === 'end' ? x - text.length * 7 : x,
        to: anchor === 'end' ? x : x + text.length * 7,
        y,
      }));
      for (const [index, one] of boxes.entries())
        for (const other of boxes.slice(index + 1))
          expect(one.to < other.from || other.to < one.from || Math.abs(one.y - other.y) > 12).toBe(true);
    });
  });

  it('go to signed steps first where there is room for one alone', () => {
    const steps = [
      { at: 100, share: 1, inShort: '3 × 12, 4.5 kg', isSigned: true },
      { at: 104, share: 1, inShort: '3 × 12, 4.5 kg', isSigned: false },
    ];
    const narrow = stepNames({ ...place, steps, y: () => 50 });
    expect(narrow.find(({ isSigned }) => isSigned)).toBeDefined();
  });
});

describe('at usual, by dose', () => {
  const at = (share: number, atUsual: number, overUsual = 0): DoseAnswers => ({
    share,
    dose: null,
    atUsual,
    overUsual,
  });
  const rowsOf = (doses: readonly DoseAnswers[]) => {
    const range = loadRange(
      doses.map(({ share }) => share),
      null,
    );
    return { range, ...tallyRows(doses, corridorOf(doses), range) };
  };

  it('stands each row at its dose on the scale of the picture, where doses lie apart', () => {
    const { rows, range } = rowsOf([at(1, 5), at(1.5, 4), at(2, 3)]);
    expect(rows.map(({ share, y }) => [share, y])).toEqual(
      [2, 1.5, 1].map((share) => [share, loadY(range)(share)]),
    );
  });

  it('keeps the order of doses and room between rows, however close they lie; the rest is left to the words', () => {
    const shares = fc.uniqueArray(fc.integer({ min: 30, max: 300 }), { minLength: 1, maxLength: 24 });
    holdsIn(300, shares, (values) => {
      const doses = values
        .toSorted((a, b) => a - b)
        .map((share, place) => at(share / 100, place % 3, (place + 1) % 3));
      const { rows, lower } = rowsOf(doses);
      expect(rows.length + lower).toBe(doses.length);
      expect(rows.length).toBeLessThanOrEqual(mostRows);
      rows.slice(1).forEach((row, place) => {
        expect(row.share).toBeLessThan(rows[place]!.share);
        expect(row.y - rows[place]!.y).toBeGreaterThanOrEqual(14);
      });
      expect(rows[0]!.y).toBeGreaterThanOrEqual(headHeight);
    });
  });

  it('draws the corridor between the two lines, and no line for an end there is not', () => {
    const ends = (doses: readonly DoseAnswers[]) => corridorLines(rowsOf(doses).rows, corridorOf(doses));
    const { solid, dashed } = ends([at(1, 5), at(1.2, 0, 2)]);
    expect(solid! - dashed!).toBeGreaterThan(12);
    expect(ends([at(1, 5)])).toMatchObject({ dashed: null });
  });

  it('says in words what it draws: counts, corridor or why none, and what was left out', () => {
    const doses = [at(1, 7), at(1.2, 1, 2)];
    const markup = (some: readonly DoseAnswers[]) =>
      renderToStaticMarkup(
        <Tally
          answers={{
            doses: some,
            corridor: corridorOf(some),
            leftOut: [{ why: 'flare', sessions: 2 }],
          }}
          range={loadRange([1, 1.2], 1)}
        />,
      );
    expect(markup(doses)).toContain('1.20: 1 of 3 at usual; 1.00: 7 of 7 at usual');
    expect(markup(doses)).toContain('Corridor from 1.00');
    expect(markup(doses)).toContain('Not counted: 2 in a flare.');
    expect(markup([])).toContain('No corridor: no session could be counted.');
  });
});

describe('pictures of the joints', () => {
  const chart = stepped(1);
  const picture = (joint: 'left-knee' | 'left-hip', more: object = {}) => ({
    joint,
    marks: { ...chart, ...more },
    href: `?joint=${joint}`,
    isChosen: joint === 'left-knee',
  });
  const limits = (markup: string) =>
    [...markup.matchAll(/joint-limit" d="M\S+ ([\d.]+)H/g)].map(([, y]) => y);

  it('stand on one scale, so that the same limit lies at the same height', () => {
    const markup = renderToStaticMarkup(
      <JointPictures pictures={[picture('left-knee'), picture('left-hip', { painFoot: 10 })]} />,
    );
    expect(limits(markup)).toHaveLength(2);
    expect(new Set(limits(markup)).size).toBe(1);
  });

  it('each lead to their joint, and say of a joint without answers that there are none', () => {
    const markup = renderToStaticMarkup(
      <JointPictures pictures={[picture('left-knee'), picture('left-hip', { pains: [] })]} />,
    );
    expect(markup).toContain('href="?joint=left-hip"');
    expect(markup).toContain('no morning answered');
    expect(markup.match(/aria-current="true"/g)).toHaveLength(1);
    expect(markup.match(/<svg/g)).toHaveLength(1);
  });

  it('are not offered where there is nothing to choose', () => {
    expect(renderToStaticMarkup(<JointPictures pictures={[picture('left-knee')]} />)).toBe('');
  });
});
