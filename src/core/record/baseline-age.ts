import type { Day } from '../time/day.ts';
import type { Baseline } from './record.ts';

/** The day a baseline's age counts from: one that followed better mornings is as old as the one it came from. */
export const setByClinicianOn = ({ setOn, tightenedFrom }: Pick<Baseline, 'setOn' | 'tightenedFrom'>): Day =>
  tightenedFrom ?? setOn;
