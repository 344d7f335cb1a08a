/**
 * Morning stiffness in minutes, against the person's own usual. A sign of change, never a
 * diagnosis: in hand osteoarthritis more than an hour is common.
 */
import type { Rule } from './rule.ts';

/** Minutes from which classification criteria call stiffness inflammatory. */
const inflammatoryCut = 60;
/** Minutes that clinical osteoarthritis does not usually exceed. */
const osteoarthritisCut = 30;

export const stiffnessRules = [
  {
    id: 'T1',
    title: 'Long stiffness, far over usual',
    effect: { decision: 'ease-back', contact: 'routine' },
    condition: ({ stiffnessMinutes, usualStiffnessMinutes }, _derived, settings) =>
      typeof stiffnessMinutes === 'number' &&
      stiffnessMinutes >
        Math.max(
          inflammatoryCut,
          usualStiffnessMinutes + settings['stiffness-ease-offset'],
          usualStiffnessMinutes * settings['stiffness-ease-factor'],
        ),
    observes: ['stiffnessMinutes', 'usualStiffnessMinutes'],
    threshold: (settings) =>
      `over 60 min, over usual + ${settings['stiffness-ease-offset']} min and over ${settings['stiffness-ease-factor']} × usual`,
    restsOn: 'source',
    citations: [
      { source: 'acr-ra-criteria-1987', locator: 'stiffness of 1 hour or more', mark: 'second-hand' },
    ],
    settings: ['stiffness-ease-offset', 'stiffness-ease-factor'],
  },
  {
    id: 'T2',
    title: 'Stiffness over usual',
    effect: { decision: 'hold' },
    condition: ({ stiffnessMinutes, usualStiffnessMinutes }, _derived, settings) =>
      typeof stiffnessMinutes === 'number' &&
      stiffnessMinutes >
        Math.max(
          osteoarthritisCut,
          usualStiffnessMinutes + settings['stiffness-hold-offset'],
          usualStiffnessMinutes * settings['stiffness-hold-factor'],
        ),
    observes: ['stiffnessMinutes', 'usualStiffnessMinutes'],
    threshold: (settings) =>
      `over 30 min, over usual + ${settings['stiffness-hold-offset']} min and over ${settings['stiffness-hold-factor']} × usual`,
    restsOn: 'source',
    citations: [
      {
        source: 'nice-osteoarthritis-2022',
        locator: 'diagnosis: stiffness of at most 30 minutes',
        mark: 'second-hand',
      },
    ],
    settings: ['stiffness-hold-offset', 'stiffness-hold-factor'],
  },
] as const satisfies readonly Rule[];
