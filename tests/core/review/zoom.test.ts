/** A range of the picture: at least two weeks, nothing from outside it, nothing inside it lost. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reviewChartOf } from '#core/review/review-chart.ts';
import { rangeWithin, zoomed } from '#core/review/zoom.ts';
import { addDays, daysBetween } from '#core/time/day.ts';
import { holdsIn } from '#tests/support/holds.ts';
import { baseline, decision, morning, series, session, since, today } from './builders.ts';

const dayOf = (place: number) => addDays(since, place);

const chart = reviewChartOf(
  series(
    {
      sessions: [0, 2, 4, 16, 18, 28].map((place) => session(dayOf(place), { kg: 4 + place / 10 })),
      mornings: [1, 3, 5, 17, 19, 29].map((place) => morning(dayOf(place), place % 4)),
      baselines: [baseline],
    },
    { decisions: [decision(dayOf(3), 'hold'), decision(dayOf(17), 'progress')] },
  ),
  { signers: new Map([[1, 'R. Clinician']]) },
);

describe('the range', () => {
  it.each([
    [{ from: dayOf(10), to: dayOf(24) }, 'from', { from: dayOf(10), to: dayOf(24) }],
    [{ from: dayOf(11), to: dayOf(24) }, 'from', { from: dayOf(10), to: dayOf(24) }],
    [{ from: dayOf(10), to: dayOf(23) }, 'to', { from: dayOf(10), to: dayOf(24) }],
    [{ from: dayOf(-5), to: dayOf(24) }, 'from', { from: since, to: dayOf(24) }],
    [{ from: dayOf(0), to: dayOf(99) }, 'to', { from: since, to: today }],
  ] as const)('%j with %s moved is %j', (wanted, moved, kept) => {
    expect(rangeWithin(chart, wanted, moved)).toEqual(kept);
  });

  it('is never shorter than two weeks nor outside the picture, wherever a handle is dragged', () => {
    const place = fc.integer({ min: -10, max: 60 });
    holdsIn(300, place, place, fc.constantFrom('from' as const, 'to' as const), (a, b, moved) => {
      const { from, to } = rangeWithin(chart, { from: dayOf(a), to: dayOf(b) }, moved);
      expect(daysBetween(from, to)).toBeGreaterThanOrEqual(14);
      expect([from >= chart.since, to <= chart.today]).toEqual([true, true]);
    });
  });
});

describe('what is drawn of a range', () => {
  const range = { from: dayOf(14), to: dayOf(29) };
  const shown = zoomed(chart, range);

  it('is every mark inside it and none outside', () => {
    const isInside = ({ day }: { readonly day: string }) => day >= range.from && day <= range.to;
    expect(shown.loads).toEqual(chart.loads.filter(isInside));
    expect(shown.pains).toEqual(chart.pains.filter(isInside));
    expect(shown.markers).toEqual(chart.markers.filter(isInside));
    expect(shown.loads).toHaveLength(3);
  });

  it('keeps thresholds and gaps to the range, as they stood', () => {
    expect(shown.thresholds).toMatchObject([{ from: range.from, to: range.to, painCeiling: 5 }]);
    for (const gap of shown.gaps) expect([gap.from >= range.from, gap.to <= range.to]).toEqual([true, true]);
  });

  it('is the picture itself when the range is the whole time', () => {
    expect(zoomed(chart, { from: chart.since, to: chart.today })).toBe(chart);
  });
});

describe('the words of a day', () => {
  it('tell every answer, the thresholds of that day with who set them, and who signed the version', () => {
    expect(chart.days.find((one) => one.day === dayOf(2))).toEqual({
      day: dayOf(2),
      text: '3 Mar: load 4.2 kg; highest pain in the session 3',
      lines: [
        'Pain before 2, during 3, after 2, two hours later not asked.',
        'Thresholds that day: top of usual pain 3, acceptable pain limit 5, set by R. Clinician on 25 Feb.',
        'Version 1 of the prescription, signed by R. Clinician.',
      ],
      decisionId: null,
    });
  });

  it('say that an entry was corrected later, and the mark carries it', () => {
    const corrected = { ...session(dayOf(2)), amended: true };
    const seen = reviewChartOf(
      series({ sessions: [corrected], mornings: [{ ...morning(dayOf(3), 2), amended: true }] }),
    );
    expect(seen.loads[0]!.amended).toBe(true);
    expect(seen.pains.map((mark) => mark.amended)).toEqual([true, true]);
    expect(seen.days.map((one) => one.text)).toEqual([
      '3 Mar: load 4 kg, corrected later; highest pain in the session 3, corrected later',
      '4 Mar: morning pain 2, corrected later',
    ]);
  });
});

it('effort is that of the hardest set, and unknown as soon as one reserve was not given', () => {
  const effort = (reserves: readonly (number | null)[]) => {
    const one = session(dayOf(2), { repetitions: reserves.map(() => 12) });
    const sets = one.sets.map((set, place) => ({ ...set, reserve: reserves[place]! }));
    return series({ sessions: [{ ...one, sets }] }, { measure: 'effort' }).loads[0]!.value;
  };
  expect([effort([3, 0]), effort([2, 3]), effort([2, null])]).toEqual([10, 8, null]);
});
