/** The answers of a screening that close nutrition targets, as the locks read them. */
import type { Screening, ScreeningItemAnswer } from '#core/screening/screening.ts';
import type { LockAnswers, LockQuestion } from '../lock-fields.ts';

const itemOf = {
  kidneyDisease: 'kidney-disease',
  eatingOrWeightWorry: 'weight-loss-or-eating',
  pregnancy: 'pregnancy-or-birth',
  dialysis: 'dialysis-access',
} as const satisfies Partial<Record<LockQuestion, string>>;

const read = ({ answer }: ScreeningItemAnswer): LockAnswers['kidneyDisease'] =>
  answer === 'not-applicable' ? 'no' : answer;

/** A question without an answer is left out: not asked, and never taken for no. One kidney is no question of the sheet. */
export const lockAnswersOf = (screening: Pick<Screening, 'answers'> | null): LockAnswers =>
  Object.fromEntries(
    Object.entries(itemOf).flatMap(([question, item]) => {
      const found = screening?.answers.find((one) => one.item === item);
      return found ? [[question, read(found)]] : [];
    }),
  );
