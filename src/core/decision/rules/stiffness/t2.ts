/** Morning stiffness in minutes, against the person's own usual. A sign of change, never a diagnosis. */
import type { Rule } from '../rule.ts';

/** Minutes that clinical osteoarthritis does not usually exceed. */
const osteoarthritisCut = 30;

export const t2 = {
  id: 'T2',
  title: 'Stiffness over usual',
  since: 1,
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
    `over ${osteoarthritisCut} min, over usual + ${settings['stiffness-hold-offset']} min and over ${settings['stiffness-hold-factor']} × usual`,
  restsOn: 'source',
  citations: [
    {
      source: 'nice-osteoarthritis-2022',
      studied: 'nobody: a guideline for people over 16 with osteoarthritis',
      number: 'from-source',
      locator: 'diagnosis: stiffness of at most 30 minutes',
      mark: 'second-hand',
    },
  ],
  settings: ['stiffness-hold-offset', 'stiffness-hold-factor'],
} as const satisfies Rule;
