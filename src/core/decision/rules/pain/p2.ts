/**
 * Pain over the personal ceiling at any time of the session. The zones come from tendon and knee pain and were
 * carried to osteoarthritis of hip and knee; they do not say where pain comes from.
 */
import { acceptablePainLimits } from '../../baseline/propose-pain-limit.ts';
import type { Rule } from '../rule.ts';

const { low, high } = acceptablePainLimits;

export const p2 = {
  id: 'P2',
  title: 'Pain over the personal ceiling',
  since: 1,
  effect: { decision: 'ease-back', today: 'bad-day' },
  condition: (facts, { peak }) => peak !== null && peak > facts.painCeiling,
  observes: ['peak', 'painCeiling'],
  threshold: () =>
    `highest pain over the personal ceiling, ${low} unless a clinician set ${low + 1} or ${high}`,
  restsOn: 'source',
  citations: [
    {
      source: 'ageberg-2010',
      studied: '76 people aged 60 to 77 with severe hip or knee osteoarthritis',
      number: 'from-source',
      locator: 'methods, abstract: 0–2, over 2 to 5, over 5',
      mark: 'seen',
      remark: 'Over 5 counted as high risk in 76 people with severe hip or knee osteoarthritis.',
    },
  ],
  settings: [],
} as const satisfies Rule;
