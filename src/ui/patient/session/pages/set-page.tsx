'use client';
/** One set: do it, count it, say it is done. */
import { useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { HowTo } from '#ui/patient/figures/how-to.tsx';
import { t, translate } from '#ui/patient/words.ts';
import { Counter } from '../counter.tsx';
import { type ItemDraft, setOf, targetOf } from '../draft.ts';
import { isCuffOn } from '../restriction.ts';
import type { PageProps } from './page-props.ts';

const targetText = (item: ItemDraft, set: number): string => {
  const { low, high } = targetOf(item.dose, set);
  return low === high ? t('set.target-same', { low }) : t('set.target', { low, high });
};

/** How near to the end of one's strength the set is meant to go. */
const effortText = (item: ItemDraft): string | null => {
  if (item.dose.method === 'occlusion') return null;
  const { reserve } = item.dose;
  return reserve === 0 ? t('set.effort-0') : t('set.effort', { reserve });
};

/** A count past this is asked about once: a slip of the thumb is likelier than twice the plan. */
const isFarOver = (item: ItemDraft, set: number, repetitions: number): boolean =>
  repetitions > Math.max(targetOf(item.dose, set).high * 2, targetOf(item.dose, set).high + 10);

/** In work where the cuff comes down in each rest, it goes up again before the set. */
const needsCuffUp = (item: ItemDraft, set: number): boolean =>
  item.dose.method === 'occlusion' &&
  item.dose.inflation === 'intermittent' &&
  set > 1 &&
  setOf(item, set).finishedAt === null &&
  !isCuffOn(item);

const How = ({ item }: { readonly item: ItemDraft }) => (
  <Disclosure summary={t('item.how')}>
    <HowTo exerciseId={item.dose.exerciseId} instructions={item.instructions} />
  </Disclosure>
);

const Heading = ({ item, set }: { readonly item: ItemDraft; readonly set: number }) => (
  <PageHeading caption={translate(item.title)}>{t('set.caption', { set, of: item.dose.sets })}</PageHeading>
);

const CuffUpPage = ({ draft, item: index, set, send, clock }: PageProps) => (
  <div className="stack">
    <Heading item={draft.items[index]!} set={set} />
    <Button isLarge isWide onClick={() => send({ type: 'cuff-on', item: index, now: clock() })}>
      {t('cuff.up')}
    </Button>
  </div>
);

const Ways = ({ draft, item: index, set, send, clock }: PageProps) => (
  <div className="actions-quiet">
    <Button
      tone="quiet"
      onClick={() => send({ type: 'set-done', item: index, set, lostCount: true, now: clock() })}
    >
      {t('set.lost')}
    </Button>
    {draft.items[index]?.dose.method === 'occlusion' ? null : (
      <Button tone="quiet" onClick={() => send({ type: 'set-stopped', item: index, set, now: clock() })}>
        {t('set.stop')}
      </Button>
    )}
  </div>
);

const CountPage = (props: PageProps) => {
  const { draft, item: index, set, send, clock } = props;
  const item = draft.items[index]!;
  const { repetitions } = setOf(item, set);
  const [problem, setProblem] = useState<string | null>(null);
  const [isAsking, setAsking] = useState(false);
  const finish = () => send({ type: 'set-done', item: index, set, lostCount: false, now: clock() });
  const done = () => {
    if (repetitions === null) setProblem(t('set.count-missing'));
    else if (isFarOver(item, set, repetitions)) setAsking(true);
    else finish();
  };
  const effort = effortText(item);
  return (
    <div className="stack">
      <ErrorSummary problems={problem ? [{ field: 'count', text: problem }] : []} />
      <Heading item={item} set={set} />
      {effort ? <p>{effort}</p> : null}
      <Counter
        repetitions={repetitions}
        startsAt={targetOf(item.dose, set).low}
        label={t('set.count')}
        target={targetText(item, set)}
        error={problem ?? undefined}
        onCount={(count) => {
          setProblem(null);
          setAsking(false);
          send({ type: 'count', item: index, set, repetitions: count });
        }}
      />
      {isAsking && repetitions !== null ? (
        <ConfirmQuestion
          question={t('set.count-sure', { repetitions })}
          yes={t('set.count-sure-yes', { repetitions })}
          no={t('set.count-sure-no')}
          onYes={finish}
          onNo={() => setAsking(false)}
        />
      ) : (
        <Button isLarge isWide onClick={done}>
          {t('set.done')}
        </Button>
      )}
      <Ways {...props} />
      <How item={item} />
    </div>
  );
};

export const SetPage = (props: PageProps) =>
  needsCuffUp(props.draft.items[props.item]!, props.set) ? (
    <CuffUpPage {...props} />
  ) : (
    <CountPage {...props} />
  );
