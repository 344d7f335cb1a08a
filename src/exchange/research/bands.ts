/** Figures as bands: wide enough that many share them, and written so that a spreadsheet takes none for a date. */
import { type Joint, jointNameOf, limbOfJoint } from '#core/exercises/joints.ts';

/** Empty in every file: not answered, not asked or not known. */
export const notKnown = '';

/** What was answered and is not handed on, because too few share it. */
export const withheld = 'withheld';

const oldestTold = 90;

export const ageBands = {
  ten: (age: number): string => {
    if (age >= oldestTold) return `${oldestTold} or over`;
    if (age < 20) return 'under 20';
    const from = Math.floor(age / 10) * 10;
    return `${from} to ${from + 9}`;
  },
  twenty: (age: number): string => {
    if (age >= 80) return '80 or over';
    if (age < 40) return 'under 40';
    return age < 60 ? '40 to 59' : '60 to 79';
  },
  two: (age: number): string => (age < 60 ? 'under 60' : '60 or over'),
} as const;

export const painBand = (pain: number | null): string => {
  if (pain === null) return notKnown;
  if (pain === 0) return '0';
  if (pain <= 3) return '1 to 3';
  return pain <= 6 ? '4 to 6' : '7 to 10';
};

export const stiffnessBand = (minutes: number | null): string => {
  if (minutes === null) return notKnown;
  if (minutes === 0) return 'none';
  return minutes < 30 ? 'under 30 min' : '30 min or more';
};

/** Weeks since the first session, as parts of a course. */
export const phaseBand = (days: number): string => {
  if (days < 0) return 'before the first session';
  if (days < 4 * 7) return 'first 4 weeks';
  return days < 12 * 7 ? 'weeks 5 to 12' : 'week 13 or later';
};

/** A figure against the first of its kind: never the figure itself. */
export const shareBand = (share: number | null): string => {
  if (share === null) return notKnown;
  if (share < 0.95) return 'under the first';
  if (share <= 1.05) return 'as the first';
  return share <= 1.5 ? 'up to half more' : 'more than half more';
};

export const regionOf = (joint: Joint): string => {
  const limb = limbOfJoint(joint);
  return limb === null ? 'neck or back' : limb;
};

export const jointWord = (joint: Joint): string => jointNameOf(joint);
