/** Whether today's page has to say something that most days it has not. */
import type { DayState } from '../day-state.ts';
import type { DayView } from '../view-on-day.ts';

/** A clock off by less is put right without a word. */
export const toldFromMs = 5 * 60_000;

export interface Unusual {
  readonly view: DayView;
  readonly state: DayState;
  /** What the phone's clock lacks, ms. */
  readonly lacksMs: number;
}

export const isOutOfTheUsual = ({ view, state, lacksMs }: Unusual): boolean =>
  Math.abs(lacksMs) >= toldFromMs ||
  view.clinicDay !== view.day ||
  state.morningOutside !== null ||
  (view.morning.twice ?? null) !== null;
