/**
 * Data in, PDF/UA-1 out, by an engine in this process on a thread of its own. What people typed goes in as
 * JSON and is never read as source.
 */
import { dayMilliseconds, dayNumber } from '#core/time/day.ts';
import { languages } from '#messages/languages.ts';
import type { Look } from '../look.ts';
import { setPaper } from './engine-thread.ts';
import { legible } from './legible.ts';

export interface PaperData {
  readonly title: string;
  /** Whose paper it is: the clinic. */
  readonly author: string;
  /** Names on the paper itself what stands there as a mark. */
  readonly sayUnprintable: (names: string) => string;
}

export interface Sizes {
  /** Type sizes in points, the largest first; a smaller one is taken where the paper would be too long. */
  readonly pt: readonly number[];
  readonly mostPages: number;
  /** The template says by this label how many pages are held to that; left out = all of them. */
  readonly counted?: string;
}

export interface Typeset {
  readonly pdf: Uint8Array;
  readonly pages: number;
  readonly sizePt: number;
  /** Characters that stand as a mark on the paper, by their names. */
  readonly unprintable: readonly string[];
}

const paperNames = { a4: 'a4', letter: 'us-letter' } as const;

const lookOf = ({ paper, language, isLarge, printedOn }: Look, sizePt: number) => ({
  paper: paperNames[paper],
  language,
  region: languages.find(({ tag }) => tag === language)!.locale.slice(3),
  isLarge,
  sizePt,
  day: printedOn.split('-').map(Number),
});

/** Noon of the day, so that no zone moves it to another. */
const timestampOf = ({ printedOn }: Look): number =>
  (dayNumber(printedOn) * dayMilliseconds + dayMilliseconds / 2) / 1000;

export const typeset = async (
  template: string,
  paper: PaperData,
  look: Look,
  { pt, mostPages, counted }: Sizes,
): Promise<Typeset> => {
  const { value, unprintable } = legible(paper);
  const marked = unprintable.length > 0 ? paper.sayUnprintable(unprintable.join(', ')) : null;
  const { pdf, pages, place } = await setPaper({
    template,
    data: JSON.stringify({ ...value, marked }),
    looks: pt.map((sizePt) => JSON.stringify(lookOf(look, sizePt))),
    mostPages,
    counted: counted ?? null,
    timestamp: timestampOf(look),
  });
  return { pdf, pages, sizePt: pt[place]!, unprintable };
};
