/** Cautions that come with a method, and with a cuff or a wrap. */

import type { Dose } from '../dose.ts';
import type { Method } from '../methods.ts';
import type { Caution } from './caution.ts';
import type { MethodCautionId } from './ids.ts';

const caution = (id: MethodCautionId, support: string, text: string): Caution => ({
  id,
  text,
  patient: { key: id },
  from: 'method',
  support,
});

const byMethod: Readonly<Record<Method, readonly Caution[]>> = {
  variation: [
    caution(
      'variation-step',
      'clinic',
      'A harder version is a load step: judge it by the next morning, not by the set.',
    ),
  ],
  'low-load': [
    caution(
      'near-failure',
      'common-practice',
      'Sets end near failure: muscle burn is expected, joint pain is not. Keep them apart when asking.',
    ),
    caution(
      'breathe-near-failure',
      'common-practice',
      'Straining near failure raises blood pressure; keep breathing and stop when form goes.',
    ),
  ],
  occlusion: [
    caution(
      'occlusion-arms-legs-one-at-a-time',
      'occlusion-position-stand-2019',
      'Arms and legs only, high on the limb, one limb at a time.',
    ),
    caution(
      'occlusion-pulse-and-colour',
      'common-practice',
      'The distal pulse stays. Check pulse, refill, feeling, and nails and palm or sole against the other side, before, in each rest and after (from memory).',
    ),
    caution(
      'occlusion-release',
      'common-practice',
      'Release at once for no pulse, pale, grey or bluish nails, numbness or pins and needles that do not ease within a minute, sharp pain, faintness, chest pain, headache or change of sight.',
    ),
    caution(
      'occlusion-after',
      'occlusion-course-summary',
      'Ask for dark urine and soreness out of proportion over the next three mornings; calf swelling, or numbness or pins and needles ten minutes after release, needs contact the same day.',
    ),
    caution(
      'occlusion-time',
      'occlusion-position-stand-2019',
      'The time under restriction is capped; when it is reached the cuff comes off even if repetitions are left.',
    ),
    caution(
      'occlusion-evidence',
      'clinic',
      'Not shown to beat ordinary training for arthritis pain; its case is less joint pain during sessions than heavy loading. Rising joint pain is not expected.',
    ),
  ],
};

const unsupervised = caution(
  'occlusion-alone',
  'clinic',
  'At home without supervision: only after observed sessions and release unaided with either hand; a stopped phone means the cuff comes off.',
);

const wrap = caution(
  'wrap-pressure-unknown',
  'wrap-reliability-2019',
  'An elastic wrap gives no pressure: the same tightness varied by about a fifth to a quarter between days, and on arms often lay above occlusion.',
);

const remeasure = caution(
  'cuff-pressure-belongs-to-this-cuff',
  'occlusion-position-2018',
  'The pressure belongs to this limb, side, cuff width and position; another position raises the needed pressure by up to a third. Measure again when one changes.',
);

export const methodCautions = (dose: Dose): readonly Caution[] => {
  const list = [...byMethod[dose.method]];
  if (dose.method !== 'occlusion') return list;
  list.push(dose.cuff.kind === 'elastic-wrap' ? wrap : remeasure);
  if (!dose.supervised) list.push(unsupervised);
  return list;
};
