/**
 * The bibliography: every source a figure of this product comes from, by the key its citations
 * use. Joined from the lists of the areas; a key names one source everywhere.
 */
import { nutritionSources } from './nutrition.ts';
import { occlusionSources } from './occlusion.ts';
import { outcomeSources } from './outcomes.ts';
import { screeningSources } from './screening.ts';
import { seriesSources } from './series.ts';
import type { Source } from './source.ts';
import { strengthSources } from './strength.ts';
import { symptomSources } from './symptoms.ts';
import { variationSources } from './variation.ts';

const lists = [
  strengthSources,
  variationSources,
  occlusionSources,
  screeningSources,
  nutritionSources,
  symptomSources,
  outcomeSources,
  seriesSources,
] as const;

type KeyOf<List> = List extends unknown ? keyof List & string : never;

/** Key of a source; a citation with any other does not compile. */
export type SourceKey = KeyOf<(typeof lists)[number]>;

/** The lists as they stand, for the test that no two areas use one key for different sources. */
export const sourceLists: readonly Readonly<Record<string, Source>>[] = lists;

export const sources: Readonly<Record<string, Source>> = Object.assign({}, ...sourceLists);
