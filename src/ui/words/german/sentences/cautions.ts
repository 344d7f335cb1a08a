import type { Sentences } from '../../telling.ts';

/** What to mind with each exercise, in German. */
export const cautionSentences: Sentences = {
  'Put the chair against a wall so that it cannot slide.':
    'Stellen Sie den Stuhl an eine Wand, damit er nicht wegrutscht.',
};
