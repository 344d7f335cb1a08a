import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkChange, type EpisodeState, episodeStates } from '#core/episode/episode.ts';
import { daysOff, episodeStatusOn, withoutDaysOff } from '#core/episode/episode-status.ts';
import { holdsIn } from '#tests/support/holds.ts';
import { change, episode, wanted } from './episodes.ts';

const today = '2026-03-20';

/** Every pair written out: y may follow, n is refused. Rows: from; columns: open, active, on-break, discharged, transferred, died. */
const table: Readonly<Record<EpisodeState, string>> = {
  open: 'nyyyyy',
  active: 'nnyyyy',
  'on-break': 'nynyyy',
  discharged: 'nnnnnn',
  transferred: 'nnnnnn',
  died: 'nnnnnn',
};

/** A history that ends in a state. */
const endingIn = (state: EpisodeState) =>
  state === 'open'
    ? episode(change('open', '2026-03-01'))
    : episode(change('open', '2026-03-01'), change(state, '2026-03-05'));

describe('what may follow what in an episode of care', () => {
  it.each(
    episodeStates.flatMap((from) =>
      [...table[from]].map((may, place) => ({ from, to: episodeStates[place]!, may: may === 'y' })),
    ),
  )('$from → $to: $may', ({ from, to, may }) => {
    const outcome = checkChange(endingIn(from), wanted(to, '2026-03-10'), today);
    expect(outcome.ok).toBe(may);
    if (!outcome.ok) {
      expect(outcome.refused).toHaveLength(1);
      expect(outcome.refused[0]!.reason.length).toBeGreaterThan(15);
    }
  });

  it('a change needs a reason', () => {
    const outcome = checkChange(
      endingIn('active'),
      wanted('discharged', '2026-03-10', { reason: '  ' }),
      today,
    );
    expect(outcome.ok ? '' : outcome.refused[0]?.field).toBe('input.reason');
  });

  it.each([
    ['the day before the last change', '2026-03-04', false],
    ['the day of the last change', '2026-03-05', true],
    ['today', '2026-03-20', true],
    ['tomorrow', '2026-03-21', false],
    ['a day that does not exist', '2026-02-30', false],
  ])('dated on %s', (_name, on, isTaken) => {
    expect(checkChange(endingIn('active'), wanted('discharged', on), today).ok).toBe(isTaken);
  });

  it.each([
    ['a break without its kind', wanted('on-break', '2026-03-10', { breakKind: null }), 'input.breakKind'],
    [
      'a discharge with a kind of break',
      wanted('discharged', '2026-03-10', { breakKind: 'illness' }),
      'input.breakKind',
    ],
    [
      'a return on the first day of the break',
      wanted('on-break', '2026-03-10', { expectedBack: '2026-03-10' }),
      'input.expectedBack',
    ],
    [
      'a day of return without a break',
      wanted('discharged', '2026-03-10', { expectedBack: '2026-03-12' }),
      'input.expectedBack',
    ],
  ])('refuses %s', (_name, change, field) => {
    const outcome = checkChange(endingIn('active'), change, today);
    expect(outcome.ok ? [] : outcome.refused.map((one) => one.field)).toEqual([field]);
  });

  it('takes a break with the day after as the day of return', () => {
    const change = wanted('on-break', '2026-03-10', { expectedBack: '2026-03-11' });
    expect(checkChange(endingIn('active'), change, today).ok).toBe(true);
  });
});

