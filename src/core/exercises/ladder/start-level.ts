/**
 * Whether a level is where to start: the standard variation should already be challenging, judged by
 * repetitions done and repetitions left over. Too hard moves the start one level down; too easy only
 * says so, because starting higher is the clinician's decision.
 */

import type { RepetitionBand } from '#core/prescribing/dose.ts';
import { exerciseById } from '../catalogue.ts';
import type { Anthropometry } from '../exercise.ts';
import { type OnSide, sideFor } from './added-demands.ts';
import { previousLevel } from './ladder.ts';

/** A set on the level: repetitions done and repetitions thought to be left. */
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

/** One level down, on a side that the easier exercise can be done on; null where there is none. */
export const easierStart = (start: OnSide, person: Anthropometry): OnSide | null => {
  const easier = previousLevel(start.exerciseId, person);
  const exercise = easier && exerciseById(easier.rung.exerciseId);
  const side = exercise && sideFor(exercise.id, start.side);
  return exercise?.methods.includes('variation') && side ? { exerciseId: exercise.id, side } : null;
};
