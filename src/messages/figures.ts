/** What a drawing shows, in a few sentences, from the same poses that are drawn. */
import type { WorkedSide } from '#core/exercises/exercise.ts';
import { picturesIn } from '#core/figures/drawing/picture.ts';
import type { Figure } from '#core/figures/exercises/figure.ts';
import { isHand } from '#core/figures/exercises/figures.ts';
import type { HandFigure } from '#core/figures/exercises/hand-figure.ts';
import { type Move, movesOf } from '#core/figures/movements.ts';
import type { words } from './en/pages/figures.ts';
import type { Args } from './sentence.ts';

type FigureWords = typeof words;

/** The words of the language it is said in. */
export type FigureSpeech = <Key extends keyof FigureWords>(
  key: Key,
  ...values: Args<FigureWords[Key]>
) => string;

/** The working side is drawn on the right unless it is the left that works. */
const drawnSide = (side: WorkedSide | undefined) => (side === 'left' ? 'left' : 'right');
const otherThan = { left: 'right', right: 'left' } as const;

const sayMove = ({ what, of }: Move, side: 'left' | 'right', say: FigureSpeech): string =>
  say(`figure.${what}`, { which: of === 'both' ? 'both' : of === 'other' ? otherThan[side] : side });

const sayBody = (figure: Figure, side: 'left' | 'right', say: FigureSpeech): readonly string[] => {
  const moves = movesOf(figure);
  const view = figure.view.name;
  return [
    say(`figure.seen-${view}`, { pictures: picturesIn(figure) }),
    say(`figure.${figure.position}`),
    ...(moves.length > 0
      ? moves.map((move) => sayMove(move, side, say))
      : [say(`figure.${figure.still ?? 'hold'}`)]),
    ...[...new Set((figure.loads ?? []).map(({ kind }) => say(`figure.with-${kind}`)))],
  ];
};

const sayHand = (
  { does, holds, pictures }: HandFigure,
  side: 'left' | 'right',
  say: FigureSpeech,
): readonly string[] => [
  say('figure.seen-hand', { pictures }),
  does === 'hold' || does === 'hands-twist' ? say(`figure.${does}`) : say(`figure.${does}`, { which: side }),
  ...(holds === 'nothing' ? [] : [say(`figure.with-${holds}`)]),
];

export const sayFigure = (
  figure: Figure | HandFigure,
  side: WorkedSide | undefined,
  say: FigureSpeech,
  hasCuffDrawn = false,
): string =>
  [
    ...(isHand(figure) ? sayHand(figure, drawnSide(side), say) : sayBody(figure, drawnSide(side), say)),
    ...(hasCuffDrawn ? [say('figure.with-cuff')] : []),
  ].join(' ');
