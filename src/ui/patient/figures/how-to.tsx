/** How to do an exercise: drawn where it helps, and in steps. The drawings come when one is shown. */
import { lazy, Suspense } from 'react';
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
}

export const HowTo = ({ exerciseId, instructions }: HowToProps) => (
  <>
    <Suspense fallback={null}>
      <Figure exerciseId={exerciseId} />
    </Suspense>
    <ol>
      {instructions.map(translate).map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ol>
  </>
);
