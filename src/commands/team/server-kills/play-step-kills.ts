/** The kills before each step, on a file of the demo clinic. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { keyFiles, keyFrom } from '#server/keys.ts';
import { readEnvironment } from '../../environment.mjs';
import { run as loadDemo } from '../../load-demo.ts';
import { actsToKill } from './acts.ts';
import { killEachStep } from './step-kills.ts';

/** Answers the faults. */
export const playStepKills = async (every: number): Promise<readonly string[]> => {
  const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-steps-'));
  try {
    const file = path.join(folder, 'demo.sqlite');
    await loadDemo(['--to', file]);
    const [audit] = keyFiles(file, readEnvironment({ DATABASE_FILE: file }));
    const from = { file, auditKey: keyFrom(audit!.file) };
    const all: string[] = [];
    for (const act of actsToKill) {
      const { kills, faults } = await killEachStep(from, act, path.join(folder, act), every);
      console.log(`${act}: ${kills} kills, ${faults.length} faults`);
      all.push(...faults);
    }
    return all;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
