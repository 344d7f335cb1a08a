/** The course of one invented joint: what drives its pain, day by day, and what work does to it. */
import type { DrawnDay, DrawnPerson } from './drawn-days.ts';
import { figures } from './joint-settings.ts';
import { type Law, stimulusOf, stressOf, type WorkDone } from './work.ts';

export interface JointSettings {
  readonly law: Law;
  /** Factor on the pain of overload; 0 = pain does not depend on the load. */
  readonly slope: number;
}

export interface InventedJoint {
  readonly strength: () => number;
  readonly isFlare: () => boolean;
  /** Points of pain from overload that have not cleared. */
  readonly irritation: () => number;
  /** Pain without the scatter of the day, above the usual pain of the start. */
  readonly level: () => number;
  readonly wake: (day: DrawnDay, daysIn: number) => void;
  readonly overload: (work: WorkDone) => number;
  /** Pain a session adds while it lasts, and after it. */
  readonly felt: (work: WorkDone) => { readonly during: number; readonly after: number };
  readonly load: (work: WorkDone) => void;
}

const daysOfWeek = 7;

type Made = Pick<DrawnPerson, 'type' | 'tolerance'>;

interface State {
  strength: number;
  tolerance: number;
  irritation: number;
  overnight: number;
  relief: number;
  sessions: number;
  flareLeft: number;
  crept: number;
}

const wake = (state: State, { type }: Made, day: DrawnDay, daysIn: number): void => {
  state.irritation = (1 - figures.clearsADay) * state.irritation + state.overnight;
  state.overnight = 0;
  state.crept = (type.creep * daysIn) / daysOfWeek;
  state.flareLeft = Math.max(0, state.flareLeft - 1);
  const chance = type.flaresPerWeek / daysOfWeek + figures.flareFromIrritation * state.irritation;
  if (state.flareLeft === 0 && day.flare < chance) state.flareLeft = day.flareLength;
};

const gainTolerance = (state: State, first: number, share: number): void => {
  state.relief += (figures.relief - state.relief) / figures.reliefOver;
  if (share < figures.toleranceGainFrom) return;
  state.tolerance = Math.min(first * figures.toleranceMost, state.tolerance * (1 + figures.toleranceGain));
};

const gainStrength = (state: State, work: WorkDone): void => {
  const room = Math.max(0, 1 - (state.strength - 1) / figures.strengthMost);
  state.strength += figures.strengthASession * stimulusOf(work, state.strength) * room;
};

export const inventedJoint = (made: Made, { law, slope }: JointSettings): InventedJoint => {
  const { type, tolerance } = made;
  const state: State = {
    strength: 1,
    tolerance,
    irritation: 0,
    overnight: 0,
    relief: 0,
    sessions: 0,
    flareLeft: 0,
    crept: 0,
  };
  const isFlare = (): boolean => state.flareLeft > 0;
  const toleranceNow = (): number =>
    state.tolerance *
    (1 - figures.toleranceLostToCreep * state.crept) *
    (isFlare() ? figures.toleranceInFlare : 1);
  const shareOf = (work: WorkDone): number => stressOf(work, law) / toleranceNow();
  const overload = (work: WorkDone): number =>
    slope * type.overload * figures.overloadPain * Math.max(0, shareOf(work) - 1);
  return {
    strength: () => state.strength,
    isFlare,
    irritation: () => state.irritation,
    level: () => state.crept - state.relief + state.irritation + (isFlare() ? type.flareRise : 0),
    wake: (day, daysIn) => wake(state, made, day, daysIn),
    overload,
    felt: (work) => {
      const fading = figures.sessionRise * Math.exp(-state.sessions / figures.sessionRiseFadesOver);
      const near = slope * figures.riseOverIt * Math.max(0, shareOf(work) - figures.riseNearTolerance);
      const evening = figures.sameEvening * overload(work);
      return { during: fading + near + evening, after: fading / 2 + evening };
    },
    load: (work) => {
      const added = overload(work);
      const share = shareOf(work);
      state.irritation += figures.sameEvening * added;
      state.overnight += figures.nextMorning * added;
      if (share <= 1) gainTolerance(state, tolerance, share);
      gainStrength(state, work);
      state.sessions++;
    },
  };
};
