/** What a decision asks of the clinician, as one question in ordinary words. */
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/decisions.ts';
import type { Decision, Proposal } from '../answers.ts';

/** By the dose where it named one; else by the joint. */
export const questionOf = ({ decision, joint }: Decision, proposals: readonly Proposal[]): string => {
  const about = { 'joint-name': jointInWords(joint) };
  const doses = proposals.map(({ dose }) => doseInShort(dose)).join(' and ');
  if (decision === 'pause') return say('question.pause', about);
  if (doses === '') return say(`question.joint.${decision}`, about);
  const isToSign = proposals.some(({ effect }) => effect === 'awaits-signature');
  return say(decision === 'progress' && isToSign ? 'question.sign' : `question.dose.${decision}`, { doses });
};
