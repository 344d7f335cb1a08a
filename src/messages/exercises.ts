/** Exercises as the patient reads them. */
import { everyLanguage } from './every-language.ts';
import type { ExerciseSentences } from './sentence.ts';
import { asTyped, type Text, textBy } from './text.ts';

interface ExerciseTexts {
  readonly name: Text;
  readonly steps: readonly Text[];
}

const byId = (tag: keyof typeof everyLanguage): Readonly<Record<string, ExerciseSentences>> =>
  everyLanguage[tag].sentences.exercises;

const textsOf = ([id, { steps }]: readonly [string, ExerciseSentences]): readonly [string, ExerciseTexts] => [
  id,
  {
    name: textBy((tag) => byId(tag)[id]!.name),
    steps: Object.freeze(steps.map((_, place) => textBy((tag) => byId(tag)[id]!.steps[place]!))),
  },
];

/** One text an exercise, made once: a day's view names the same exercises for every patient. */
const texts: ReadonlyMap<string, ExerciseTexts> = new Map(
  Object.entries(everyLanguage.en.sentences.exercises).map(textsOf),
);

/** An exercise that has left the catalogue, in a row of earlier days, is named by its id. */
export const exerciseName = (id: string): Text => texts.get(id)?.name ?? asTyped(id);

/** What to do, in order; none for an exercise that has left the catalogue. */
export const exerciseSteps = (id: string): readonly Text[] => texts.get(id)?.steps ?? [];
