/** Signs that the whole person, not one joint, is having a bad time. May hold, never more. */
import type { Rule } from '../rule.ts';

/** Domain scores were this much of 10 higher in flare. */
const clearRise = 2;

export const w1 = {
  id: 'W1',
  title: 'Several joints, or tiredness',
  since: 1,
  effect: { decision: 'hold' },
  condition: (facts) =>
    (facts.otherJointsFlared >= 1 && facts.flareDays >= 1) ||
    (facts.fatigueRise !== null && facts.fatigueRise >= clearRise),
  observes: ['otherJointsFlared', 'flareDays', 'fatigueRise'],
  threshold: () => `another joint in flare as well, or tiredness ${clearRise} over usual`,
  restsOn: 'source',
  citations: [
    {
      source: 'eular-activity-2018',
      studied: 'nobody: recommendations for inflammatory arthritis and osteoarthritis of hip and knee',
      number: 'none',
      locator: 'recommendation 8: assess fatigue, pain, depression, activity',
      mark: 'seen',
      remark: `No figure is given there; the ${clearRise} points come from the flare study.`,
    },
    {
      source: 'bartlett-2015',
      studied: '501 people with rheumatoid arthritis, 39 % of them in a flare',
      number: 'from-source',
      locator: 'domain scores 2 of 10 higher in flare',
      mark: 'seen',
    },
  ],
  settings: [],
} as const satisfies Rule;
