/** What is asked in the course of the day, and what is said to the answers. */
import { words as care } from './care.ts';
import { words as morning } from './morning.ts';
import { words as questions } from './questions.ts';
import { words as session } from './session.ts';
import { words as warningSigns } from './warning-signs.ts';

export const words = { ...questions, ...session, ...morning, ...care, ...warningSigns } as const;
