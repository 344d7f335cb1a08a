'use client';
/** Why a set fell short, and whether to go on with the exercise. */
import { useState } from 'react';
import { type StopReason, stopReasons } from '#core/model/record.ts';
import { Button } from '#ui/shared/button.tsx';
import { ErrorSummary } from '#ui/shared/error-summary.tsx';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { RadioGroup } from '#ui/shared/radio-group.tsx';
import { say, tell } from '#ui/words.ts';
import { Counter } from '../counter.tsx';
import { setOf } from '../draft.ts';
import type { PageProps } from './page-props.ts';

type Asked = Exclude<StopReason, 'none'>;
const asked = stopReasons.filter((reason): reason is Asked => reason !== 'none');

const labelOf = (reason: Asked, isCuff: boolean): string =>
  reason === 'time' && isCuff ? say('stop.time-up') : say(`stop.${reason}`);

const ReasonQuestion = ({ draft, line: index, set, send, error }: PageProps & { error?: string }) => {
  const line = draft.lines[index]!;
  const { stopReason } = setOf(line, set);
  return (
    <RadioGroup<Asked>
      name="stop-reason"
      legend={say('stop.title')}
      error={error}
      options={asked.map((value) => ({
        value,
        label: labelOf(value, line.dose.method === 'occlusion'),
        isApart: value === 'unknown',
      }))}
      chosen={stopReason === 'none' ? null : stopReason}
      onChoose={(reason) => send({ type: 'stop-reason', line: index, set, reason })}
    />
  );
};

export const StopPage = (props: PageProps) => {
  const { draft, line: index, set, send } = props;
  const line = draft.lines[index]!;
  const { repetitions, stopReason, isStopped, lostCount } = setOf(line, set);
  const [asksCount] = useState(isStopped && repetitions === null && !lostCount);
  const [error, setError] = useState<string | undefined>();
  // The last set, and work with the cuff off again, leave nothing to go on with.
  const isOver = set >= line.dose.sets || line.dose.method === 'occlusion';
  const take = (isLeft: boolean) => {
    if (stopReason === null) return setError(say('ask.choose-must'));
    // Feeling unwell is looked at more closely at once.
    if (stopReason === 'symptom' && !draft.lookedAt.includes(draft.step)) return send({ type: 'unwell' });
    send({ type: 'stop-done', line: index, set, isLeft });
  };
  const [first, second] = stopReason === 'joint-pain' ? [true, false] : [false, true];
  const text = (isLeft: boolean) => say(isLeft ? 'stop.leave' : 'stop.next-set');
  return (
    <div className="stack">
      <ErrorSummary problems={error && stopReason === null ? [{ field: 'stop-reason', text: error }] : []} />
      <PageHeading caption={tell(line.title)}>{say('set.caption', { set, of: line.dose.sets })}</PageHeading>
      {asksCount ? (
        <Counter
          repetitions={repetitions}
          startsAt={1}
          label={say('stop.count')}
          onCount={(count) => send({ type: 'count', line: index, set, repetitions: count })}
        />
      ) : null}
      <ReasonQuestion {...props} error={stopReason === null ? error : undefined} />
      {isOver ? (
        <Button isLarge isWide onClick={() => take(true)}>
          {say('ask.continue')}
        </Button>
      ) : (
        <div className="actions">
          <Button isLarge isWide onClick={() => take(first)}>
            {text(first)}
          </Button>
          <Button tone="plain" isLarge isWide onClick={() => take(second)}>
            {text(second)}
          </Button>
        </div>
      )}
    </div>
  );
};
