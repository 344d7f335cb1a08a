/**
 * Morning stiffness in minutes, against the person's own usual. A sign of change, never a diagnosis: in hand
 * osteoarthritis more than an hour is common.
 */
import type { Rule } from '../rule.ts';

/** Minutes from which classification criteria call stiffness inflammatory. */
const inflammatoryCut = 60;

export const t1 = {
  id: 'T1',
  title: 'Long stiffness, far over usual',
  since: 1,
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
    `over ${inflammatoryCut} min, over usual + ${settings['stiffness-ease-offset']} min and over ${settings['stiffness-ease-factor']} × usual`,
  restsOn: 'source',
  citations: [
    {
      source: 'acr-ra-criteria-1987',
      studied: 'people with rheumatoid arthritis, to tell it from other diseases of the joints (from memory)',
      number: 'near-source',
      locator: 'stiffness of 1 hour or more',
      mark: 'second-hand',
    },
  ],
  settings: ['stiffness-ease-offset', 'stiffness-ease-factor'],
} as const satisfies Rule;
