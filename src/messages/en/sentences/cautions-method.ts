/** What to mind with a method, a cuff or a wrap, and what to look at around it. */
import type { MethodCautionId, OcclusionCheckId } from '#core/prescribing/cautions/ids.ts';

export const methodCautions = {
  'variation-step':
    'A harder version loads the joint more. See how the joint is the next morning before you trust it.',
  'near-failure':
    'The muscle should burn near the end of a set. The joint should not hurt more. Tell us which one it was.',
  'breathe-near-failure': 'Keep breathing. Stop the set when you can no longer do it well.',
  'occlusion-arms-legs-one-at-a-time':
    'Put it only high on the arm or leg you were shown. Only one arm or leg at a time.',
  'occlusion-pulse-and-colour':
    'Compare your nails and palm, or toenails and sole, with the other side. A little redder or darker is fine. Paler, grey, bluish or patchy is wrong: take it off at once.',
  'occlusion-release':
    'Take it off at once if numbness or pins and needles do not ease within a minute. Do the same for sharp pain, faintness, chest pain, a headache or a change of sight.',
  'occlusion-after':
    'Ring us the same day if your urine is dark, or an arm or leg swells. Do the same if soreness is far worse than usual. Do the same if numbness or pins and needles last ten minutes after it is off.',
  'occlusion-time': 'When the time is up, take it off, even if you have not finished.',
  'occlusion-evidence':
    'This is meant to spare your joint. If the joint hurts more, that is not part of it: stop and tell us.',
  'wrap-pressure-unknown':
    'Nobody knows how hard a wrap presses. Wrap it to the tightness you were shown, never so that it hurts.',
  'occlusion-alone':
    'If your phone stops, or you no longer know how long it has been on, take the cuff off. You must be able to take it off with either hand.',
  'cuff-pressure-belongs-to-this-cuff':
    'Use this pressure only with this cuff, on this arm or leg, in this position.',
} as const satisfies Readonly<Record<MethodCautionId, string>>;

export const occlusionChecks = {
  're-ask': 'Answer the short list again. If something is new, do not start.',
  'skin-before': 'Look at the skin. It must be whole, warm and feel normal.',
  'pulse-before': 'Feel the pulse where you were shown.',
  'pain-before-exercise': 'If it hurts before you move, it is too tight. Loosen it.',
  'pulse-during': 'Feel the pulse in each rest. No pulse: take it off.',
  'colour-during':
    'Compare your nails and palm, or toenails and sole, with the other side. A little redder or darker is fine. Paler, grey, bluish or patchy: take it off.',
  'refill-during': 'Press a nail. Colour must be back before you have counted to three.',
  'three-scores': 'Say what hurts: the joint, the muscle or the cuff.',
  'release-between': 'Take it off between exercises, for at least one minute.',
  'colour-after': 'Within ten minutes the arm or leg must look and feel normal.',
  'mornings-after':
    'For three mornings, look at the colour of your urine and tell us about very bad soreness.',
} as const satisfies Readonly<Record<OcclusionCheckId, string>>;
