/**
 * Morning stiffness in minutes, against the person's own frozen usual. A sign of change, never a
 * diagnosis: in hand osteoarthritis more than an hour is common.
 */
import type { Rule } from '../rule.ts';

/** Minutes from which classification criteria call stiffness inflammatory. */
const inflammatoryCut = 60;
/** Minutes that clinical osteoarthritis does not usually exceed. */
const osteoarthritisCut = 30;

export const stiffnessRules = [
  {
    id: 'T1',
    title: 'Long stiffness, far over usual',
    effect: { decision: 'ease-back', contact: 'routine' },
    condition: ({ stiffnessMinutes, usualStiffnessMinutes }, _derived, choices) =>
      typeof stiffnessMinutes === 'number' &&
      stiffnessMinutes >
        Math.max(
          inflammatoryCut,
          usualStiffnessMinutes + choices['stiffness-ease-offset'],
          usualStiffnessMinutes * choices['stiffness-ease-factor'],
        ),
    observes: ['stiffnessMinutes', 'usualStiffnessMinutes'],
    threshold: (choices) =>
      `over 60 min, over usual + ${choices['stiffness-ease-offset']} min and over ${choices['stiffness-ease-factor']} × usual`,
    restsOn: 'source',
    citations: [
      { source: 'acr-ra-criteria-1987', locator: 'stiffness of 1 hour or more', mark: 'second-hand' },
    ],
    choices: ['stiffness-ease-offset', 'stiffness-ease-factor'],
    patientSentence: 'The joint stayed stiff far longer than usual, so do a little less.',
  },
  {
    id: 'T2',
    title: 'Stiffness over usual',
    effect: { decision: 'hold' },
    condition: ({ stiffnessMinutes, usualStiffnessMinutes }, _derived, choices) =>
      typeof stiffnessMinutes === 'number' &&
      stiffnessMinutes >
        Math.max(
          osteoarthritisCut,
          usualStiffnessMinutes + choices['stiffness-hold-offset'],
          usualStiffnessMinutes * choices['stiffness-hold-factor'],
        ),
    observes: ['stiffnessMinutes', 'usualStiffnessMinutes'],
    threshold: (choices) =>
      `over 30 min, over usual + ${choices['stiffness-hold-offset']} min and over ${choices['stiffness-hold-factor']} × usual`,
    restsOn: 'source',
    citations: [
      {
        source: 'nice-osteoarthritis-2022',
        locator: 'diagnosis: stiffness of at most 30 minutes',
        mark: 'second-hand',
      },
    ],
    choices: ['stiffness-hold-offset', 'stiffness-hold-factor'],
    patientSentence: 'The joint stayed stiff longer than usual, so stay where you are.',
  },
] as const satisfies readonly Rule[];
