/** Every drawing of a whole body with its poses: the start, the end and one halfway. */
import { between } from '#core/figures/body/pose.ts';
import { figures, isHand } from '#core/figures/exercises/figures.ts';

export const bodies = Object.entries(figures).flatMap(([id, figure]) =>
  isHand(figure) ? [] : [{ id, figure }],
);
export const hands = Object.entries(figures).flatMap(([id, figure]) =>
  isHand(figure) ? [{ id, figure }] : [],
);

export const poses = bodies.flatMap(({ id, figure: { start, end } }) =>
  end
    ? [
        { id: `${id}, start`, pose: start },
        { id: `${id}, halfway`, pose: between(start, end, 0.5) },
        { id: `${id}, end`, pose: end },
      ]
    : [{ id, pose: start }],
);
