/** The drawing of an exercise for paper: black, white and grey, and what it shows in words. Nothing in it is text. */
import { drawingOf } from '#core/figures/drawing/drawing.ts';
import type { Stroke } from '#core/figures/drawing/strokes.ts';
import type { Spot } from '#core/figures/drawing/view.ts';
import { figures } from '#core/figures/exercises/figures.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { type FigureSpeech, sayFigure } from '#messages/figures.ts';

const [ink, paper, works, far, before] = ['#000', '#fff', '#8a8a8a', '#555', '#b5b5b5'] as const;

const strokeColours: Readonly<Record<Stroke['tone'], string>> = {
  ink,
  paper,
  works,
  far,
  ghost: before,
  prop: far,
  band: ink,
  hair: 'none',
  arrow: ink,
};
const fillColours: Readonly<Partial<Record<Stroke['tone'], string>>> = {
  ink,
  hair: ink,
  arrow: ink,
  paper,
  prop: paper,
  works,
};

const path = ({ d, tone, width, isFilled, isSquare }: Stroke): string =>
  `<path d="${d}" stroke="${strokeColours[tone]}" stroke-width="${width}" fill="${
    isFilled ? (fillColours[tone] ?? 'none') : 'none'
  }" stroke-linecap="${isSquare ? 'butt' : 'round'}" stroke-linejoin="round"/>`;

/** The numbers of two pictures as strokes: letters in a drawing would need a font of its own. */
const numerals = ['M1 -7L3.5 -9V0', 'M0.5 -7C1 -10 5.5 -9.5 5 -6.5C4.7 -4.5 1.5 -2.5 0.5 0H5.5'] as const;

const numeralAt = (at: number, [x, y]: Spot): string =>
  `<path d="${numerals[at] ?? ''}" transform="translate(${x} ${y})" stroke="${ink}" stroke-width="1.3" fill="none" stroke-linecap="round"/>`;

export interface ExerciseDrawing {
  readonly svg: string;
  /** Said to who does not see it. */
  readonly said: string;
}

export const exerciseDrawing = (
  { exerciseId, side, method }: Pick<Dose, 'exerciseId' | 'side' | 'method'>,
  say: FigureSpeech,
): ExerciseDrawing | null => {
  const figure = figures[exerciseId];
  if (!figure) return null;
  const drawing = drawingOf(figure, method === 'occlusion');
  const { pictures, left, top, wide, high, isNumbered, places, numeral, whole } = drawing;
  const mirrored = side === 'left' ? ` transform="translate(${2 * left + wide} 0) scale(-1 1)"` : '';
  const drawn = pictures.map(({ strokes }, at) => {
    const [x, y] = places[at]!;
    const picture = `<svg width="${wide}" height="${high}" viewBox="${left} ${top} ${wide} ${high}"><g${mirrored}>${strokes.map(path).join('')}</g></svg>`;
    return `<g transform="translate(${x} ${y})">${picture}${isNumbered ? numeralAt(at, numeral) : ''}</g>`;
  });
  const size = whole.map(Math.ceil);
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size.join(' ')}" width="${size[0]}" height="${size[1]}">${drawn.join('')}</svg>`,
    said: sayFigure(figure, side, say, drawing.cuffOn !== undefined),
  };
};
