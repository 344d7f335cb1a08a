/**
 * A second statement of version 1 of the table of rules, written from its published wording and sharing no code with
 * the engine: one line a rule, answers as numbers, 0 the most cautious. Kept plain on purpose.
 */
type Score = number | null | 'not-applicable';
// biome-ignore lint/suspicious/noExplicitAny: the second statement borrows no type from the first.
type Plain = any;

/** decision: pause 0, ease-back 1, hold 2, progress 3 · today: none 0, rest 1, bad-day 2, planned 3 · contact: emergency 0, same-day 1, routine 2, none 3 */
export type Row = readonly [id: string, fires: boolean, decision: number, today: number, contact: number];

export interface Second {
  decision: string;
  largestStep: string | null;
  today: string;
  contact: string;
  rules: string;
}

const EMERGENCY =
  'chest-pain breathlessness fainting severe-headache-or-vision saddle-or-bladder-change face-speech-or-one-sided-weakness'.split(
    ' ',
  );
const CLINIC = ['locked-joint'];

export const over = (score: Score, item: number): boolean =>
  score !== null && score !== 'not-applicable' && score >= item;

const flagContact = (flags: string[] | null): number => {
  if (!flags?.length) return 3;
  if (flags.some((flag) => EMERGENCY.includes(flag))) return 0;
  return flags.every((flag) => CLINIC.includes(flag)) ? 2 : 1;
};

export const painRows = (f: Plain, peak: number, B: number, U: number): Row[] => [
  ['R1', f.redFlags !== null && f.redFlags.length > 0, 0, 0, flagContact(f.redFlags)],
  ['P1', peak >= 8, 1, 2, 1],
  [
    'P1x',
    peak === 10 ||
      (peak >= 9 && peak - B >= 3) ||
      (over(f.painNextMorning, 8) && f.painNextMorning - B >= 2) ||
      (peak >= 8 && f.previousPeakEight && peak - B >= 2),
    0,
    0,
    1,
  ],
  ['P2', peak > f.painCeiling, 1, 2, 3],
  ['P3', over(f.painBefore, Math.max(5, U + 1)), 2, 2, 3],
  ['P3b', over(f.painBefore, U + 2), 2, 3, 3],
  ['P4', over(f.painDuring, Math.max(5, U + 1)) || over(f.painAfter, Math.max(5, U + 1)), 2, 3, 3],
  [
    'P5',
    over(f.painNextMorning, U + 2) || (over(f.painNextMorning, U + 1) && f.previousMorningOverTop),
    1,
    3,
    3,
  ],
  ['P5h', over(f.painNextMorning, U + 1), 2, 3, 3],
  ['P6', over(f.painTwoHours, U + 2), 1, 3, 3],
  ['P6h', over(f.painTwoHours, U + 1), 2, 3, 3],
  ['P7', f.morningPainMean7 !== null && f.morningPainMean7 - B >= 2, 1, 3, 3],
  ['P7h', f.morningPainMean7 !== null && f.morningPainMean7 - B >= 1, 2, 3, 3],
  ['B0', f.usualPain === null, 2, 3, 3],
  ['B1', f.baselineAgeDays > 42, 2, 3, 2],
  ['B2', f.baselineLatched, 2, 3, 2],
];

