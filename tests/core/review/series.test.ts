/** What the picture draws: steps of load, gaps left open, answers due and not given, gates where the answer changed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dose } from '#core/prescribing/dose.ts';
import { decisionRuns, settledDecisions } from '#core/review/decision-markers.ts';
import { measuresOf } from '#core/review/load-of-session.ts';
import { reviewColumns, reviewTable } from '#core/review/table.ts';
import { reviewWords } from '#core/review/words.ts';
import { addDays } from '#core/time/day.ts';
import { holdsIn } from '#tests/support/holds.ts';
import { baseline, decision, dose, morning, series, session, since, version } from './builders.ts';

describe('load', () => {
  it.each([
    ['load', 4],
    ['volume', 160],
    ['repetitions', 40],
    ['sets', 2],
  ] as const)('%s of two sets of 20 with 4 kg is %d', (measure, value) => {
    expect(series({ sessions: [session('2026-03-10')] }, { measure }).loads[0]?.value).toBe(value);
  });

  it('a count that was not given makes a sum unknown instead of smaller', () => {
    const sessions = [session('2026-03-10', { repetitions: [20, null] })];
    expect(series({ sessions }, { measure: 'repetitions' }).loads[0]?.value).toBeNull();
    expect(series({ sessions }, { measure: 'volume' }).loads[0]?.value).toBeNull();
    expect(series({ sessions }, { measure: 'load' }).loads[0]?.value).toBe(4);
  });

  it('a variation counts the effective load of the version followed, and of the easier session its own', () => {
    const variation: Dose = {
      method: 'variation',
      exerciseId: 'push-up-wall',
      side: 'both',
      sets: 2,
      repetitions: { low: 8, high: 15 },
      reserve: 2,
      effectiveLoadKg: 21,
      addedKg: 0,
      restSeconds: 90,
      secondsPerRepetition: 4,
      sessionsPerWeek: 3,
    };
    const prescriptions = [version(1, { dose: variation, badDay: { ...variation, effectiveLoadKg: 12 } })];
    const sessions = [
      session('2026-03-10', { kg: null }),
      session('2026-03-12', { kg: null, kind: 'bad-day' }),
    ];
    expect(series({ prescriptions, sessions }).loads.map((load) => load.value)).toEqual([21, 12]);
    expect(measuresOf(variation)).toEqual(['dose', 'load', 'repetitions', 'sets', 'effort']);
    expect(measuresOf({ ...variation, effectiveLoadKg: null })).toEqual([
      'dose',
      'repetitions',
      'sets',
      'effort',
    ]);
  });

  it('time under restriction counts the rests of a cuff that stays up: 60 × 3 s and one rest of 30 s', () => {
    const occlusion: Dose = {
      ...dose,
      method: 'occlusion',
      limb: 'leg',
      side: 'left',
      scheme: [30, 30],
      secondsPerRepetition: 3,
      restSeconds: 30,
      cuff: { kind: 'elastic-wrap', tightness: 7 },
      inflation: 'continuous',
      capSeconds: 480,
      supervised: true,
    };
    const prescriptions = [version(1, { dose: occlusion })];
    const sessions = [session('2026-03-10', { repetitions: [30, 30] })];
    expect(series({ prescriptions, sessions }, { measure: 'restriction' }).loads[0]?.value).toBe(3.5);
  });

  it('sessions without the exercise are no part of its line', () => {
    const sessions = [session('2026-03-10', { itemId: 'another' })];
    const seen = series({ sessions });
    expect(seen.loads).toEqual([]);
    expect(seen.rows[0]?.pains).toHaveLength(1);
  });
});

describe('the staircase is broken where nothing is known', () => {
  it.each([
    [7, 1],
    [8, 2],
    [9, 2],
  ])('%d days between two sessions give %d ranges (limit 8)', (days, rangeCount) => {
    const sessions = [session('2026-03-10'), session(addDays('2026-03-10', days))];
    expect(series({ sessions }).loadLine).toHaveLength(rangeCount);
  });

  it('a session of unknown load ends a range', () => {
    const sessions = [session('2026-03-10'), session('2026-03-12', { kg: null }), session('2026-03-14')];
    const days = series({ sessions }).loadLine.map((segment) => segment.map((load) => load.day));
    expect(days).toEqual([['2026-03-10'], ['2026-03-14']]);
  });

  it('a range that ended before today is a gap up to today', () => {
    expect(series({ sessions: [session('2026-03-10')] }).gaps).toEqual([
      { from: '2026-03-10', to: '2026-03-31', days: 21 },
    ]);
  });
});

describe('mornings', () => {
  it('is missing the day after a session when nothing came, and not on other days', () => {
    const seen = series({ sessions: [session('2026-03-10')], mornings: [morning('2026-03-14', 2)] });
    const mornings = seen.rows.flatMap((row) => (row.morning ? [[row.day, row.morning.pain]] : []));
    expect(mornings).toEqual([
      ['2026-03-11', 'missing'],
      ['2026-03-14', 2],
    ]);
  });

  it('today is still open, so not missing', () => {
    const seen = series({ sessions: [session('2026-03-30')] });
    expect(seen.rows.some((row) => row.morning)).toBe(false);
  });

  it('an entry from a doubtful clock counts as missing', () => {
    const seen = series({ mornings: [{ ...morning('2026-03-10', 1), clockDoubtful: true }] });
    expect(seen.rows[0]?.morning?.pain).toBe('missing');
    const doubtful = series({ sessions: [session('2026-03-10', { clockDoubtful: true })] });
    expect(doubtful.rows[0]?.pains[0]?.during).toBe('missing');
  });
});

describe('gates', () => {
  it('the answer after a session gives way to the next morning’s', () => {
    const all = [decision('2026-03-10', 'hold', 'session'), decision('2026-03-11', 'progress')];
    expect(settledDecisions(all, 'left-knee').map((row) => row.decision)).toEqual(['progress']);
  });

  it('a danger after a session stands beside the next morning’s answer', () => {
    const all = [decision('2026-03-10', 'pause', 'session'), decision('2026-03-11', 'hold')];
    expect(settledDecisions(all, 'left-knee').map((row) => row.decision)).toEqual(['pause', 'hold']);
  });

  it('the answer after a session stands while no morning follows', () => {
    const all = [decision('2026-03-10', 'hold', 'session'), decision('2026-03-15', 'hold')];
    expect(settledDecisions(all, 'left-knee')).toHaveLength(2);
  });

  it('another joint’s decisions are not its own', () => {
    expect(settledDecisions([decision('2026-03-10', 'hold')], 'right-knee')).toEqual([]);
  });

  it('a gate stands where the answer changed, with how long it held', () => {
    const words = ['hold', 'hold', 'progress', 'hold'] as const;
    const runs = decisionRuns(words.map((word, place) => decision(addDays('2026-03-10', place), word)));
    expect(runs.map((run) => [run.first.day, run.first.decision, run.count])).toEqual([
      ['2026-03-10', 'hold', 2],
      ['2026-03-12', 'progress', 1],
      ['2026-03-13', 'hold', 1],
    ]);
  });
});

describe('thresholds are drawn as they stood at the time', () => {
  it('a newer baseline takes over on its day; an older one reaches in from before the window', () => {
    const later = { ...baseline, usualPainTop: 4, setOn: '2026-03-15' };
    const spans = series({ baselines: [baseline, later] }).thresholds;
    expect(spans.map(({ from, to, usualPainTop }) => [from, to, usualPainTop])).toEqual([
      ['2026-03-01', '2026-03-15', 3],
      ['2026-03-15', '2026-03-31', 4],
    ]);
  });

  it('values set and replaced before the window are left out', () => {
    const older = { ...baseline, setOn: '2026-01-10' };
    expect(series({ baselines: [older, baseline] }).thresholds).toHaveLength(1);
  });

  it('without a band of its own the top is the usual pain', () => {
    expect(series({ baselines: [{ ...baseline, usualPainTop: null }] }).thresholds[0]?.usualPainTop).toBe(2);
  });
});

const histories = fc
  .array(
    fc.record({
      offset: fc.integer({ min: 0, max: 29 }),
      kg: fc.option(fc.constantFrom(2, 3, 4)),
      during: fc.option(fc.integer({ min: 0, max: 10 })),
      pain: fc.option(fc.integer({ min: 0, max: 10 })),
    }),
    { maxLength: 25 },
  )
  .map((days) => {
    const perDay = [...new Map(days.map((day) => [day.offset, day])).values()].sort(
      (a, b) => a.offset - b.offset,
    );
    return series({
      sessions: perDay.map((day) => session(addDays(since, day.offset), { kg: day.kg, during: day.during })),
      mornings: perDay.map((day) => morning(addDays(since, day.offset), day.pain)),
      baselines: [baseline],
    });
  });

describe('picture, words and table state the same facts', () => {
  it('the table has one line for each row, newest first, with the same figures; missing is a word', () => {
    holdsIn(200, histories, (seen) => {
      const table = reviewTable(seen);
      expect(table.map((row) => row.day)).toEqual([...seen.rows].reverse().map((row) => row.day));
      for (const [place, row] of [...seen.rows].reverse().entries()) {
        const shown = table[place]!;
        const load = row.loads[0];
        expect(shown.load).toBe(load ? (load.value === null ? 'not known' : String(load.value)) : '');
        expect(shown.pain).toBe(row.morning ? String(row.morning.pain) : '');
        expect(shown.during).toBe(row.pains[0] ? String(row.pains[0].during) : '');
      }
    });
  });

  it('the words count the sessions and missing mornings of the table', () => {
    holdsIn(200, histories, (seen) => {
      const table = reviewTable(seen);
      const words = reviewWords(seen).join(' ');
      const sessions = table.filter((row) => row.load !== '').length;
      const missing = table.filter((row) => row.pain === 'missing').length;
      expect(/: (\d+) sessions? of this exercise/.exec(words)?.[1] ?? '0').toBe(String(sessions));
      expect(/It is missing on (\d+) morning/.exec(words)?.[1] ?? null).toBe(
        missing === 0 ? null : String(missing),
      );
    });
  });

  it('no step of the staircase stands on a session of unknown load', () => {
    holdsIn(200, histories, (seen) => {
      const drawn = seen.loadLine.flat();
      expect(drawn.every((load) => load.value !== null)).toBe(true);
      expect(drawn.length).toBe(seen.loads.filter((load) => load.value !== null).length);
    });
  });

  it('each column of the table has cells', () => {
    const seen = series({ sessions: [session('2026-03-10')] });
    const [row] = reviewTable(seen);
    expect(Object.keys(row!).sort()).toEqual(
      reviewColumns(seen)
        .map((column) => column.key)
        .sort(),
    );
  });
});
