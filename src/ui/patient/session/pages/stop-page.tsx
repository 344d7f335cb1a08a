'use client';
/** Why a set fell short, and whether to go on with the exercise. */
import { useState } from 'react';
import { type StopReason, stopReasons } from '#core/record/record.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { t, translate } from '#ui/patient/words.ts';
import { Counter } from '../counter.tsx';
import { setOf } from '../draft.ts';
import type { PageProps } from './page-props.ts';

type Asked = Exclude<StopReason, 'none'>;
const asked = stopReasons.filter((reason): reason is Asked => reason !== 'none');

const labelOf = (reason: Asked, isCuff: boolean): string =>
  reason === 'time' && isCuff ? t('stop.time-up') : t(`stop.${reason}`);

const ReasonQuestion = ({ draft, item: index, set, send, error }: PageProps & { error?: string }) => {
  const item = draft.items[index]!;
  const { stopReason } = setOf(item, set);
  return (
    <RadioGroup<Asked>
      name="stop-reason"
      legend={t('stop.title')}
      error={error}
      options={asked.map((value) => ({
        value,
        label: labelOf(value, item.dose.method === 'occlusion'),
        isApart: value === 'unknown',
      }))}
      chosen={stopReason === 'none' ? null : stopReason}
      onChoose={(reason) => send({ type: 'stop-reason', item: index, set, reason })}
    />
  );
};

export const StopPage = (props: PageProps) => {
  const { draft, item: index, set, send } = props;
  const item = draft.items[index]!;
  const { repetitions, stopReason, isStopped, lostCount } = setOf(item, set);
  const [asksCount] = useState(isStopped && repetitions === null && !lostCount);
  const [error, setError] = useState<string | undefined>();
  // The last set, and work with the cuff off again, leave nothing to go on with.
  const isOver = set >= item.dose.sets || item.dose.method === 'occlusion';
  const take = (isLeft: boolean) => {
    if (stopReason === null) return setError(t('ask.choose-must'));
    // Feeling unwell is looked at more closely at once.
    if (stopReason === 'symptom' && !draft.lookedAt.includes(draft.step)) return send({ type: 'unwell' });
    send({ type: 'stop-done', item: index, set, isLeft });
  };
  const [first, second] = stopReason === 'joint-pain' ? [true, false] : [false, true];
  const text = (isLeft: boolean) => t(isLeft ? 'stop.leave' : 'stop.next-set');
  return (
    <div className="stack">
      <ErrorSummary problems={error && stopReason === null ? [{ field: 'stop-reason', text: error }] : []} />
      <PageHeading caption={translate(item.title)}>
        {t('set.caption', { set, of: item.dose.sets })}
      </PageHeading>
      {asksCount ? (
        <Counter
          repetitions={repetitions}
          startsAt={1}
          label={t('stop.count')}
          onCount={(count) => send({ type: 'count', item: index, set, repetitions: count })}
        />
      ) : null}
      <ReasonQuestion {...props} error={stopReason === null ? error : undefined} />
      {isOver ? (
        <Button isLarge isWide onClick={() => take(true)}>
          {t('ask.continue')}
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
