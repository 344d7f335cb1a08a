/** How to do an exercise: drawn where it helps, and in steps. */
import { ExerciseFigure } from './exercise-figure.tsx';

export interface HowToProps {
  readonly exerciseId: string;
  readonly instructions: readonly string[];
}

export const HowTo = ({ exerciseId, instructions }: HowToProps) => (
  <>
    <ExerciseFigure exerciseId={exerciseId} />
    <ol>
      {instructions.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ol>
  </>
);
