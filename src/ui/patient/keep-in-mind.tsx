/** What to keep in mind with the exercises: a limit stands open, the rest is a press away on the phone and printed in full. */
import type { TodayExercise } from '#api/patient/today-view.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { t, translate } from '#ui/language/words.ts';

type Cautions = readonly TodayExercise['cautions'][number][];

const CautionLines = ({ cautions }: { readonly cautions: Cautions }) => (
  <ul>
    {cautions.map(({ id, text }) => (
      <li key={id}>{translate(text)}</li>
    ))}
  </ul>
);

/** The cautions of these exercises, each said once. */
const cautionsOf = (exercises: readonly TodayExercise[]): Cautions => [
  ...new Map(exercises.flatMap(({ cautions }) => cautions.map((one) => [one.id, one]))).values(),
];

/** A limit bounds the dose: it is never folded away. */
export const LimitLines = ({ exercises }: { readonly exercises: readonly TodayExercise[] }) => {
  const limits = cautionsOf(exercises).filter(({ isLimit }) => isLimit);
  return limits.length > 0 ? <CautionLines cautions={limits} /> : null;
};

export interface KeepInMindProps {
  readonly exercises: readonly TodayExercise[];
  /** Open while something is new; afterwards one press away. */
  readonly isOpen?: boolean;
}

export const KeepInMind = ({ exercises, isOpen }: KeepInMindProps) => {
  const others = cautionsOf(exercises).filter(({ isLimit }) => !isLimit);
  return others.length > 0 ? (
    <Disclosure summary={t('dose.keep')} isOpen={isOpen}>
      <CautionLines cautions={others} />
    </Disclosure>
  ) : null;
};
