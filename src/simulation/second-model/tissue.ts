/**
 * The joint: load brings soreness that arrives over two nights and goes again, and leaves strain that gathers
 * and makes a flare more likely. What the joint bears grows with work and fades without it. No threshold: each
 * load brings something, with the cube of its share of what is borne. All of it invented.
 */
import { tissue } from './figures.ts';
import { type Flare, flarePoints } from './flare.ts';

export interface Tissue {
  /** A night passes. `byLoad` and `byLoadAt` are of the new day, drawn beforehand. */
  readonly night: (byLoad: Flare, byLoadAt: number) => void;
  /** Points that load has brought today, its flare in them. */
  readonly points: () => number;
  readonly isLoadFlare: () => boolean;
  readonly relief: () => number;
  readonly chanceOfFlare: () => number;
  /** Load as a share of what is borne now; 1 brings about a point. */
  readonly share: (load: number, ownFlarePoints: number) => number;
  /** Points at their height that this share would add. */
  readonly adds: (share: number) => number;
  readonly bear: (share: number) => void;
}

export const newTissue = (capacity: number, stays: number): Tissue => {
  let onItsWay = 0;
  let sore = 0;
  let strain = 0;
  let gained = 0;
  let habit = 0;
  let flare: { readonly flare: Flare; day: number } | null = null;

  const adds = (share: number): number =>
    tissue.most * (1 - Math.exp(-(share ** tissue.power) / tissue.most));
  const points = (): number => sore + (flare ? flarePoints(flare.flare, flare.day) : 0);
  const chanceOfFlare = (): number => Math.min(1, tissue.flareByStrain * strain ** 2);

  return {
    adds,
    points,
    chanceOfFlare,
    isLoadFlare: () => flare !== null,
    relief: () => tissue.relief * (1 - Math.exp(-habit / tissue.reliefSessions)),
    share: (load, ownFlarePoints) =>
      (load / capacity) *
      Math.exp(tissue.irritable * Math.min(tissue.irritableTo, points() + ownFlarePoints) - gained),
    night: (byLoad, byLoadAt) => {
      sore = tissue.arrives * onItsWay + stays * sore;
      onItsWay *= 1 - tissue.arrives;
      if (flare) flare.day += 1;
      if (flare && flare.day >= flare.flare.days) flare = null;
      if (!flare && byLoadAt < chanceOfFlare()) flare = { flare: byLoad, day: 0 };
      strain *= Math.exp(-1 / tissue.strainDays);
      gained *= Math.exp(-1 / tissue.gainFadesDays);
      habit *= Math.exp(-1 / tissue.reliefFadesDays);
    },
    bear: (share) => {
      const brought = adds(share);
      sore += tissue.sameEvening * brought;
      onItsWay += brought / tissue.arrives - tissue.sameEvening * brought;
      strain += brought;
      gained += tissue.gain * share * Math.exp(1 - share);
      habit += 1;
    },
  };
};
