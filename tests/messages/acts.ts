/** What a person must do, how soon, and what must not be, as English says it; and the counts it writes as words. */

/** Asked for in both languages or in neither. */
export const bothWays = {
  'emergency care': /emergency/i,
  'the same day': /same day/i,
  today: /\btoday\b/i,
  'at once': /at once/i,
  ringing:
    /\b(ring (us|me|the (clinic|emergency)|\{number\})|rung|ring (once|if|first))|, or ring\b|and ring\b/i,
  help: /(get|call for) (medical )?help|help now|no call for help/i,
  'telling the clinic': /\btell us\b|\blet us know\b/i,
  stopping: /\bstop\b(?! one)/i,
  'taking it off': /take it off|take the cuff off|after it is off/i,
  breath: /keep breathing/i,
} as const;

/** Another language may say these without the English: "only so far" for "stop". */
export const oneWay = {
  'help at this moment': /help now/i,
  'what must not be': /\b(do not|cannot|never|nobody|no longer|put no|put nothing)\b/i,
} as const;

/** What the steps of an exercise ask for, both ways. */
export const inExercises = {
  'leaving something undone': /\b(do not|cannot)\b/i,
  breath: /keep breathing/i,
  slowness: /\bslowly\b/i,
  'the other side': /\b(other|opposite)\b/i,
} as const;

export const counts = {
  half: /\bhalf/i,
  two: /\btwo\b/i,
  three: /\bthree\b/i,
  five: /\bfive\b/i,
  ten: /\bten\b/i,
} as const;

export type Act = keyof typeof bothWays | keyof typeof oneWay | keyof typeof inExercises;
export type Count = keyof typeof counts;
