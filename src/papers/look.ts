/** How a paper is to look: what whoever prints it may choose. */
import type { Day } from '#core/time/day.ts';
import type { LanguageTag } from '#messages/languages.ts';

export const paperSizes = ['a4', 'letter'] as const;
type PaperSize = (typeof paperSizes)[number];

export interface Look {
  readonly paper: PaperSize;
  readonly language: LanguageTag;
  /** Large type. */
  readonly isLarge: boolean;
  /** The civil day at the clinic: the only trace of time in the file. */
  readonly printedOn: Day;
}
