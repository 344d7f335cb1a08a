/** What every part of one person's card is drawn from. */
import type { GroupPerson } from '../answers.ts';
import type { ExerciseNow, Typed } from './group-answers.ts';

export interface PersonPart {
  readonly person: GroupPerson;
  readonly typed: Typed;
  /** Adds to what was pressed; a name given as undefined is taken out. */
  readonly press: (typed: Readonly<Record<string, string | undefined>>) => void;
}

export interface ExerciseProps extends PersonPart {
  readonly now: ExerciseNow;
}
