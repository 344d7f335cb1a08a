/**
 * Four weeks as a small picture, worked out on the server: the dose above as a staircase, the mornings hanging below.
 * Within the usual is pale, over it is ink, and a cross is an answer that did not come. Each class of marks is
 * one path.
 */
import type { Day } from '#core/time/day.ts';
import { overUsual } from '#core/worklist/strip.ts';
import { stripInWords } from '#core/worklist/strip-words.ts';
import type { Strip } from '../answers.ts';

const step = 6;
const doseTop = 2;
const doseFoot = 14;
const zero = 19;
const perPoint = 2;
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

const barX = (place: number): number => place * step + step / 2;

/** From 0 to the usual, or to the answer below it; 0 is a mark of its own, so that it is no gap. */
const withinPath = (strip: Strip): string =>
  strip.days
    .map(({ pain }, place) => {
      if (pain === null) return '';
      const within = pain - (overUsual(pain, strip) ?? 0);
      return `M${barX(place)} ${zero}v${Math.max(1, within * perPoint)}`;
    })
    .join('');

const overPath = (strip: Strip): string =>
  strip.days
    .map(({ pain }, place) => {
      const over = pain === null ? 0 : (overUsual(pain, strip) ?? 0);
      return over > 0 ? `M${barX(place)} ${zero + (pain! - over) * perPoint}v${over * perPoint}` : '';
    })
    .join('');

const missingPath = ({ days }: Strip): string =>
  days
    .map(({ isMissing }, place) => (isMissing ? `M${barX(place) - 1.5} ${zero}l3 3m0-3l-3 3` : ''))
    .join('');

/** What is drawn, as texts: fifty rows of drawn elements would be sent as elements beside their HTML. */
export interface StripDrawing {
  /** The same in words. */
  readonly label: string;
  readonly width: number;
  readonly dose: string;
  readonly within: string;
  readonly over: string;
  readonly missing: string;
}

export const stripDrawing = (strip: Strip, today: Day): StripDrawing => ({
  label: stripInWords(strip, today),
  width: strip.days.length * step,
  dose: dosePath(strip.days),
  within: withinPath(strip),
  over: overPath(strip),
  missing: missingPath(strip),
});
