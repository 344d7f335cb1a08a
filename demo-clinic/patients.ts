/** The stories, in the order of the sign-ins. */
import { beyondHerDumbbells } from './patients/beyond-her-dumbbells.ts';
import { firstVisit } from './patients/first-visit.ts';
import { flareThenHold } from './patients/flare-then-hold.ts';
import { handByHolds } from './patients/hand-by-holds.ts';
import { kidneyLock } from './patients/kidney-lock.ts';
import { kneeInPhases } from './patients/knee-in-phases.ts';
import { missedAnswers } from './patients/missed-answers.ts';
import { occlusionCleared } from './patients/occlusion-cleared.ts';
import { occlusionNotCleared } from './patients/occlusion-not-cleared.ts';
import { redFlag } from './patients/red-flag.ts';
import { rheumatoidFlare } from './patients/rheumatoid-flare.ts';
import { steadyProgress } from './patients/steady-progress.ts';
import type { Story } from './story.ts';

export const stories: readonly Story[] = [
  steadyProgress,
  flareThenHold,
  missedAnswers,
  occlusionCleared,
  occlusionNotCleared,
  redFlag,
  kidneyLock,
  beyondHerDumbbells,
  rheumatoidFlare,
  firstVisit,
  kneeInPhases,
  handByHolds,
];
