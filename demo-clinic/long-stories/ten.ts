/** The ten long stories. */
import { changedTreatment } from './changed-treatment.ts';
import { eager } from './eager.ts';
import { forgetful } from './forgetful.ts';
import { highUsualPain } from './high-usual-pain.ts';
import { holiday } from './holiday.ts';
import { improver } from './improver.ts';
import { longFlare } from './long-flare.ts';
import type { LongStory } from './long-story.ts';
import { quietYear } from './quiet-year.ts';
import { slowCreep } from './slow-creep.ts';
import { threeFlares } from './three-flares.ts';

export const longStories: readonly LongStory[] = [
  quietYear,
  threeFlares,
  longFlare,
  slowCreep,
  improver,
  holiday,
  forgetful,
  highUsualPain,
  changedTreatment,
  eager,
];
