/** The clock a cuff's time is measured by. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holdsIn } from '#tests/support/holds.ts';
import { type Steady, steadyClock } from '#ui/on-device/steady-clock.ts';

const minute = 60_000;
const noon = 1_800_000_000_000;

/** A phone: its clock on the wall, which may be set, and the browser's count, which stands while it sleeps. */
const phone = () => {
  const at = { wall: noon, count: 500, saved: null as Steady | null };
  const open = () =>
    steadyClock(
      () => at.wall,
      () => at.count,
      at.saved,
      (shown) => {
        at.saved = shown;
      },
    );
  return {
    open,
    wake: (ms: number) => {
      at.wall += ms;
      at.count += ms;
    },
    sleep: (ms: number) => {
      at.wall += ms;
    },
    set: (ms: number) => {
      at.wall += ms;
    },
    reload: () => {
      at.count = 3;
      return open();
    },
  };
};

describe('the time a cuff is on', () => {
  it('goes on while the phone sleeps', () => {
    const one = phone();
    const clock = one.open();
    one.sleep(7 * minute);
    expect(clock() - noon).toBe(7 * minute);
  });

  it('is not made longer by a clock set back by an hour', () => {
    const one = phone();
    const clock = one.open();
    one.wake(5 * minute);
    clock();
    one.set(-60 * minute);
    one.wake(2 * minute);
    expect(clock() - noon).toBe(7 * minute);
    one.sleep(3 * minute);
    expect(clock() - noon).toBe(10 * minute);
  });

  it('is carried over a reload, also where the clock was set back before it', () => {
    const one = phone();
    const clock = one.open();
    one.wake(5 * minute);
    clock();
    one.set(-60 * minute);
    one.wake(minute);
    clock();
    const after = one.reload();
    one.wake(2 * minute);
    expect(after() - noon).toBe(8 * minute);
  });

  it('is told in whole milliseconds, as the record keeps them', () => {
    const one = phone();
    const clock = one.open();
    one.wake(100.4);
    one.set(-minute);
    one.wake(0.3);
    expect(clock() - noon).toBe(101);
  });

  it('is never shorter than what the phone was awake for, and never runs back, whatever is done to the clock', () => {
    const move = fc.tuple(
      fc.constantFrom('wake', 'sleep', 'set', 'back'),
      fc.integer({ min: 0, max: 2 * 60 * minute }),
    );
    holdsIn(300, fc.array(move, { maxLength: 30 }), (moves) => {
      const one = phone();
      const clock = one.open();
      let [awake, last] = [0, clock()];
      for (const [kind, ms] of moves) {
        if (kind === 'wake') awake += ms;
        if (kind === 'back') one.set(-ms);
        else one[kind](ms);
        const now = clock();
        expect(now).toBeGreaterThanOrEqual(last);
        expect(now - noon).toBeGreaterThanOrEqual(awake);
        last = now;
      }
    });
  });
});