export const jointRows = (f: Plain): Row[] => {
  const minutes = typeof f.stiffnessMinutes === 'number' ? f.stiffnessMinutes : -1;
  const T0 = f.usualStiffnessMinutes;
  return [
    ['W3', f.swelling === 'severe', 0, 1, 1],
    ['W2', f.swelling === 'clear', 1, 1, 2],
    ['W1s', f.swelling === 'slight' && f.usualSwelling === 'none', 2, 3, 3],
    ['S1', f.effusion === '3+', 0, 1, 1],
    ['S2', f.effusion === '2+' && f.effusionRun >= 2, 0, 1, 1],
    ['S2f', f.effusion === '2+', 1, 1, 2],
    ['S3', f.effusion === '1+' && ['zero', 'trace'].includes(f.usualEffusion), 2, 3, 3],
    ['T1', minutes > 60 && minutes > T0 + 45 && minutes > 2 * T0, 1, 3, 2],
    ['T2', minutes > 30 && minutes > T0 + 20 && minutes > 1.5 * T0, 2, 3, 3],
    ['F1', f.flareDays >= 8 && !f.inflammatoryArthritis, 0, 1, 2],
    ['F1i', f.flareDays >= 3 && f.inflammatoryArthritis, 1, 2, 2],
    ['F2', f.flareDays >= 1, 1, 2, 3],
    [
      'W1',
      (f.otherJointsFlared >= 1 && f.flareDays >= 1) || (f.fatigueRise !== null && f.fatigueRise >= 2),
      2,
      3,
      3,
    ],
  ];
};

export const workRows = (f: Plain): Row[] => {
  const done = f.repetitionsDonePercent;
  const missing = [f.painBefore, f.painDuring, f.painAfter, f.painTwoHours, f.painNextMorning, f.swelling];
  missing.push(f.stiffnessMinutes, f.redFlags, done);
  return [
    [
      'C1',
      done !== null && done < 60 && 'joint-pain symptom unknown'.split(' ').includes(f.stopReason),
      1,
      3,
      3,
    ],
    ['C2', done !== null && done < 100, 2, 3, 3],
    ['C3', f.reserveShortfall >= 2 && f.prescribedReserve >= 1, 2, 3, 3],
    ['C4', f.sessionsOnTarget <= 1, f.sessionsOnTarget === 0 ? 2 : 3, 3, 3],
    [
      'A1',
      f.missedSessions14 >= 2 && 4 * (f.plannedSessions14 - f.missedSessions14) < 3 * f.plannedSessions14,
      2,
      3,
      3,
    ],
    ['A2', f.gapDays >= 14, 1, 3, 3],
    ['M1', missing.some((one) => one === null), 2, 3, 3],
    ['X1', f.symptomSignal, 2, 3, 3],
    ['D1', f.extraPainRelief, 2, 3, 3],
    ['D2', f.treatmentChangeDays !== null && f.treatmentChangeDays <= 14, 2, 3, 2],
    ['D3', f.overdone, 2, 3, 2],
    ['D4', f.gaveWay, 2, 3, 2],
  ];
};

/** The most cautious of the rows that fire. */
export const answersOf = (rows: readonly Row[], largestStep: string): Second => {
  let decision = 3;
  let today = 3;
  let contact = 3;
  let rules = '';
  for (const [id, fires, d, t, c] of rows) {
    if (!fires) continue;
    rules += ` ${id}`;
    decision = Math.min(decision, d);
    today = Math.min(today, t);
    contact = Math.min(contact, c);
  }
  return {
    decision: ['pause', 'ease-back', 'hold', 'progress'][decision]!,
    largestStep: decision < 3 ? null : largestStep,
    today: ['none', 'rest-this-joint', 'bad-day', 'as-planned'][today]!,
    contact: ['emergency', 'same-day', 'routine', 'none'][contact]!,
    rules: rules.trim(),
  };
};

export const secondStatement = (f: Plain): Second => {
  const scores = [f.painBefore, f.painDuring, f.painAfter, f.painTwoHours, f.painNextMorning];
  const peak = Math.max(-1, ...scores.filter((score) => typeof score === 'number'));
  const B = f.usualPain === null ? 0 : f.usualPain;
  const U = f.usualPain === null ? 0 : f.usualPainTop === null ? B : f.usualPainTop;
  const rows = [...painRows(f, peak, B, U), ...jointRows(f), ...workRows(f)];
  return answersOf(rows, f.sessionsOnTarget === 1 ? 'repetitions' : 'load');
};
