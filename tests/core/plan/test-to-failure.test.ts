/** How long a test to failure waits after a session. Hours: common practice, no source; a clinic choice. */
import { describe, expect, it } from 'vitest';
import { planFor } from '#core/plan/plan-for.ts';
import { hour, inputs, noon } from './plan-inputs.ts';

const testFrom = (itemId: string, more: Parameters<typeof inputs>[0]) =>
  planFor(inputs(more)).items.find((one) => one.itemId === itemId)?.testFrom;

describe('a test to failure', () => {
  it('waits 48 hours from the last session that loaded one of its joints, and from no other', () => {
    const lastLoadedAt = new Map([
      ['left-knee', noon - 30 * hour],
      ['right-hip', noon - 20 * hour],
    ] as const);
    expect(testFrom('chair', { lastLoadedAt })).toBe(noon + 28 * hour);
    expect(testFrom('curl', { lastLoadedAt })).toBeNull();
  });

  it('waits for a session of the person’s other record as well', () => {
    const { decisions, answers, danger, limits, screened, care, newsToday } = inputs();
    const other = { decisions, answers, danger, limits, screened, care, newsToday, lastSessionOn: null };
    const beside = [{ ...other, lastLoadedAt: new Map([['left-knee', noon - hour] as const]) }];
    expect(testFrom('chair', { beside })).toBe(noon + 47 * hour);
  });

  it.each([24, 48, 96])('waits the %i hours a clinic has chosen', (hours) => {
    const lastLoadedAt = new Map([['left-knee', noon] as const]);
    expect(testFrom('chair', { lastLoadedAt, settings: { 'rest-before-test-hours': hours } })).toBe(
      noon + hours * hour,
    );
  });
});
