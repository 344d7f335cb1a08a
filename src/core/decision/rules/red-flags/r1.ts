/**
 * Signs that end exercise advice and begin care advice. For every joint and every method. The rule never
 * diagnoses: it stops the plan and says whom to ask and how fast.
 */
import { redFlagContact } from '../red-flags.ts';
import type { Rule } from '../rule.ts';

/** A calf leans on the scores for clots, unless a hot joint was told as well. */
const supportFor: Rule['supportFor'] = ({ redFlags }) =>
  redFlags?.includes('calf-pain-swelling') && !redFlags.includes('hot-swollen-joint')
    ? 'clot-score-2003'
    : null;

export const r1 = {
  id: 'R1',
  title: 'Red flag',
  since: 1,
  effect: { decision: 'pause', today: 'none', contact: 'emergency' },
  effectFor: (facts) => ({
    decision: 'pause',
    today: 'none',
    contact: redFlagContact(facts.redFlags ?? []),
  }),
  condition: (facts) => facts.redFlags !== null && facts.redFlags.length > 0,
  observes: ['redFlags'],
  threshold: () => 'any red flag',
  restsOn: 'source',
  citations: [
    {
      source: 'coakley-2006',
      studied: 'nobody: a guideline for adults with a hot swollen joint',
      number: 'none',
      locator: 'guideline text',
      mark: 'seen',
      remark: 'A hot swollen joint of short history, with or without fever, is assessed the same day.',
    },
    {
      source: 'scalco-2016',
      studied: 'nobody: a review of muscle breakdown after exertion',
      number: 'none',
      locator: 'abstract',
      mark: 'seen',
      remark: 'Dark urine or pain out of proportion one to three days after a session.',
    },
    {
      source: 'clot-score-2003',
      studied: 'people suspected of a clot in a deep vein of the leg (from memory)',
      number: 'none',
      locator: 'two-level table: items on the calf',
      mark: 'seen',
      remark: 'One calf at least 3 cm larger, tenderness along the deep veins: a clot is looked for.',
    },
    {
      source: 'clot-score-1997',
      studied: 'people suspected of a clot in a deep vein of the leg (from memory)',
      number: 'none',
      locator: 'table 1: items on the calf',
      mark: 'seen',
      remark: 'The same signs, with more than 3 cm.',
    },
    {
      source: 'exercise-stop-signs',
      studied: 'nobody: advice for people who exercise with arthritis',
      number: 'none',
      locator: 'stop signs',
      mark: 'second-hand',
      remark: 'Chest pain and breathlessness; the remaining signs of the list are from memory.',
    },
  ],
  supportFor,
  settings: [],
} as const satisfies Rule;
