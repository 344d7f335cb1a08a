/** The summary of a record: what one reads before an appointment. */
import { sayIn } from '../../../say.ts';

export const words = {
  'at-usual': 'At usual',
  'last-step': 'Last step',
  course: '{joint-name}, 12 weeks',
  'course.note': 'dose against the first signed dose; pain in the morning',
  'course.none': 'No dose is in force, so there is nothing to draw.',
  'course.no-height': 'The load of a step is not known, so that step has no height in the picture.',
  'picture.name': 'Picture of twelve weeks; the review says the same in words and as a table',
  'picture.now': 'now {share}',
  'picture.to-sign': 'to sign {share}',
  'picture.limit': 'limit {limit}',
  'picture.usual': 'usual, to {top}',
  key: 'Dot: morning within the usual. Dot on a stem: over it. Bar above: flare. Cross: no answer.',
  more: 'Also open',
  plan: 'Plan in force',
  'plan.none': 'No prescription is in force.',
  'plan.signed': 'signed {date}',
  'plan.to-sign': 'To sign',
  outcomes: 'Outcomes',
  'outcomes.none': 'Nothing has been measured twice or once.',
  'outcomes.first': 'first {value}',
  'verdict.better': 'better, beyond error',
  'verdict.worse': 'worse, beyond error',
  'verdict.within-error': 'no change to tell',
  'verdict.not-judged': 'not judged',
  'verdict.once': 'measured once, {date}',
  goals: 'Goals set with the patient',
  'goals.none': 'No goal is recorded.',
  limits: 'Limits and usual',
  'limits.kg': ', no more than {load} kg',
  'limits.until': 'to {date}',
  'limits.open': 'until lifted',
  person: 'Person and care profile',
} as const;

export const say = sayIn(words);
