/**
 * Pain over the acceptable pain limit: before, during or after the session, two hours later or on the next
 * morning. The zones come from tendon and knee pain and were
 * carried to osteoarthritis of hip and knee; they do not say where pain comes from.
 */
import { acceptablePainLimits } from '../../baseline/propose-pain-limit.ts';
import type { Rule } from '../rule.ts';

const { low, high } = acceptablePainLimits;

export const p2 = {
  id: 'P2',
  title: 'Pain over the acceptable pain limit',
  since: 1,
  effect: { decision: 'ease-back', today: 'bad-day' },
  condition: (facts, { peak }) => peak !== null && peak > facts.painCeiling,
  observes: ['peak', 'painCeiling'],
  threshold: () =>
    `highest pain over the acceptable pain limit, ${low} unless a clinician set ${low + 1} or ${high}`,
  restsOn: 'source',
  citations: [
    {
      source: 'ageberg-2010',
      studied: '76 people aged 60 to 77 with severe hip or knee osteoarthritis',
      number: 'from-source',
      locator: 'methods, abstract: 0–2, over 2 to 5, over 5',
      mark: 'seen',
      remark:
        'Over 5 counted as high risk in 76 people with severe hip or knee osteoarthritis. That a clinician may set 6 or 7 is common practice, no source.',
    },
  ],
  settings: [],
} as const satisfies Rule;
