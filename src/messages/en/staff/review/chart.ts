/** The picture of the review: its panels, what each mark stands for, and what is chosen for it. */
import { sayIn } from '../../../say.ts';

export const words = {
  'in-words': {
    by: 'count',
    one: 'The picture in words, 1 sentence',
    other: 'The picture in words, {count} sentences',
  },
  pain: 'Pain',
  usual: 'usual {top}',
  limit: 'limit {limit}',
  flare: { by: 'count', one: 'flare, {count} morning', other: 'flare, {count} mornings' },
  gap: '{days} days without',
  'no-height': 'load not known: no line',
  'key.easier': 'easier session',
  'key.signed': 'signed step',
  'key.within': 'morning, within usual',
  'key.over': 'morning, over usual',
  'key.highest': 'highest in the session',
  'key.missing': 'answer missing',
  'key.no-load': 'figure not known',
  'key.corrected': 'corrected later',
  'by-dose': 'At usual, by dose',
  'by-dose.of': 'At usual, by dose: {title}',
  'by-dose.at-usual': 'at usual',
  'by-dose.over-usual': 'over usual',
  'by-dose.row': '{dose}: {count} at usual',
  'by-dose.corridor': 'corridor',
  'by-dose.end': 'End of the corridor',
  'by-dose.highest': 'highest at usual',
  'by-dose.lowest': 'lowest over usual',
  'by-dose.lower': {
    by: 'count',
    one: '{count} lower dose is in the words.',
    other: '{count} lower doses are in the words.',
  },
  'joint.now': '{pain}, usual {top}',
  'joint.now-unset': '{pain}, usual not set',
  'joint.none': 'no morning answered',
  'joint.title': 'Mornings of each joint, on one scale',
  'choice.exercise': 'Other exercise',
  'choice.measure': 'Shown as:',
  'choice.title': 'What the chart shows',
  'choice.ended': '{title} (ended)',
} as const;

export const say = sayIn(words);
