/** What a drawing shows, in a few sentences, from the same poses that are drawn. */
import './figure-words.ts';
import type { WorkedSide } from '#core/exercises/exercise.ts';
import { t } from '#ui/language/words.ts';
import { picturesIn } from './drawing/picture.ts';
import type { Figure } from './exercises/figure.ts';
import { isHand } from './exercises/figures.ts';
import type { HandFigure } from './exercises/hand-figure.ts';
import { type Move, movesOf } from './movements.ts';

/** The working side is drawn on the right unless it is the left that works. */
const drawnSide = (side: WorkedSide | undefined) => (side === 'left' ? 'left' : 'right');
const otherThan = { left: 'right', right: 'left' } as const;

const sayMove = ({ what, of }: Move, side: 'left' | 'right'): string =>
  t(`figure.${what}`, { which: of === 'both' ? 'both' : of === 'other' ? otherThan[side] : side });

const sayBody = (figure: Figure, side: 'left' | 'right'): readonly string[] => {
  const moves = movesOf(figure);
  const view = figure.view.name;
  return [
    t(`figure.seen-${view}`, { pictures: picturesIn(figure) }),
    t(`figure.${figure.position}`),
    ...(moves.length > 0
      ? moves.map((move) => sayMove(move, side))
      : [t(`figure.${figure.still ?? 'hold'}`)]),
    ...[...new Set((figure.loads ?? []).map(({ kind }) => t(`figure.with-${kind}`)))],
  ];
};

const sayHand = ({ holds, palm, pictures }: HandFigure, side: 'left' | 'right'): readonly string[] => {
  const sided = { which: side };
  return [
    t('figure.seen-hand', { pictures }),
    holds === 'weight'
      ? t(palm === 'up' ? 'figure.wrist-bends' : 'figure.wrist-bends-back', sided)
      : holds === 'ball'
        ? t('figure.fingers-close', sided)
        : holds === 'ring'
          ? t('figure.fingers-spread', sided)
          : t('figure.hands-twist'),
    t(holds === 'weight' ? 'figure.with-hand-weight' : `figure.with-${holds}`),
  ];
};

export const sayFigure = (
  figure: Figure | HandFigure,
  side: WorkedSide | undefined,
  hasCuffDrawn = false,
): string =>
  [
    ...(isHand(figure) ? sayHand(figure, drawnSide(side)) : sayBody(figure, drawnSide(side))),
    ...(hasCuffDrawn ? [t('figure.with-cuff')] : []),
  ].join(' ');
