/** The mornings of a strip as paths, each class of marks as one. No rule stands here: a browser draws what it was sent. */

/** Width of a day. */
export const step = 6;
const zero = 19;
const perPoint = 2;

/** A morning is one letter: nothing due, not come, or points of pain to base 36. */
export const notDue = '.';
export const notCome = 'x';

const barX = (place: number): number => place * step + step / 2;

const pathOf = (mornings: string, mark: (letter: string, place: number) => string): string =>
  [...mornings].map(mark).join('');

const pointsIn = (letter: string | undefined): number => Number.parseInt(letter ?? notDue, 36);

/** The letter of a morning that did not come is a number to base 36 as well. */
const isGiven = (letter: string): boolean => letter !== notDue && letter !== notCome;

/** From 0 to the usual, or to the answer below it; 0 is a mark of its own, so that it is no gap. */
export const withinPath = (within: string): string =>
  pathOf(within, (letter, place) =>
    isGiven(letter) ? `M${barX(place)} ${zero}v${Math.max(1, pointsIn(letter) * perPoint)}` : '',
  );

/** Hangs from the edge of the usual. */
export const overPath = (within: string, over: string): string =>
  pathOf(over, (letter, place) => {
    const points = isGiven(letter) ? pointsIn(letter) : 0;
    return points > 0
      ? `M${barX(place)} ${zero + pointsIn(within[place]) * perPoint}v${points * perPoint}`
      : '';
  });

export const missingPath = (within: string): string =>
  pathOf(within, (letter, place) => (letter === notCome ? `M${barX(place) - 1.5} ${zero}l3 3m0-3l-3 3` : ''));
