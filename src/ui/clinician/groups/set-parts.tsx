'use client';
/** The sets of an exercise: the one that is asked about, two presses, and those that were done. */
import { useState } from 'react';
import { heldSeconds } from '#core/decision/dose/volume.ts';
import { massInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import { Button } from '#ui/design-system/button.tsx';
import { type ExerciseNow, isShort, loadKgOf, type SetDone, stopName } from './group-answers.ts';
import { OtherSet } from './other-set.tsx';
import type { ExerciseProps } from './person-props.ts';
import { PressRow } from './press-row.tsx';
import { pressesFor, withoutSet } from './set-presses.ts';

const reasons = ['tired', 'time', 'equipment', 'joint-pain', 'symptom', 'unknown'] as const;

const countText = ({ dose }: ExerciseNow, count: number | null): string =>
  count === null
    ? say('set.count-unknown')
    : say(heldSeconds(dose) === null ? 'set.count' : 'set.count-held', { count });

const effortText = ({ effort }: SetDone): string =>
  effort === null
    ? say('set.effort-unknown')
    : effort >= 5
      ? say('set.effort-5')
      : say('set.effort', { effort });

export const NextSet = (props: ExerciseProps) => {
  const { now, typed, press } = props;
  const [isOther, setOther] = useState(false);
  const asked = pressesFor(now, typed, { notSaid: say('not-said') });
  if (asked === null) return null;
  if (asked.asks === 'effort')
    return (
      <PressRow
        question={say('set.effort.question')}
        options={asked.presses.map(({ label, typed: pressed }) => ({
          value: Object.values(pressed)[0]!,
          label: label === '5' ? say('effort.more') : label,
        }))}
        chosen={undefined}
        onPress={(value) =>
          press(asked.presses.find((one) => Object.values(one.typed)[0] === value)?.typed ?? {})
        }
      />
    );
  const [planned] = asked.presses;
  const count = countText(now, Number(planned?.label));
  const load = loadKgOf(now, asked.set, typed) ?? 0;
  return (
    <div className="stack-close">
      <p className="small soft">
        {say('set.now', { set: asked.set, of: Math.max(now.dose.sets, asked.set) })}
      </p>
      <div className="presses">
        <Button onClick={() => planned && press(planned.typed)}>
          {load > 0 ? say('set.done-load', { count, load: massInWords(load) }) : say('set.done', { count })}
        </Button>
        <Button tone="plain" aria-expanded={isOther} onClick={() => setOther(!isOther)}>
          {say('set.other')}
        </Button>
      </div>
      {isOther ? <OtherSet {...props} onDone={() => setOther(false)} /> : null}
    </div>
  );
};

export const SetLine = ({ now, done, typed, press }: ExerciseProps & { readonly done: SetDone }) => {
  const { itemId } = now.exercise;
  const name = stopName(itemId, done.set);
  const count = countText(now, done.repetitions);
  const kept = withoutSet(typed, itemId, done.set);
  const undo = () => press(Object.fromEntries(Object.keys(typed).map((one) => [one, kept[one]])));
  return (
    <li>
      <span>
        {done.isWhole
          ? say('set.line', { set: done.set, count, effort: effortText(done) })
          : say('set.line-open', { set: done.set, count })}{' '}
        <Button tone="quiet" aria-label={say('set.undo', { set: done.set })} onClick={undo}>
          {say('set.undo.short')}
        </Button>
      </span>
      {isShort(now.dose, done) ? (
        <PressRow
          question={say('set.short')}
          options={reasons.map((value) => ({ value, label: say(`stop.${value}`) }))}
          chosen={typed[name]}
          onPress={(reason) => press({ [name]: reason })}
        />
      ) : null}
    </li>
  );
};
