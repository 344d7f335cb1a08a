/** Series, and what a careful colleague would say of them: with figures, with their number, without a forecast. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { symptomSignal } from '#core/decision/facts/symptom-signal.ts';
import { engineSettingValues } from '#core/decision/settings.ts';
import type { Baseline, PatientRecord } from '#core/record/record.ts';
import { findingsOf } from '#core/review/findings/all.ts';
import { dailySeries } from '#core/review/findings/daily.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { loadDays, painOfLoadDays } from '#tests/core/statistics/published-series.ts';
import { holdsIn } from '#tests/support/holds.ts';
import { baseline, morning, record, series, session, since, version } from './builders.ts';

const dayOf = (place: number) => addDays(since, place);

const told = (parts: Partial<PatientRecord>, window: Parameters<typeof series>[1] = {}) => {
  const whole = record(parts);
  const findings = findingsOf(series(parts, window), whole);
  return Object.fromEntries(findings.map((finding) => [finding.id, finding.sentences]));
};

/** The worked diary of 28 days: a load picked up on some days, a pain every morning. */
const workedDiary: Partial<PatientRecord> = {
  sessions: loadDays.flatMap((kg, place) => (kg > 0 ? [session(dayOf(place), { kg })] : [])),
  mornings: painOfLoadDays.map((pain, place) => morning(dayOf(place), pain)),
};
const fourWeeks = { today: dayOf(27) };

/** Mornings on the days from the first of the window on. */
const diary = (pains: readonly (number | null)[]) => pains.map((pain, place) => morning(dayOf(place), pain));

describe('load beside the pain of the next two mornings', () => {
  it('is told with its pairs, its chance band and that few pairs were had: −.14 over 27, .49 over 26 [symptoms 35]', () => {
    const sentences = told(workedDiary, fourWeeks).association!;
    expect(sentences[0]).toMatch(
      /^Load and pain on the next morning, 27 pairs: correlation −0\.14, within the ±0\.\d\d that chance alone leaves\. Few pairs/,
    );
    expect(sentences[1]).toMatch(/^Load and pain on the morning after that, 26 pairs: correlation 0\.49, /);
    expect(sentences.at(-1)).toContain('no proof that one caused the other');
  });

  it('is refused with 27 days on which both are known, and says how many there are', () => {
    const short = { ...workedDiary, mornings: workedDiary.mornings!.slice(1) };
    expect(told(short, fourWeeks).association![0]).toBe(
      'Not worked out: Give at least 28 days with both recorded; there are 27.',
    );
  });

  it('is not worked out where the exercise was never done', () => {
    expect(told({ mornings: workedDiary.mornings! }, fourWeeks).association).toEqual([
      'Not worked out: no session of this exercise lies in this time.',
    ]);
  });

  it('takes a silent day as unknown, a heard one without a plan as a rest, a planned one not logged as unknown', () => {
    const parts = {
      sessions: [session(dayOf(0), { kg: 4 }), session(dayOf(5), { kg: null })],
      mornings: [morning(dayOf(1), 2), morning(dayOf(3), 2), morning(dayOf(6), 3)],
    };
    const daily = dailySeries(series(parts, { today: dayOf(8) }), [{ day: dayOf(3) }]);
    //                          session, heard, heard next, planned, silent, load unknown, heard, silent, silent
    expect(daily.load).toEqual([4, 0, 0, null, null, null, 0, null, null]);
    expect(daily.pain).toEqual([null, 2, null, 2, null, null, 3, null, null]);
  });
});

describe('trend of morning pain', () => {
  it('is told with slope and test over a rise of a point a week', () => {
    const rising = [1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2, 3, 3, 3, 3, 3, 3, 3];
    // 147 pairs of days lie in different weeks, all upwards.
    expect(told({ mornings: diary(rising) }, fourWeeks).trend).toEqual([
      'Over 21 mornings from 1 Mar the middle slope was 0.88 points a week.',
      expect.stringMatching(/^Trend test: S 147, p under 0\.001\. It takes mornings as independent/),
    ]);
  });

  it.each([
    [13, 'Not worked out: 14 mornings with an answer are needed; there are 13.'],
    [14, 'Over 14 mornings from 1 Mar every answer was 2; there is no trend to test.'],
    [15, 'Over 15 mornings from 1 Mar every answer was 2; there is no trend to test.'],
  ])('of %i mornings: %s', (count, sentence) => {
    const same = new Array<number>(count).fill(2);
    expect(told({ mornings: diary(same) }, fourWeeks).trend).toEqual([sentence]);
  });

  it('counts mornings that were answered, and no others', () => {
    const half = Array.from({ length: 28 }, (_, place) => (place % 2 === 0 ? null : 3));
    expect(told({ mornings: diary(half.slice(1)) }, fourWeeks).trend![0]).toContain('Over 14 mornings');
  });
});

