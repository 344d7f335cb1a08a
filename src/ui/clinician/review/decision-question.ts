/** What a decision asks of the clinician, as one question in ordinary words. */
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/decisions.ts';
import type { Decision, Prescriptions, Proposal } from '../answers.ts';

const dosesOf = (proposals: readonly Pick<Proposal, 'dose'>[]): string =>
  proposals.map(({ dose }) => doseInShort(dose)).join(' and ');

/** By the dose where it named one; else by the joint. To sign is only what still waits for it. */
export const questionOf = (
  { id, decision, joint }: Decision,
  proposals: readonly Proposal[],
  unsigned: Prescriptions['unsigned'],
): string => {
  const about = { 'joint-name': jointInWords(joint) };
  if (decision === 'pause') return say('question.pause', about);
  if (proposals.length === 0) return say(`question.joint.${decision}`, about);
  const waiting = proposals.filter(
    ({ itemId, effect }) =>
      effect === 'awaits-signature' &&
      unsigned.some((version) => version.decisionId === id && version.itemId === itemId),
  );
  return decision === 'progress' && waiting.length > 0
    ? say('question.sign', { doses: dosesOf(waiting) })
    : say(`question.dose.${decision}`, { doses: dosesOf(proposals) });
};
