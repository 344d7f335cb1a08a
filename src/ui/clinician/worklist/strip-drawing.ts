/**
 * Four weeks as a small picture, worked out on the server: the dose above as a staircase, the mornings hanging below.
 * Within the usual is pale, over it is ink, and a cross is an answer that did not come.
 */
import type { Day } from '#core/time/day.ts';
import { overUsual } from '#core/worklist/strip.ts';
import { stripInWords } from '#core/worklist/strip-words.ts';
import type { Strip } from '../answers.ts';
import { notCome, notDue, step } from './strip-marks.ts';

const doseTop = 2;
const doseFoot = 14;
type Days = Strip['days'];

const round = (value: number): number => Math.round(value * 10) / 10;

/** On the patient's own range of doses, at least 0.4 wide. */
const doseY = (days: Days): ((share: number) => number) => {
  const shares = days.flatMap(({ share }) => share ?? []);
  const low = Math.min(...shares);
  const span = Math.max(0.4, Math.max(...shares) - low);
  return (share) => round(doseFoot - ((share - low) / span) * (doseFoot - doseTop));
};

/** A staircase; it breaks off where no dose is known. */
const dosePath = (days: Days): string => {
  const y = doseY(days);
  const parts = days.map(({ share }, place) => {
    if (share === null) return '';
    const before = days[place - 1]?.share ?? null;
    const to = `H${(place + 1) * step}`;
    const isLevel = before === share && days[place + 1]?.share === share;
    if (before === null) return `M${place * step} ${y(share)}${to}`;
    return before === share ? (isLevel ? '' : to) : `V${y(share)}${to}`;
  });
  return parts.join('');
};

/** What is drawn, as short texts: fifty rows of paths or elements would be sent beside their HTML. */
export interface StripDrawing {
  /** The same in words. */
  readonly label: string;
  readonly width: number;
  readonly dose: string;
  /** Pain up to the usual, or the answer below it. */
  readonly within: string;
  /** What is over the usual. */
  readonly over: string;
}

const morningsOf = (strip: Strip, points: (pain: number, over: number) => number): string =>
  strip.days
    .map(({ pain, isMissing }) => {
      if (pain === null) return isMissing ? notCome : notDue;
      return points(pain, overUsual(pain, strip) ?? 0).toString(36);
    })
    .join('');

export const stripDrawing = (strip: Strip, today: Day): StripDrawing => ({
  label: stripInWords(strip, today),
  width: strip.days.length * step,
  dose: dosePath(strip.days),
  within: morningsOf(strip, (pain, over) => pain - over),
  over: morningsOf(strip, (_, over) => over),
});
