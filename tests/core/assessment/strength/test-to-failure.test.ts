import { describe, expect, it } from 'vitest';
import { readyForTest } from '#core/assessment/strength/test-to-failure.ts';
import { type BeforeFacts, preSessionCheck } from '#core/decision/pre-session-check.ts';
import { baseFacts } from '../../decision/base-facts.ts';
import { instantOn, knee, lastSession, record } from '../../decision/small-record.ts';

const began = instantOn(lastSession, 17);
const hours = (count: number): number => began + count * 3_600_000;
const checkOf = (changed: Partial<BeforeFacts> = {}) =>
  new Map([[knee, preSessionCheck({ ...baseFacts, ...changed })]]);

describe('a test to failure', () => {
  it('waits 48 hours from the last session that loaded the joint', () => {
    const ready = (count: number) => readyForTest(record(), [knee], checkOf(), hours(count)).ready;
    expect([47, 48, 49].map(ready)).toEqual([false, true, true]);
    expect(readyForTest(record(), [knee], checkOf(), hours(47))).toMatchObject({
      hoursSince: 47,
      neededHours: 48,
    });
  });

  it('passes the same gate as a session, and is held by a joint nobody asked about', () => {
    expect(readyForTest(record(), [knee], checkOf({ painBefore: 5 }), hours(60))).toMatchObject({
      ready: false,
      heldBy: [{ joint: knee, today: 'bad-day' }],
    });
    expect(readyForTest(record(), [knee], new Map(), hours(60)).ready).toBe(false);
  });

  it('needs no rest where nothing loaded the joint yet', () => {
    expect(readyForTest(record({ sessions: [] }), [knee], checkOf(), hours(0))).toMatchObject({
      ready: true,
      hoursSince: null,
    });
  });
});
