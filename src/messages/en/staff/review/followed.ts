/** What each rule did in this clinic, and what followed. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'What followed each rule',
  back: 'Back to the rules',
  lead: 'Decisions of the last {weeks} weeks in this clinic: in how many each rule fired, in how many it decided, how often a clinician answered and overruled the decision, and what the patient told of the joint in the 7 days after.',
  counts:
    'Of each decision the first of these counts: a flare began; pain over the acceptable pain limit; neither; no answer.',
  followed:
    'What followed a rule was not brought about by it: rules fire when a joint is sore, and sore joints flare more often.',
  intervals:
    'In brackets: 95 % interval of the share. One person has several decisions, so the true intervals are wider.',
  few: 'Left out, since fewer than {people} people are behind each: {rules}.',
  caption: 'Rules in the order of the table',
  rule: 'Rule',
  fired: 'Fired',
  decided: 'Decided',
  overruled: 'Overruled',
  flare: 'Flare began',
  'over-limit': 'Pain over the limit',
  nothing: 'Neither',
  'no-answer': 'No answer',
  'too-early': 'Too early to say',
  'overruled.unanswered': 'none was answered',
  'overruled.of': '{count} of {answered} answered',
  'overruled.ways': '{bolder} bolder, {cautious} more cautious, {same} the same',
  share: '{count} ({low}–{high} %)',
  never: 'Never fired: {rules}.',
  nobody: 'In this time no rule has fired for {people} people or more in this clinic.',
} as const;

export const say = sayIn(words);
