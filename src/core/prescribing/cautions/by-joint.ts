/** One caution per loaded joint: what a warning from that joint looks like. Common practice throughout. */

import { type Joint, type JointName, jointNameOf } from '#core/exercises/joints.ts';
import type { Caution } from './caution.ts';

interface Words {
  readonly text: string;
  readonly patientText: string;
}

const words: Readonly<Record<JointName, Words>> = {
  shoulder: {
    text: 'Shoulder: stay under the range that pinches; night pain after a session counts as an answer.',
    patientText: 'Keep the shoulder below the height where it pinches. Tell us if it wakes you at night.',
  },
  elbow: {
    text: 'Elbow: no snapping into the end of straightening; tingling in the ring and little finger needs a look.',
    patientText: 'Do not snap the elbow straight. Tell us about tingling in the ring or little finger.',
  },
  wrist: {
    text: 'Wrist: keep it neutral under load; offer handles or a strap to the forearm.',
    patientText: 'Keep the wrist straight. Use a handle or rest on your fist if bending it hurts.',
  },
  hand: {
    text: 'Hand: thick grips or straps where fingers are sore; locking or giving way needs a look.',
    patientText: 'Use a thick grip if your fingers are sore. Stop if a finger locks.',
  },
  hip: {
    text: 'Hip: groin pain that outlasts the set, or a limp afterwards, counts as an answer.',
    patientText: 'Tell us about pain in the groin, or a limp after the session.',
  },
  knee: {
    text: 'Knee: swelling the next morning, locking or giving way counts as an answer; keep the range that is owned.',
    patientText: 'Look at the knee the next morning. Tell us if it is swollen, locks or gives way.',
  },
  ankle: {
    text: 'Ankle: balance support at hand; morning heel or tendon stiffness counts as an answer.',
    patientText: 'Hold on to something firm. Tell us if the ankle or heel is stiffer in the morning.',
  },
  foot: {
    text: 'Foot: supportive shoe; pain of the ball of the foot or heel on the first steps counts as an answer.',
    patientText: 'Wear a firm shoe. Tell us about pain on your first steps in the morning.',
  },
  neck: {
    text: 'Neck: unloaded and neutral; arm or leg tingling, clumsiness or dizziness stops the work.',
    patientText:
      'Keep the neck at ease. Stop and ring us for tingling in arms or legs, clumsy hands or dizziness.',
  },
  'low-back': {
    text: 'Low back: pain below the knee, numbness or weakness of a leg stops the work.',
    patientText: 'Stop and ring us if pain runs below the knee, or a leg turns numb or weak.',
  },
};

/** One caution per joint name; a left and a right knee share the words and are both named. */
export const jointCautions = (joints: readonly Joint[]): readonly Caution[] => {
  const names = [...new Set(joints.map(jointNameOf))];
  return names.map((name) => ({
    id: `joint-${name}`,
    ...words[name],
    from: 'joint',
    support: 'common-practice',
  }));
};
