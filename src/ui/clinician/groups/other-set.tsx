'use client';
/** Another number or weight than was prescribed, typed; what is far over it is asked about once more. */
import { type FormEvent, useState } from 'react';
import { heldSeconds, prescribedLoadKg } from '#core/decision/dose/volume.ts';
import { repetitionsOfSet } from '#core/prescribing/dose.ts';
import { mostRepetitions } from '#core/record/entries.ts';
import { isCountFarOver, isLoadFarOver } from '#core/record/far-over.ts';
import { massInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { asName, type ExerciseNow, loadKgOf, loadName, notSaid, setName } from './group-answers.ts';
import type { ExerciseProps } from './person-props.ts';

interface OtherProps extends ExerciseProps {
  readonly onDone: () => void;
}

/** Asked about once more before it is taken. */
interface Sure {
  /** null = not counted. */
  readonly count: number | null;
  /** null = worked without a weight. */
  readonly loadKg: number | null;
}

/** What is far over the plan of what was typed; a load that was taken before is asked about no more. */
const farOver = (
  { dose, next }: ExerciseNow,
  { count, loadKg }: Sure,
  before: number | null,
): readonly string[] => [
  ...(count !== null && isCountFarOver(dose, next ?? 1, count)
    ? [say('set.sure.count', { count, planned: repetitionsOfSet(dose, next ?? 1).high })]
    : []),
  ...(loadKg !== null && loadKg !== before && isLoadFarOver(loadKg, prescribedLoadKg(dose))
    ? [
        say('set.sure.load', {
          load: massInWords(loadKg),
          planned: massInWords(prescribedLoadKg(dose)),
        }),
      ]
    : []),
];

/** What is typed of another number or weight; nothing that cannot be read is taken. */
const useOther = ({ now, typed, press, onDone }: OtherProps) => {
  const { exercise, dose, next, isEasier } = now;
  const before = loadKgOf(now, next ?? 1, typed);
  const [count, setCount] = useState('');
  const [load, setLoad] = useState(String(before ?? ''));
  const [errors, setErrors] = useState<{ readonly count?: string; readonly load?: string }>({});
  const [sure, setSure] = useState<Sure | null>(null);
  const hasLoad = prescribedLoadKg(dose) > 0;
  const take = (isCounted: boolean) => {
    const [repetitions, kg] = [readNumber(count), readNumber(load)];
    const isCount =
      !isCounted || (Number.isInteger(repetitions) && repetitions! >= 0 && repetitions! <= mostRepetitions);
    const isLoad = !hasLoad || (kg !== null && kg >= 0 && kg <= 500);
    setErrors({
      ...(isCount ? {} : { count: say('set.other.number', { most: mostRepetitions }) }),
      ...(isLoad ? {} : { load: say('set.other.weight') }),
    });
    if (!isCount || !isLoad) return;
    const read = { count: isCounted ? repetitions : null, loadKg: hasLoad ? kg : null };
    if (farOver(now, read, before).length > 0) setSure(read);
    else put(read);
  };
  const put = (read: Sure) => {
    press({
      [asName(exercise.itemId)]: isEasier ? 'easier' : 'planned',
      [setName(exercise.itemId, next ?? 1)]: read.count === null ? notSaid : String(read.count),
      ...(read.loadKg !== null && read.loadKg !== before
        ? { [loadName(exercise.itemId)]: String(read.loadKg) }
        : {}),
    });
    onDone();
  };
  const questions = sure === null ? [] : farOver(now, sure, before);
  return {
    ...{ count, setCount, load, setLoad, errors, hasLoad, take, questions },
    onYes: () => sure && put(sure),
    onNo: () => setSure(null),
  };
};

/** "No" is what the thumb finds first: a slip is likelier. */
const SureQuestion = ({
  questions,
  onYes,
  onNo,
}: Pick<ReturnType<typeof useOther>, 'questions' | 'onYes' | 'onNo'>) => (
  <ConfirmQuestion
    question={questions.join(' ')}
    yes={say('set.sure.yes')}
    no={say('set.sure.no')}
    onYes={onYes}
    onNo={onNo}
    isNoFirst
  />
);

/** A number that is not what was prescribed, or another weight. */
export const OtherSet = (props: OtherProps) => {
  const { exercise, dose } = props.now;
  const { count, setCount, load, setLoad, errors, hasLoad, take, ...sure } = useOther(props);
  const send = (event: FormEvent) => {
    event.preventDefault();
    take(true);
  };
  const held = heldSeconds(dose) !== null;
  if (sure.questions.length > 0) return <SureQuestion {...sure} />;
  return (
    <ScriptedForm className="stack-close" isQuiet onSubmit={send}>
      <NumberField
        name={`count-${exercise.itemId}`}
        label={say(held ? 'set.other.count-held' : 'set.other.count')}
        isWhole
        value={count}
        error={errors.count}
        onChange={(event) => setCount(event.target.value)}
      />
      {hasLoad ? (
        <NumberField
          name={`load-${exercise.itemId}`}
          label={say('set.other.load')}
          unit="kg"
          value={load}
          error={errors.load}
          onChange={(event) => setLoad(event.target.value)}
        />
      ) : null}
      <div className="presses">
        <SendButton>{say('set.other.take')}</SendButton>
        <Button tone="plain" onClick={() => take(false)}>
          {say('set.other.unknown')}
        </Button>
      </div>
    </ScriptedForm>
  );
};
