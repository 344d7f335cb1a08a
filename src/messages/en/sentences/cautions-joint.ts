/** What a warning from a joint looks like. */
import type { JointName } from '#core/exercises/joints.ts';

export const jointCautions = {
  'joint-shoulder': 'Keep the shoulder below the height where it pinches. Tell us if it wakes you at night.',
  'joint-elbow': 'Do not snap the elbow straight. Tell us about tingling in the ring or little finger.',
  'joint-wrist': 'Keep the wrist straight. Use a handle or rest on your fist if bending it hurts.',
  'joint-hand': 'Use a thick grip if your fingers are sore. Stop if a finger locks.',
  'joint-thumb-base':
    'Keep your thumb rounded and wide of your hand. Tell us if pinching still hurts the next day.',
  'joint-finger-joint':
    'Do not squeeze with a red or swollen finger joint. Tell us if it is stiffer the next morning.',
  'joint-hip': 'Tell us about pain in the groin, or a limp after the session.',
  'joint-knee': 'Look at the knee the next morning. Tell us if it is swollen, locks or gives way.',
  'joint-ankle': 'Hold on to something firm. Tell us if the ankle or heel is stiffer in the morning.',
  'joint-foot': 'Wear a firm shoe. Tell us about pain on your first steps in the morning.',
  'joint-neck':
    'Keep the neck relaxed. Stop and ring us for tingling in arms or legs, clumsy hands or dizziness.',
  'joint-low-back': 'Stop and ring us if pain runs below the knee, or a leg turns numb or weak.',
} as const satisfies Readonly<Record<`joint-${JointName}`, string>>;
