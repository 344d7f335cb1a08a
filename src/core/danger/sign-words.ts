/** Warning signs as clinicians name them to each other; what the patient is asked stands with the phone's pages. */
import type { RedFlag } from '../decision/facts/facts.ts';

export const signInWords: Readonly<Record<RedFlag, string>> = {
  'chest-pain': 'chest pain or pressure',
  breathlessness: 'unusual breathlessness',
  fainting: 'fainting or nearly fainting',
  'face-speech-or-one-sided-weakness': 'face, speech or one-sided weakness',
  'severe-headache-or-vision': 'sudden severe headache or change of vision',
  'saddle-or-bladder-change': 'saddle numbness, or a change of bladder or bowel',
  'hot-swollen-joint': 'hot, swollen joint',
  'calf-pain-swelling': 'painful, swollen or warm calf',
  'dark-urine': 'dark urine, or muscle pain out of proportion',
  'unexplained-fever': 'unexplained fever or chills',
  'cannot-bear-weight-or-deformity': 'cannot bear weight, or deformity',
  'persistent-limb-change-after-release':
    'numbness, colour change or swelling 10 minutes after the cuff came off',
  'neck-pain-with-limb-symptoms': 'neck pain with arm or leg symptoms',
  'new-weakness': 'new weakness of an arm or leg',
  'fall-with-injury': 'fall with injury',
  'locked-joint': 'locked joint',
};

/** Signs in one phrase; for a clinician's own concern, which names none of the list, that. */
export const signsInWords = (flags: readonly RedFlag[]): string =>
  flags.length === 0 ? 'a clinician’s own concern' : flags.map((flag) => signInWords[flag]).join('; ');
