/** What a clinician answered to a decision. */
import { say } from '#messages/en/staff/review/decisions.ts';
import type { Response } from '../answers.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { decisionStatus } from '../words.ts';

export const responseInWords = (response: Response, clock: ClinicClock): string => {
  const by = say('answered-by', {
    name: response.answeredName,
    time: momentInWords(response.answeredAt, clock),
  });
  if (response.kind === 'accept') return say('accepted', { by });
  const word = response.decision
    ? decisionStatus[response.decision].word.toLowerCase()
    : say('another-answer');
  return say('overridden', { word, until: response.until ?? '', by, reason: response.reason });
};
