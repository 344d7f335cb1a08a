/** What is known of resting a joint after an injection, conflicts kept. Shown beside the setting; drives nothing. */
import type { Citation } from '../../sources/citation.ts';

export interface InjectionFinding {
  readonly finding: string;
  readonly direction: 'favours-rest' | 'no-difference' | 'against-rest';
  readonly citation: Citation;
}

export const injectionEvidence: readonly InjectionFinding[] = [
  {
    finding:
      '91 people with an inflamed knee: 24 hours of bed rest in hospital after the injection did better than none, up to 24 weeks.',
    direction: 'favours-rest',
    citation: {
      source: 'chakravarty-1994',
      locator: 'abstract',
      mark: 'seen',
      remark: 'pages from memory',
    },
  },
  {
    finding:
      '30 people with rheumatoid arthritis, 63 joints: 48 hours of rest made no difference at 48 hours or months later.',
    direction: 'no-difference',
    citation: { source: 'chatham-1989', locator: 'abstract', mark: 'seen' },
  },
  {
    finding:
      '117 people with rheumatoid arthritis, wrist: 24 relapses with a splint for 48 hours, 14 with usual activity (p = 0.056).',
    direction: 'against-rest',
    citation: { source: 'weitoft-2003', locator: 'abstract', mark: 'seen' },
  },
  {
    finding:
      '90 people with rheumatoid arthritis, elbow: 13 relapses with a sling for 48 hours, 8 with usual activity; not significant.',
    direction: 'no-difference',
    citation: { source: 'weitoft-2010', locator: 'abstract', mark: 'seen', remark: 'volume from memory' },
  },
  {
    finding:
      'European recommendations: spare the injected joint for 24 hours; keeping it still is discouraged (from memory).',
    direction: 'no-difference',
    citation: { source: 'eular-injections-2021', locator: 'recommendation on aftercare', mark: 'memory' },
  },
];

/** The conflict in one sentence, for the setting and the page of care. */
export const injectionReading =
  'Sources disagree: rest did better after an injection of the knee, made no difference or did worse in wrist and elbow, and none of them studied an easier session.';
