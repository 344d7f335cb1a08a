/**
 * The one module that knows the typesetting engine: data in, PDF/UA-1 out, in this process. What people
 * typed goes in as JSON and is never read as source. A warning of the engine is a failure: an unknown font
 * is no more than a warning to it.
 */
import path from 'node:path';
import { NodeCompiler, type NodeTypstDocument } from '@myriaddreamin/typst-ts-node-compiler';
import { dayMilliseconds, dayNumber } from '#core/time/day.ts';
import { languages } from '#messages/languages.ts';
import type { Look } from '../look.ts';
import { paperFonts } from './fonts.ts';
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

let engine: NodeCompiler | null = null;

const compiler = (): NodeCompiler => {
  engine ??= NodeCompiler.create({
    workspace: path.join(process.cwd(), 'src', 'papers', 'templates'),
    fontArgs: [{ fontBlobs: [...paperFonts()] }],
  });
  return engine;
};

const paperNames = { a4: 'a4', letter: 'us-letter' } as const;

const lookOf = ({ paper, language, isLarge, printedOn }: Look, sizePt: number) => ({
  paper: paperNames[paper],
  language,
  region: languages.find(({ tag }) => tag === language)!.locale.slice(3),
  isLarge,
  sizePt,
  day: printedOn.split('-').map(Number),
});

const documentOf = (template: string, data: string, look: Look, sizePt: number): NodeTypstDocument => {
  const done = compiler().compile({
    mainFilePath: path.join(process.cwd(), 'src', 'papers', 'templates', `${template}.typ`),
    inputs: { data, look: JSON.stringify(lookOf(look, sizePt)) },
  });
  const told = done.takeDiagnostics()?.shortDiagnostics ?? [];
  if (done.result && told.length === 0) return done.result;
  throw new Error(`The paper "${template}" could not be set: ${JSON.stringify(told)}`);
};

/** Noon of the day, so that no zone moves it to another. */
const timestampOf = ({ printedOn }: Look): number =>
  (dayNumber(printedOn) * dayMilliseconds + dayMilliseconds / 2) / 1000;

const countedPages = (document: NodeTypstDocument, counted: string | undefined): number => {
  if (counted === undefined) return document.numOfPages;
  const [pages] = compiler().query(document, { selector: `<${counted}>`, field: 'value' }) as number[];
  return pages ?? document.numOfPages;
};

/** The largest of the sizes that keeps to the pages; the smallest where none does: nothing is ever cut. */
const fitting = (setAt: (sizePt: number) => NodeTypstDocument, { pt, mostPages, counted }: Sizes) => {
  const triedAt = (place: number) => {
    const sizePt = pt[place]!;
    const document = setAt(sizePt);
    return { document, sizePt, fits: countedPages(document, counted) <= mostPages };
  };
  let best = triedAt(0);
  if (best.fits || pt.length === 1) return best;
  let [low, high] = [1, pt.length - 1];
  while (low <= high) {
    const middle = Math.floor((low + high) / 2);
    const tried = triedAt(middle);
    if (tried.fits || middle === pt.length - 1) best = tried;
    if (tried.fits) high = middle - 1;
    else low = middle + 1;
  }
  return best;
};

export const typeset = (template: string, paper: PaperData, look: Look, sizes: Sizes): Typeset => {
  const { value, unprintable } = legible(paper);
  const marked = unprintable.length > 0 ? paper.sayUnprintable(unprintable.join(', ')) : null;
  const data = JSON.stringify({ ...value, marked });
  const { document, sizePt } = fitting((pt) => documentOf(template, data, look, pt), sizes);
  const pdf = compiler().pdf(document, { pdfStandard: 'ua-1', creationTimestamp: timestampOf(look) });
  const pages = document.numOfPages;
  compiler().evictCache(10);
  return { pdf: new Uint8Array(pdf), pages, sizePt, unprintable };
};
