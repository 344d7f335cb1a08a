/** One caution per loaded joint: what a warning from that joint looks like. Common practice throughout. */

import { type Joint, type JointName, jointNameOf } from '#core/exercises/joints.ts';
import type { Caution } from './caution.ts';

const words: Readonly<Record<JointName, string>> = {
  shoulder: 'Shoulder: stay under the range that pinches; night pain after a session counts as an answer.',
  elbow:
    'Elbow: no snapping into the end of straightening; tingling in the ring and little finger needs a look.',
  wrist: 'Wrist: keep it neutral under load; offer handles or a strap to the forearm.',
  hand: 'Hand: thick grips or straps where fingers are sore; locking or giving way needs a look.',
  'thumb-base':
    'Thumb base: keep the web open and the tip bent; pain on pinching that outlasts the session counts as an answer.',
  'finger-joint':
    'Finger joints: no squeeze into a hot or swollen joint; stiffer or thicker the next morning counts as an answer.',
  hip: 'Hip: groin pain that outlasts the set, or a limp afterwards, counts as an answer.',
  knee: 'Knee: swelling the next morning, locking or giving way counts as an answer; keep the range that is owned.',
  ankle: 'Ankle: balance support at hand; morning heel or tendon stiffness counts as an answer.',
  foot: 'Foot: supportive shoe; pain of the ball of the foot or heel on the first steps counts as an answer.',
  neck: 'Neck: unloaded and neutral; arm or leg tingling, clumsiness or dizziness stops the work.',
  'low-back': 'Low back: pain below the knee, numbness or weakness of a leg stops the work.',
};

/** One caution per joint name; a left and a right knee share the words and are both named. */
export const jointCautions = (joints: readonly Joint[]): readonly Caution[] => {
  const names = [...new Set(joints.map(jointNameOf))];
  return names.map((name) => ({
    id: `joint-${name}`,
    text: words[name],
    patient: { key: `joint-${name}` },
    from: 'joint',
    support: 'common-practice',
  }));
};
