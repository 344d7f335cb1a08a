/**
 * What trials of strength work found in hand osteoarthritis, told with every dose for a hand. Pooled grip rose by
 * 1.35 kg with an interval across zero, and pain fell by a quarter of a standard deviation.
 */
import { exerciseById } from '#core/exercises/catalogue.ts';
import type { Note } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';

export const handEvidenceCitations: readonly Citation[] = [
  {
    source: 'magni-2017',
    locator: 'abstract: grip 1.35 kg (−0.84 to 3.54), pain −0.23 standardised',
    mark: 'seen',
  },
  { source: 'hennig-2015', locator: 'abstract: pain after exercise', mark: 'seen' },
  {
    source: 'hennig-2015',
    locator: 'course of pain after exercise over three months',
    mark: 'second-hand',
  },
];

const ofHand: readonly string[] = ['hand', 'thumb-base', 'finger-joint'];

const isForHand = (exerciseId: string): boolean =>
  exerciseById(exerciseId)?.loads.some(({ joint, share }) => share === 'main' && ofHand.includes(joint)) ??
  false;

export const handEvidence = (exerciseId: string): readonly Note[] =>
  isForHand(exerciseId)
    ? [
        {
          code: 'hand-evidence',
          text: 'In hand osteoarthritis strength work lowered pain a little and did not raise grip beyond chance (1.35 kg, −0.84 to 3.54: Magni 2017, abstract read). Pain after exercise was considerable in some and fell over three months (Hennig 2015).',
        },
      ]
    : [];
