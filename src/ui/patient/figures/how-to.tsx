/** How to do an exercise: drawn, and in steps. The drawings come when one is shown. */
import type { Dose } from '#core/prescribing/dose.ts';
import type { Text } from '#messages/text.ts';
import { translate } from '#ui/language/words.ts';
import { fetchedPart } from '../phone/fetched.tsx';

/** A drawing that cannot be had leaves the steps, which say the same. */
const Figure = fetchedPart(() => import('./exercise-figure.tsx').then((file) => file.ExerciseFigure));

/** As prescribed: its side, and the cuff. Keeps its room while it comes, so that nothing under it moves away from a thumb. */
export const Drawn = ({ dose: { exerciseId, side, method } }: { readonly dose: Dose }) => (
  <div className="drawn">
    <Figure exerciseId={exerciseId} side={side} hasCuff={method === 'occlusion'} />
  </div>
);

export const Steps = ({ instructions }: { readonly instructions: readonly (Text | string)[] }) => (
  <ol>
    {instructions.map(translate).map((text) => (
      <li key={text}>{text}</li>
    ))}
  </ol>
);
