/** One flare: how long, how high, and how it goes. */
import type { Seeded } from '../raises/seeded.ts';
import { flares } from './figures.ts';

export interface Flare {
  readonly days: number;
  readonly height: number;
}

const exponential = (random: Seeded): number => -Math.log(1 - random.next());

const inflammatoryDays = (random: Seeded): number => {
  const at = random.next();
  let below = 0;
  for (const { share, from, to } of flares.inflammatoryDays) {
    below += share;
    if (at < below) return from + random.below(to - from + 1);
  }
  return flares.inflammatoryDays.at(-1)!.to;
};

const usualDays = (random: Seeded): number =>
  Math.max(
    flares.leastDays,
    Math.round(flares.medianDays * Math.exp(flares.logSpreadDays * random.normal())),
  );

export const drawFlare = (inflammatory: boolean, random: Seeded): Flare => ({
  days: inflammatory ? inflammatoryDays(random) : usualDays(random),
  height:
    flares.leastHeight +
    (inflammatory ? flares.inflammatoryMeanOverLeast : flares.meanOverLeast) * exponential(random),
});

/** Points on a day of it, 0 = the first; nothing once it is over. */
export const flarePoints = ({ days, height }: Flare, day: number): number => {
  if (day < 0 || day >= days) return 0;
  if (day < flares.fullDays) return height;
  const way = (day - flares.fullDays) / Math.max(1, days - 1 - flares.fullDays);
  return height * (flares.laterShare + (flares.lastShare - flares.laterShare) * way);
};
