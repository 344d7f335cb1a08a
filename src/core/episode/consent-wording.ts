/**
 * The words a patient is asked to agree to. A clinic writes its own versions; until then these stand,
 * and every page that shows them says that the clinic has not yet looked at them.
 */
import type { ConsentKind } from './consent.ts';

/** Version number of a wording nobody in the clinic has written. */
export const proposedWordingVersion = 0;

export const proposedWordings: Readonly<Record<ConsentKind, string>> = {
  'occlusion-supervised':
    'A cuff or wrap holds back blood in one arm or leg while I exercise. A clinician stays beside me. It can hurt, leave marks or numbness, and rarely cause a clot, a fainting spell or muscle damage. I can stop at any time and need no reason.',
  'occlusion-unsupervised':
    'I do this at home, alone. Nobody watches me. I can take the cuff off by myself with either hand. If the phone stops, I take it off. I take it off at numbness, sharp pain, or a limb that turns white or blue. I can stop at any time and need no reason.',
  'remote-monitoring':
    'The clinic looks at what I send during the hours shown here, and not at other times. What I send is no call for help. If I feel in danger, I ring the emergency number.',
  sharing:
    'The clinic may tell my doctor and others who treat me how my exercise and my joints are going. I can ask who was told what.',
  export: 'The clinic may hand on a copy of my record as a file, to me or to somebody I name.',
};
