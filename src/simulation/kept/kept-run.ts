import type { KeptRun } from './kept-row.ts';

/** Written by `npm run simulate -- --keep`. */
export const keptRun: KeptRun = { seed: 20260131, people: 20, weeks: 12, ranOn: '2026-11-29' };