describe('where a person stands', () => {
  const knee = episode(
    change('open', '2026-03-01'),
    change('active', '2026-03-02'),
    change('on-break', '2026-03-06', { breakKind: 'hospital' }),
    change('active', '2026-03-10'),
    change('discharged', '2026-03-18'),
  );

  it.each([
    ['2026-02-28', 'not-recorded'],
    ['2026-03-01', 'in-care'],
    ['2026-03-05', 'in-care'],
    ['2026-03-06', 'on-break'],
    ['2026-03-09', 'on-break'],
    ['2026-03-10', 'in-care'],
    ['2026-03-17', 'in-care'],
    ['2026-03-18', 'closed'],
  ])('on %s: %s', (day, state) => {
    expect(episodeStatusOn([knee], day).state).toBe(state);
  });

  it('nothing recorded is its own state, not the end of care', () => {
    expect(episodeStatusOn([], today)).toEqual({ state: 'not-recorded', change: null, returned: null });
  });

  it('one episode that goes on keeps the person in care while another rests or is closed', () => {
    const shoulder = episode(change('open', '2026-03-03'), change('active', '2026-03-04'));
    expect(episodeStatusOn([knee, shoulder], '2026-03-07').state).toBe('in-care');
    expect(episodeStatusOn([knee, shoulder], '2026-03-19').state).toBe('in-care');
    expect(daysOff([knee, shoulder], '2026-03-01', '2026-03-20').size).toBe(0);
  });

  it('names the return from a break, and from which', () => {
    expect(episodeStatusOn([knee], '2026-03-09').returned).toBeNull();
    expect(episodeStatusOn([knee], '2026-03-10').returned).toEqual({ on: '2026-03-10', from: 'hospital' });
  });

  it('a new episode after all others had ended is a return as well', () => {
    const again = episode(change('open', '2026-03-19'));
    expect(episodeStatusOn([knee, again], today)).toMatchObject({
      state: 'in-care',
      returned: { on: '2026-03-19', from: 'end-of-care' },
    });
  });

  it('a second episode beside a running one is no return', () => {
    const shoulder = episode(change('open', '2026-03-04'));
    expect(episodeStatusOn([knee, shoulder], '2026-03-05').returned).toBeNull();
  });
});

describe('planned sessions and breaks', () => {
  it('leaves out the days of a break, first day in, day of return out', () => {
    const resting = episode(
      change('open', '2026-03-01'),
      change('active', '2026-03-02'),
      change('on-break', '2026-03-06'),
      change('active', '2026-03-09'),
    );
    const planned = ['2026-03-05', '2026-03-06', '2026-03-08', '2026-03-09'].map((day) => ({ day }));
    const off = daysOff([resting], '2026-03-01', '2026-03-20');
    expect(withoutDaysOff(planned, off).map(({ day }) => day)).toEqual(['2026-03-05', '2026-03-09']);
  });

  it('plans as before where no episode of care is recorded', () => {
    const planned = [{ day: '2026-03-05' }];
    expect(withoutDaysOff(planned, daysOff([], '2026-03-01', '2026-03-20'))).toEqual(planned);
  });
});

describe('over random histories', () => {
  it('a refused change leaves no way into a closed episode, and every day has one standing', () => {
    const steps = fc.array(
      fc.record({ to: fc.constantFrom(...episodeStates), days: fc.integer({ min: 0, max: 9 }) }),
      { maxLength: 12 },
    );
    let closedSeen = 0;
    holdsIn(400, steps, (requests) => {
      let day = 1;
      let known = episode(change('open', '2026-01-01'));
      let isClosed = false;
      for (const { to, days } of requests) {
        day += days;
        const on = `2026-0${1 + Math.floor(day / 28)}-${String(1 + (day % 28)).padStart(2, '0')}`;
        const outcome = checkChange(known, wanted(to, on), '2026-12-31');
        if (isClosed) expect(outcome.ok).toBe(false);
        if (!outcome.ok) continue;
        known = { ...known, changes: [...known.changes, change(to, on)] };
        isClosed = ['discharged', 'transferred', 'died'].includes(to);
        if (isClosed) closedSeen += 1;
      }
      expect(episodeStatusOn([known], '2026-12-31').state).toBe(
        isClosed ? 'closed' : known.changes.at(-1)!.to === 'on-break' ? 'on-break' : 'in-care',
      );
    });
    expect(closedSeen).toBeGreaterThan(50);
  });
});
