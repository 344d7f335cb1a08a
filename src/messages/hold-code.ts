/** Why an exercise rests or is eased for a reason outside the decision rules, by the key of its sentence. */
import type { Suspension } from '#core/episode/suspensions.ts';

/** "taken-back": the week after a consent was withdrawn, where the exercise itself is gone. */
export type HoldCode =
  | Suspension['code']
  | 'finding'
  | 'limit-closes'
  | 'limit-load'
  | 'machine-gone'
  | 'machine-load-gone'
  | 'news-today'
  | 'gap-easier'
  | 'gap-ring-first'
  | 'injection-easier'
  | 'taken-back'
  | 'warning-sign'
  | 'paused';
