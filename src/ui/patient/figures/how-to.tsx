/** How to do an exercise: drawn, and in steps. The drawings come when one is shown. */
import { lazy, Suspense } from 'react';
import type { WorkedSide } from '#core/exercises/exercise.ts';
import type { Text } from '#messages/text.ts';
import { translate } from '#ui/language/words.ts';

/** A drawing that cannot be had leaves the steps, which say the same. */
const Figure = lazy(() =>
  import('./exercise-figure.tsx')
    .then(({ ExerciseFigure }) => ({ default: ExerciseFigure }))
    .catch(() => ({ default: () => null })),
);

export interface DrawnProps {
  readonly exerciseId: string;
  /** The side it is prescribed for; left out, the right side is drawn. */
  readonly side?: WorkedSide | undefined;
  readonly hasCuff?: boolean | undefined;
}

/** Keeps its room while it comes, so that nothing under it moves away from a thumb. */
export const Drawn = (props: DrawnProps) => (
  <div className="drawn">
    <Suspense fallback={null}>
      <Figure {...props} />
    </Suspense>
  </div>
);

export const Steps = ({ instructions }: { readonly instructions: readonly (Text | string)[] }) => (
  <ol>
    {instructions.map(translate).map((text) => (
      <li key={text}>{text}</li>
    ))}
  </ol>
);
