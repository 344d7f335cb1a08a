/** An evaluation with the plan put in place of the engine's newest word, exercise by exercise. */
import type { Answers } from '../decision/answers.ts';
import { mostCautious } from '../decision/decide.ts';
import { withoutWarningSign } from '../decision/decisions-in-force.ts';
import type { Evaluation, ItemEvaluation } from '../decision/scope.ts';
import type { Plan } from './plan.ts';

const effectOf = ({ decision, largestStep, today, contact }: Omit<Answers, 'reasons'>) => ({
  decision,
  largestStep: largestStep ?? undefined,
  today,
  contact,
});

const itemUnder = (item: ItemEvaluation, evaluation: Evaluation, plan: Plan): ItemEvaluation => {
  const planned = plan.items.find(({ itemId }) => itemId === item.itemId);
  // A joint on which nothing was decided yet speaks by what was found just now.
  const undecided = item.limitingJoints
    .filter((joint) => !plan.joints.has(joint))
    .flatMap((joint) => evaluation.joints.filter((one) => one.joint === joint))
    .map(({ answers }) => withoutWarningSign(answers));
  const under = mostCautious([...(planned ? [planned] : []), ...undecided].map(effectOf));
  const isOverruled = under.decision === 'progress' && item.decision !== 'progress';
  return { ...item, ...under, ...(isOverruled ? { isOverruled } : {}) };
};

export const underPlan = (evaluation: Evaluation, plan: Plan): Evaluation => ({
  ...evaluation,
  items: evaluation.items.map((item) => itemUnder(item, evaluation, plan)),
});