describe('morning pain before and after a new dose', () => {
  const twoVersions = (before: readonly number[], after: readonly number[]): Partial<PatientRecord> => ({
    prescriptions: [version(1), version(2)],
    sessions: [session(dayOf(0)), session(dayOf(before.length), { version: 2 })],
    mornings: [null, ...before, ...after].map((pain, place) => morning(dayOf(place), pain)),
  });

  it('is told as a share of pairs with its counts: 20 pairs up, 0 down, 5 the same is 90 %', () => {
    const [first] = told(twoVersions([2, 2, 2, 2, 2], [2, 3, 3, 3, 3]), fourWeeks)['level-change']!;
    expect(first).toBe(
      'Version 1 to 2 (first done 6 Mar): a morning after was sorer than one before in 90 % of pairs, ties counted half (20 higher, 0 lower, 5 the same; 5 mornings before, 5 after). 50 % is no difference.',
    );
  });

  it('is refused with four mornings on one side', () => {
    expect(told(twoVersions([2, 2, 2, 2, 2], [3, 3, 3, 3]), fourWeeks)['level-change']![0]).toBe(
      'Version 1 to 2 (first done 6 Mar): not worked out, 5 mornings before, 4 after; 5 are needed on each side.',
    );
  });

  it('is silent where one dose was followed throughout', () => {
    expect(told(workedDiary, fourWeeks)['level-change']).toEqual([
      'Not worked out: no second version of this exercise was followed in this time.',
    ]);
  });
});

const charted: Baseline = {
  ...baseline,
  setOn: since,
  morningSpread: { standardDeviation: 0.8, values: 14 },
};

describe('control chart on the baseline', () => {
  it('is told with its sum, its limit and how often such a chart errs: 13 to 36 % in 28 days, 22 to 53 % in 60', () => {
    // Scatter at least 1, widened by 1.5; half of it is allowed; it signals over 5 × 1.5.
    const sentences = told({ mornings: diary([2, 2, 5, 5]), baselines: [charted] }, fourWeeks)[
      'control-chart'
    ]!;
    expect(sentences).toEqual([
      'Baseline set on 1 Mar: usual pain 2, scatter 0.8 from 14 mornings.',
      // The first morning is the day of freezing and does not count: 0, then 2.25, then 4.5.
      'Over 3 mornings the sum over usual pain stands at 4.5; it signals over 7.5. It has not signalled.',
      expect.stringContaining('alarmed in 13 % to 36 % within 28 days and 22 % to 53 % within 60 days'),
    ]);
    expect(sentences[2]).toContain('widened by 1.5, for which no rate is computed');
  });

  it('names the morning on which it first signalled', () => {
    const pains = [2, 5, 5, 5, 5, 2];
    expect(told({ mornings: diary(pains), baselines: [charted] }, fourWeeks)['control-chart']![1]).toContain(
      'It first signalled on 5 Mar, and a signal stays until 7 answered mornings in a row lie within the usual band or a new baseline is set.',
    );
  });

  it('tells what the engine’s sum has counted since the last row of calm mornings', () => {
    const signalled = [2, 5, 5, 5, 5];
    const chart = (calm: number, after: readonly number[] = []) =>
      told(
        { mornings: diary([...signalled, ...Array(calm).fill(2), ...after]), baselines: [charted] },
        fourWeeks,
      )['control-chart']!.join(' ');
    expect(chart(6)).toContain('It first signalled on 5 Mar');
    for (const calm of [7, 8]) {
      expect(chart(calm)).toContain('The last 7 answered mornings or more lay within the usual band');
      expect(chart(calm)).not.toContain('signalled');
    }
    expect(chart(7, [5, 5])).toContain('Over 2 mornings the sum over usual pain stands at 4.5');
  });

  it.each([
    ['no usual pain is set for the left knee', []],
    ['no usual pain is set for the left knee', [{ ...charted, usualPain: null, usualPainTop: null }]],
    [
      'the baseline was set from 13 quiet mornings; 14 are needed',
      [{ ...charted, morningSpread: { standardDeviation: 1, values: 13 } }],
    ],
    ['the baseline was set from 0 quiet mornings; 14 are needed', [baseline]],
    ['before the time shown', [{ ...charted, setOn: addDays(since, -1) }]],
  ] as const)('is not drawn and says why: %s', (why, baselines) => {
    const [only, ...rest] = told({ mornings: diary([2, 2]), baselines }, fourWeeks)['control-chart']!;
    expect(only).toContain(why);
    expect(rest).toEqual([]);
  });

  it('signals exactly when the engine’s own chart does, on any diary', () => {
    const pains = fc.array(fc.option(fc.integer({ min: 0, max: 10 }), { nil: null }), {
      minLength: 2,
      maxLength: 27,
    });
    const scatter = fc.double({ min: 0.1, max: 3, noNaN: true });
    holdsIn(300, pains, scatter, (given, standardDeviation) => {
      const baselineValues = { ...charted, morningSpread: { standardDeviation, values: 20 } };
      const mornings = diary(given);
      const list = mornings.map((one) => ({
        day: dayNumber(one.day),
        morning: one,
        answers: one.joints[0]!,
      }));
      const engine = symptomSignal(
        list,
        { ...baselineValues, setDay: dayNumber(baselineValues.setOn) },
        dayNumber(dayOf(27)),
        Number.MAX_SAFE_INTEGER,
        engineSettingValues(),
      );
      const said = told({ mornings, baselines: [baselineValues] }, fourWeeks)['control-chart']!.join(' ');
      expect(said.includes('It first signalled')).toBe(engine);
    });
  });
});

it('never forecasts: no sentence speaks of what will be', () => {
  const all = Object.values(told({ ...workedDiary, baselines: [charted] }, fourWeeks))
    .flat()
    .join(' ');
  expect(all).not.toMatch(/\b(will|expect|predicts?|forecast|soon|likely)\b/i);
});
