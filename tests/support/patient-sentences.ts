/** Every sentence of the engine a patient may read. */
import { answerSentences, todaySentences } from '#core/decision/explain.ts';
import { engineRules } from '#core/decision/rules/table.ts';

export const patientSentences: readonly { readonly key: string; readonly text: string }[] = [
  ...Object.entries(answerSentences).map(([word, text]) => ({ key: `engine.decision.${word}`, text })),
  ...Object.entries(todaySentences).map(([word, text]) => ({ key: `engine.today.${word}`, text })),
  ...engineRules.map((rule) => ({ key: `engine.rule.${rule.id}`, text: rule.patientSentence })),
];
