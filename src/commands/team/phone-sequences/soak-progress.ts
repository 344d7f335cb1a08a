/** How far a long run has come, kept in a file so that the next one goes on from there. */
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { inRoot } from '#commands/paths.mjs';

export interface SoakProgress {
  /** First seed of the run; the sequences have this one and those after it. */
  readonly seed: number;
  nextSeed: number;
  played: number;
  /** Nothing was planned, or the engine asked for rest. */
  idle: number;
  readonly faults: string[];
}

const file = inRoot('.local', 'soak-phone.json');

/** Where a run of this seed stopped, or a new one. */
export const soakedSoFar = (seed: number): SoakProgress => {
  const fresh: SoakProgress = { seed, nextSeed: seed, played: 0, idle: 0, faults: [] };
  if (!existsSync(file)) return fresh;
  const saved = JSON.parse(readFileSync(file, 'utf8')) as SoakProgress;
  return saved.seed === seed ? saved : fresh;
};

export const saveSoak = (progress: SoakProgress): void => {
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, `${JSON.stringify(progress)}\n`);
};

/** The run came to its end; the next begins anew. */
export const forgetSoak = (): void => rmSync(file, { force: true });
