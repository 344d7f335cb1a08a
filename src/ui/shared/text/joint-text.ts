/** "left knee", "lower back". */
import { type Joint, jointNameOf, sideOf } from '#core/joints.ts';
import { say } from '#ui/words.ts';

export const jointText = (joint: Joint): string => {
  const side = sideOf(joint);
  const name = say(`joint.${jointNameOf(joint)}`);
  return side ? say('joint.sided', { side: say(`side.${side}`), joint: name }) : name;
};
