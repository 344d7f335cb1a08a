/** What trials and reviews say of occlusion work for sore joints, conflicts kept. Shown when a method is chosen; drives nothing. */
import type { Citation } from '#core/sources/citation.ts';
import type { SourceKey } from '#core/sources/index.ts';

export interface EvidenceLine {
  readonly finding: string;
  readonly direction: 'favours-occlusion' | 'no-difference' | 'mixed';
  readonly citation: Citation;
}

const abstract = (source: SourceKey): Citation => ({ source, locator: 'abstract', mark: 'seen' });

export const arthritisEvidence: readonly EvidenceLine[] = [
  {
    finding:
      '48 women with knee osteoarthritis, 12 weeks: leg press +26 % with occlusion, +33 % heavy; pain fell by 45 % with occlusion, by 39 % with light load alone.',
    direction: 'mixed',
    citation: abstract('knee-arthritis-trial-2018'),
  },
  {
    finding:
      '48 women with rheumatoid arthritis, 12 weeks: leg press +22.8 % with occlusion, +24.2 % heavy; pain cases with heavy load, none with occlusion.',
    direction: 'favours-occlusion',
    citation: abstract('rheumatoid-occlusion-trial-2020'),
  },
  {
    finding:
      '35 older adults with knee osteoarthritis: 3 spontaneous reports of knee pain with occlusion, 14 with moderate load; strength change alike.',
    direction: 'favours-occlusion',
    citation: abstract('knee-arthritis-trial-2019'),
  },
  {
    finding:
      'Five trials pooled: no difference from ordinary resistance training; the authors do not support routine use.',
    direction: 'no-difference',
    citation: abstract('knee-arthritis-meta-2021'),
  },
  {
    finding:
      'Six trials, 228 people pooled: pain alike (standardised difference −0.02, −0.30 to 0.26), fewer adverse events.',
    direction: 'mixed',
    citation: abstract('knee-arthritis-meta-2025'),
  },
];

export const arthritisReading =
  'Not shown to beat ordinary training for arthritis pain. Its case is less joint pain in the session and fewer drop-outs than heavy loading, at similar gain of muscle.';
