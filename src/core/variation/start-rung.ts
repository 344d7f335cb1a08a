/**
 * Whether a rung is where to start: the standard variation should already be challenging, judged by
 * repetitions done and repetitions left over. Too hard moves the start one rung down; too easy only
 * says so, because starting higher is the clinician's decision.
 */
import { exerciseById } from '../catalogue/catalogue.ts';
import type { Anthropometry, WorkedSide } from '../catalogue/exercise.ts';
import type { RepetitionBand } from '../model/dose.ts';
import { previousRung } from './ladder.ts';

/** A set on the rung: repetitions done and repetitions thought to be left. */
export interface TestedSet {
  readonly repetitions: number;
  readonly reserve: number;
}

export type StartFit = 'challenging' | 'too-easy' | 'too-hard' | 'not-tested';

export const startFit = (tested: TestedSet | undefined, band: RepetitionBand, reserve: number): StartFit => {
  if (!tested) return 'not-tested';
  const toFailure = tested.repetitions + tested.reserve;
  if (toFailure < band.low + reserve) return 'too-hard';
  return toFailure > band.high + reserve ? 'too-easy' : 'challenging';
};

export interface Start {
  readonly exerciseId: string;
  readonly side: WorkedSide;
}

/** One rung down, on a side that the easier exercise can be done on; null where there is none. */
export const easierStart = (start: Start, person: Anthropometry): Start | null => {
  const easier = previousRung(start.exerciseId, person);
  const exercise = easier && exerciseById(easier.rung.exerciseId);
  if (!exercise?.methods.includes('variation')) return null;
  if (exercise.limbsAtOnce === 'both') return { exerciseId: exercise.id, side: 'both' };
  return start.side === 'both' ? null : { exerciseId: exercise.id, side: start.side };
};
