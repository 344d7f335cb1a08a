/** The patient's day as it opens; what its questions say comes with their pages, in `asked.ts`. */
import { words as dose } from './dose.ts';
import { words as saving } from './saving.ts';
import { words as today } from './today.ts';

export const words = { ...today, ...dose, ...saving } as const;
