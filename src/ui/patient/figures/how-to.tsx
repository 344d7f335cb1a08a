/** How to do an exercise: drawn where it helps, and in steps. The drawings come when one is shown. */
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

export interface HowToProps {
  readonly exerciseId: string;
  readonly instructions: readonly (Text | string)[];
  /** The side it is prescribed for; left out, the right side is drawn. */
  readonly side?: WorkedSide | undefined;
  readonly hasCuff?: boolean | undefined;
}

export const HowTo = ({ exerciseId, instructions, side, hasCuff }: HowToProps) => (
  <>
    <Suspense fallback={null}>
      <Figure exerciseId={exerciseId} side={side} hasCuff={hasCuff} />
    </Suspense>
    <ol>
      {instructions.map(translate).map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ol>
  </>
);
