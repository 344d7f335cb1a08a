/**
 * The bibliography: every source a figure of this product comes from, by the key its citations
 * use. Joined from the lists of the areas; a key names one source everywhere.
 */
import type { Source } from './citation.ts';
import { nutritionSources } from './nutrition.ts';
import { occlusionSources } from './occlusion.ts';
import { outcomeSources } from './outcomes.ts';
import { screeningSources } from './screening.ts';
import { seriesSources } from './series.ts';
import { strengthSources } from './strength.ts';
import { symptomSources } from './symptoms.ts';
import { variationSources } from './variation.ts';

/** The lists as they stand, for the test that no two areas use one key for different sources. */
export const sourceLists: readonly Readonly<Record<string, Source>>[] = [
  strengthSources,
  variationSources,
  occlusionSources,
  screeningSources,
  nutritionSources,
  symptomSources,
  outcomeSources,
  seriesSources,
];

export const sources: Readonly<Record<string, Source>> = Object.assign({}, ...sourceLists);
