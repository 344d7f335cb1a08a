/** How long a contact that reached nobody may wait: the most urgent matter it was about decides. */
import { describe, expect, it } from 'vitest';
import { mostAgainHours, mostHoursOf } from '#core/danger/contact-again.ts';

describe('a contact that reached nobody', () => {
  const most = mostAgainHours({});

  it.each([
    [['emergency', 'routine'], 1],
    [['same-day'], 4],
    [['same-day', 'emergency'], 1],
    [['routine'], 24],
    [['none'], 24],
    [[], 24],
  ] as const)('about %j is tried again within %i hours', (urgencies, hours) => {
    expect(mostHoursOf(urgencies, most)).toBe(hours);
  });

  it('waits as long as the clinic chose', () => {
    const own = mostAgainHours({ 'contact-again-most-emergency-hours': 2 });
    expect(mostHoursOf(['emergency'], own)).toBe(2);
    expect(mostHoursOf(['same-day'], own)).toBe(4);
  });
});
