/** The sentences that the core makes, in German. */
import { germanSentences } from './sentences.ts';
import { translatorOf } from './translator.ts';

export const translateToGerman = translatorOf(germanSentences, ',');
