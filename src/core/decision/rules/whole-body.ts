/** Signs that the whole person, not one joint, is having a bad time. May hold, never more. */
import type { Rule } from './rule.ts';

/** Domain scores were 2 or more of 10 higher in flare. */
const fatigueRise = 2;

export const wholeBodyRules = [
  {
    id: 'W1',
    title: 'Several joints, or tiredness',
    effect: { decision: 'hold' },
    condition: (facts) =>
      (facts.otherJointsFlared >= 1 && facts.flareDays >= 1) ||
      (facts.fatigueRise !== null && facts.fatigueRise >= fatigueRise),
    observes: ['otherJointsFlared', 'flareDays', 'fatigueRise'],
    threshold: () => 'another joint in flare as well, or tiredness 2 over usual',
    restsOn: 'source',
    citations: [
      {
        source: 'eular-activity-2018',
        locator: 'recommendation 8: assess fatigue, pain, depression, activity',
        mark: 'seen',
        remark: 'No figure is given there; the 2 points come from the flare study.',
      },
      { source: 'bartlett-2015', locator: 'domain scores 2 of 10 higher in flare', mark: 'seen' },
    ],
    settings: [],
  },
] as const satisfies readonly Rule[];
