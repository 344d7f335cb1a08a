'use client';
import { useState } from 'react';
import { heldSeconds } from '#core/decision/dose/volume.ts';
/** One set: do it, and say how many. "As planned" is one press after the work, any other number two. */
import { repetitionsOfSet } from '#core/prescribing/dose.ts';
import { isCountFarOver } from '#core/record/far-over.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { alarmFor } from '#ui/patient/cuff-alarm/use-cuff-alarm.ts';
import { Drawn, Steps } from '#ui/patient/figures/how-to.tsx';
import { WaysBack } from '#ui/patient/questions/answer-page.tsx';
import { t, translate } from '#ui/patient/words.ts';
import { type ItemDraft, setOf } from '../draft.ts';
import { OtherCount } from '../other-count.tsx';
import { isCuffOn } from '../restriction.ts';
import type { PageProps } from './page-props.ts';
import { RestBand } from './rest-band.tsx';

const targetText = (item: ItemDraft, set: number): string => {
  const { low, high } = repetitionsOfSet(item.dose, set);
  const seconds = heldSeconds(item.dose);
  if (seconds !== null)
    return low === high
      ? t('set.target-held-same', { low, seconds })
      : t('set.target-held', { low, high, seconds });
  return low === high ? t('set.target-same', { low }) : t('set.target', { low, high });
};

/** How near to the end of one's strength the set is meant to go. */
const effortText = (item: ItemDraft): string | null => {
  if (item.dose.method === 'occlusion') return null;
  const { reserve } = item.dose;
  if (heldSeconds(item.dose) !== null)
    return reserve === 0 ? t('dose.hold-last') : t('dose.hold-reserve', { count: reserve });
  return reserve === 0 ? t('set.effort-0') : t('set.effort', { reserve });
};

/** How long each is held, and for how long it is let go before the next. */
const holdText = ({ dose }: ItemDraft): string | null => {
  const seconds = heldSeconds(dose);
  return seconds === null ? null : t('dose.hold', { seconds, between: dose.secondsPerRepetition - seconds });
};

/** In work where the cuff comes down in each rest, it goes up again before the set. */
const needsCuffUp = (item: ItemDraft, set: number): boolean =>
  item.dose.method === 'occlusion' &&
  item.dose.inflation === 'intermittent' &&
  set > 1 &&
  setOf(item, set).finishedAt === null &&
  !isCuffOn(item);

const Heading = ({ item, set }: { readonly item: ItemDraft; readonly set: number }) => (
  <PageHeading caption={translate(item.title)}>{t('set.caption', { set, of: item.dose.sets })}</PageHeading>
);

const CuffUpPage = ({ draft, item: index, set, send, clock }: PageProps) => {
  const item = draft.items[index]!;
  const isUp = () => {
    alarmFor(item, clock());
    send({ type: 'cuff-on', item: index, now: clock() });
  };
  return (
    <div className="stack">
      <Heading item={item} set={set} />
      <Button isLarge isWide onClick={isUp}>
        {t('cuff.up')}
      </Button>
    </div>
  );
};

const Pulse = ({ item, set }: { readonly item: ItemDraft; readonly set: number }) =>
  set > 1 && item.dose.method === 'occlusion' && item.dose.pulseShown && isCuffOn(item) ? (
    <p>{t('cuff.pulse-rest', { where: item.dose.limb })}</p>
  ) : null;

interface WaysProps {
  readonly item: ItemDraft;
  readonly set: number;
  readonly onCount: (repetitions: number) => void;
  readonly onOther: () => void;
  readonly onStop: () => void;
}

/** One press after the work; another number; or stopping here, which with a cuff on is the bar's to say. */
const Ways = ({ item, set, onCount, onOther, onStop }: WaysProps) => {
  const { high } = repetitionsOfSet(item.dose, set);
  const given = setOf(item, set).repetitions;
  return (
    <div className="actions">
      <Button isLarge isWide onClick={() => onCount(high)}>
        {t('set.planned', { repetitions: high })}
      </Button>
      <div className="pair">
        <Button tone="plain" onClick={onOther}>
          {given === null || given === high ? t('set.other') : t('set.other-given', { repetitions: given })}
        </Button>
        {item.dose.method === 'occlusion' ? null : (
          <Button tone="plain" onClick={onStop}>
            {t('set.stop')}
          </Button>
        )}
      </div>
    </div>
  );
};

/** The movement drawn, how often, and how near to the end. */
const Wanted = ({ item, set }: { readonly item: ItemDraft; readonly set: number }) => {
  const effort = effortText(item);
  const hold = holdText(item);
  return (
    <>
      <Drawn dose={item.dose} />
      <div>
        <p className="set-target figure">{targetText(item, set)}</p>
        {hold ? <p>{hold}</p> : null}
        {effort ? <p>{effort}</p> : null}
      </div>
    </>
  );
};

const CountPage = ({ draft, item: index, set, send, clock }: PageProps) => {
  const item = draft.items[index]!;
  const [asks, setAsks] = useState<'planned' | 'other' | number>('planned');
  const take = (repetitions: number | null) => {
    if (repetitions !== null) send({ type: 'count', item: index, set, repetitions });
    send({ type: 'set-done', item: index, set, lostCount: repetitions === null, now: clock() });
  };
  return (
    <div className="stack exercise-page">
      <Heading item={item} set={set} />
      <Wanted item={item} set={set} />
      <Pulse item={item} set={set} />
      {asks === 'planned' ? (
        <Ways
          item={item}
          set={set}
          onCount={take}
          onOther={() => setAsks('other')}
          onStop={() => send({ type: 'set-stopped', item: index, set, now: clock() })}
        />
      ) : null}
      {asks === 'other' ? (
        <OtherCount
          high={repetitionsOfSet(item.dose, set).high}
          isHeld={heldSeconds(item.dose) !== null}
          onCount={(count) => (isCountFarOver(item.dose, set, count) ? setAsks(count) : take(count))}
          onLost={() => take(null)}
          onBack={() => setAsks('planned')}
        />
      ) : null}
      {typeof asks === 'number' ? (
        <ConfirmQuestion
          question={t(heldSeconds(item.dose) === null ? 'set.count-sure' : 'set.count-sure-held', {
            repetitions: asks,
          })}
          yes={t('set.count-sure-yes', { repetitions: asks })}
          no={t('set.count-sure-no')}
          onYes={() => take(asks)}
          onNo={() => setAsks('other')}
        />
      ) : null}
      {set === 1 ? (
        <Disclosure summary={t('dose.how')}>
          <Steps instructions={item.instructions} />
        </Disclosure>
      ) : null}
    </div>
  );
};

export const SetPage = (props: PageProps) => {
  const item = props.draft.items[props.item]!;
  return (
    <>
      <RestBand item={item} set={props.set - 1} clock={props.clock} />
      {needsCuffUp(item, props.set) ? <CuffUpPage {...props} /> : <CountPage {...props} />}
      {item.dose.method === 'occlusion' && props.set > 1 ? <WaysBack /> : null}
    </>
  );
};
