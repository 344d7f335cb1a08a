'use client';
import { heldSeconds } from '#core/decision/dose/volume.ts';
/** Why a set fell short, how much the joint hurt, and whether to go on with the exercise. */
import { repetitionsOfSet } from '#core/prescribing/dose.ts';
import { stopReasons } from '#core/record/record.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { AnswerPage, WaysBack } from '#ui/patient/questions/answer-page.tsx';
import { ScoreQuestion } from '#ui/patient/questions/score-question.tsx';
import { t, translate } from '#ui/patient/words.ts';
import { reasonText, type StopReasonAsked } from '../check-rows.ts';
import { setOf } from '../draft.ts';
import { OtherCount } from '../other-count.tsx';
import type { PageProps } from './page-props.ts';

const asked = stopReasons.filter((reason): reason is StopReasonAsked => reason !== 'none');

/** A set that was stopped: how many were done before. */
export const StopCountPage = ({ draft, item: index, set, send }: PageProps) => {
  const item = draft.items[index]!;
  const take = (repetitions: number | null) => {
    send({ type: 'count', item: index, set, repetitions });
    send({ type: 'next' });
  };
  return (
    <div className="stack ask">
      <PageHeading caption={translate(item.title)}>
        {t('set.caption', { set, of: item.dose.sets })}
      </PageHeading>
      <OtherCount
        high={repetitionsOfSet(item.dose, set).high}
        isHeld={heldSeconds(item.dose) !== null}
        onCount={take}
        onLost={() => take(null)}
      />
      <WaysBack />
    </div>
  );
};

export const StopPage = ({ draft, item: index, set, send }: PageProps) => {
  const item = draft.items[index]!;
  const { stopReason } = setOf(item, set);
  return (
    <AnswerPage<StopReasonAsked>
      caption={translate(item.title)}
      question={t('stop.title')}
      answers={asked.map((value) => ({
        value,
        label: reasonText(value, item),
        isApart: value === 'unknown',
      }))}
      given={stopReason === 'none' ? null : stopReason}
      onAnswer={(reason) => {
        send({ type: 'stop-reason', item: index, set, reason });
        // Feeling unwell is looked at more closely at once.
        if (reason === 'symptom') send({ type: 'unwell' });
      }}
    />
  );
};

/** Of a joint the exercise loads, where it was what stopped the set. */
export const StopPainPage = ({ draft, item: index, set, joint, send }: PageProps) => (
  <ScoreQuestion
    question={t('stop.pain', { joint })}
    hint={t('after.during-hint')}
    low={t('scale.pain-low')}
    high={t('scale.pain-high')}
    given={setOf(draft.items[index]!, set).hurt?.[joint]}
    onAnswer={(score) => send({ type: 'hurt', item: index, set, joint, score })}
  />
);

const toNextSet = { value: 'next-set', key: 'stop.next-set' } as const;
const toLeave = { value: 'leave', key: 'stop.leave' } as const;

export const StopNextPage = ({ draft, item: index, set, send }: PageProps) => {
  const item = draft.items[index]!;
  const isForPain = setOf(item, set).stopReason === 'joint-pain';
  const ways = isForPain ? [toLeave, toNextSet] : [toNextSet, toLeave];
  return (
    <AnswerPage<'next-set' | 'leave'>
      caption={translate(item.title)}
      question={t('stop.go-on')}
      answers={ways.map(({ value, key }) => ({ value, label: t(key) }))}
      onAnswer={(way) => send({ type: 'stop-done', item: index, set, isLeft: way === 'leave' })}
    />
  );
};
