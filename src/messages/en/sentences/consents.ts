/**
 * What a patient is asked to consent to, where the clinic has written no wording of its own. Proposed, to
 * be confirmed by a licensed clinician.
 */
import type { ConsentKind } from '#core/episode/consent.ts';
import type { Sentence } from '#messages/sentence.ts';

export const consents = {
  treatment:
    'I agree to be examined and to do the exercises that this clinic prescribes for me. I was told what they are for and what else is possible. I know that pain or swelling can get worse for a while. I can say no to any exercise. I can stop at any time and need no reason.',
  'record-keeping':
    'The clinic keeps a record of my answers, measurements and exercises, so that it can decide about my treatment. I can ask what is in it. If I withdraw this, we talk about what follows. The law may require the clinic to keep what is already recorded.',
  'occlusion-supervised':
    'A cuff or wrap squeezes one arm or leg while I exercise and slows its blood flow. A clinician stays with me. In one survey with {people} answers, about 1 in {numbness} people had numbness. About 1 in {faint} felt faint or dizzy, and about 1 in {bruise} had a bruise. Blood clots and muscle damage have happened. They were rare. Lighter weights without a cuff are another choice. In arthritis, the cuff has not been shown to work better than ordinary training. I can stop at any time and need no reason.',
  'occlusion-unsupervised':
    'I do this at home, alone, and nobody watches me. I can take the cuff off by myself with either hand. If the phone stops, I take it off. I take it off at once if numbness or pins and needles do not ease within a minute. I do the same for sharp pain, or if my nails turn pale, grey or bluish. I can stop at any time and need no reason.',
  'remote-monitoring':
    'The clinic reads what I send during the hours shown here. Nobody reads it outside these hours. What I send is not a call for help. If I feel in danger, I ring the emergency number.',
  sharing:
    'The clinic may tell my doctor and others who treat me how my joints and exercises are going. I can ask at any time who was told what.',
  export: 'The clinic may hand over a copy of my record as a file, to me or to somebody I name.',
} as const satisfies Readonly<Record<ConsentKind, Sentence>>;
