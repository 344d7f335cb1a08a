/** Whether any of the four answers became bolder, and which. */
import type { Answers } from './answers.ts';
import { contactRank, decisionRank, stepRank, todayRank } from './decide.ts';

export type FourAnswers = Omit<Answers, 'reasons'>;

/** No step at all lies below the smallest one. */
const rankOfStep = (step: Answers['largestStep']): number => (step === null ? -1 : stepRank[step]);

export const bolderAnswers = (before: FourAnswers, after: FourAnswers): readonly string[] => {
  const found: string[] = [];
  if (decisionRank[after.decision] > decisionRank[before.decision]) found.push('decision');
  if (rankOfStep(after.largestStep) > rankOfStep(before.largestStep)) found.push('largestStep');
  if (todayRank[after.today] > todayRank[before.today]) found.push('today');
  if (contactRank[after.contact] > contactRank[before.contact]) found.push('contact');
  return found;
};
