/** What was typed for a dose and not proposed further, kept by the exercise it was typed for. */
import { changedFrom } from '../../forms/changed-from.ts';
import type { Typed } from '../../forms/typed.ts';

/** A line that is in force, or an exercise by a method on a side. */
export interface TypedFor {
  readonly method: string;
  readonly exerciseId: string;
  readonly side?: string | undefined;
  readonly itemId?: string | undefined;
}

const keyOf = ({ method, exerciseId, side, itemId }: TypedFor): string =>
  `${itemId ?? [method, exerciseId, side ?? ''].join('/')} `;

/** Of all that was kept, what belongs to this exercise, by field. */
export const typedBefore = (kept: Typed, of: TypedFor): Typed => {
  const key = keyOf(of);
  return Object.fromEntries(
    Object.entries(kept).flatMap(([path, text]) =>
      path.startsWith(key) ? [[path.slice(key.length), text]] : [],
    ),
  );
};

/** What is kept from now on: of this exercise all that differs from how its form starts. */
export const keptWith = (kept: Typed, of: TypedFor, typed: Typed, start: Typed): Typed => {
  const key = keyOf(of);
  const others = Object.entries(kept).filter(([path]) => !path.startsWith(key));
  const own = Object.entries(changedFrom(start, typed));
  return Object.fromEntries([...others, ...own.map(([path, text]) => [`${key}${path}`, text] as const)]);
};
