/** "left knee", "lower back". */
import { type Joint, jointNameOf, sideOf } from '#core/exercises/joints.ts';
import { t } from '#ui/language/words.ts';

export const jointText = (joint: Joint): string => {
  const side = sideOf(joint);
  const name = t(`joint.${jointNameOf(joint)}`);
  return side ? t('joint.sided', { side: t(`side.${side}`), joint: name }) : name;
};
