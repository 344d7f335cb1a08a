'use client';
import { useState } from 'react';
/** One exercise before its first set: drawn, how much, which weight. */
import { prescribedLoadKg } from '#core/decision/dose/volume.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { doseInHand, doseTitle, restLines } from '#ui/language/dose-text.ts';
import { weightText } from '#ui/language/weight-text.ts';
import { Drawn, Steps } from '#ui/patient/figures/how-to.tsx';
import { t, translate } from '#ui/patient/words.ts';
import { PainLimits } from '../../questions/pain-limit.tsx';
import { didWork, type ItemDraft } from '../draft.ts';
import { isCuffOn } from '../restriction.ts';
import { asksLoad } from '../steps.ts';
import { OtherWeight } from './other-weight.tsx';
import type { PageProps } from './page-props.ts';

const Dose = ({ item }: { readonly item: ItemDraft }) => (
  <div>
    <p className="dose figure">{doseTitle(item.dose)}</p>
    <ul className="dose-lines">
      {doseInHand(item.dose).map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  </div>
);

const HowTo = ({ item }: { readonly item: ItemDraft }) => (
  <>
    <Steps instructions={item.instructions} />
    {restLines(item.dose).map((text) => (
      <p key={text}>{text}</p>
    ))}
  </>
);

const About = ({ item }: { readonly item: ItemDraft }) => (
  <>
    {item.isNew ? (
      <section className="stack-close">
        <h2>{t('dose.how')}</h2>
        <HowTo item={item} />
      </section>
    ) : (
      <Disclosure summary={t('dose.how')}>
        <HowTo item={item} />
      </Disclosure>
    )}
    {item.cautions.length > 0 ? (
      <Disclosure summary={t('dose.keep')}>
        <ul>
          {item.cautions.map(translate).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </Disclosure>
    ) : null}
  </>
);

interface LeavingProps extends Pick<PageProps, 'send'> {
  readonly item: ItemDraft;
  readonly index: number;
  /** Work was done before it: what was done can be sent. */
  readonly canFinish: boolean;
}

const Leaving = ({ item, index, send, canFinish }: LeavingProps) =>
  item.sets.length > 0 || isCuffOn(item) ? null : (
    <div className="actions-quiet">
      {item.beforeLighter ? (
        <Button tone="quiet" onClick={() => send({ type: 'not-lighter' })}>
          {t('item.not-easier')}
        </Button>
      ) : item.isEasierSession ? null : (
        <Button tone="quiet" onClick={() => send({ type: 'lighter' })}>
          {t('today.easier')}
        </Button>
      )}
      <Button tone="quiet" onClick={() => send({ type: 'leave-out', item: index })}>
        {t('item.skip')}
      </Button>
      {canFinish ? (
        <Button tone="quiet" onClick={() => send({ type: 'finish-here' })}>
          {t('item.finish')}
        </Button>
      ) : null}
    </div>
  );

/** The weight as text, and the way to another; what was taken before stays the answer. */
const Start = ({
  item,
  onTake,
}: {
  readonly item: ItemDraft;
  readonly onTake: (loadKg: number | null) => void;
}) => {
  const [isOther, setOther] = useState(false);
  const loadKg = asksLoad(item) ? (item.loadKg ?? prescribedLoadKg(item.dose)) : null;
  if (isOther)
    return (
      <OtherWeight
        plannedKg={prescribedLoadKg(item.dose)}
        given={item.loadKg}
        takeText={t(item.dose.method === 'occlusion' ? 'ask.continue' : 'item.start')}
        onTake={onTake}
        onBack={() => setOther(false)}
      />
    );
  return (
    <>
      {loadKg === null ? null : (
        <p className="weight">
          {loadKg === prescribedLoadKg(item.dose)
            ? null
            : t('item.load-yours', { weight: weightText(loadKg) })}
          <Button tone="quiet" onClick={() => setOther(true)}>
            {t('item.load-other')}
          </Button>
        </p>
      )}
      <Button isLarge isWide onClick={() => onTake(loadKg)}>
        {t(item.dose.method === 'occlusion' ? 'ask.continue' : 'item.start')}
      </Button>
    </>
  );
};

export const ItemPage = ({ draft, item: index, send }: PageProps) => {
  const item = draft.items[index]!;
  const take = (loadKg: number | null) => {
    if (loadKg !== null) send({ type: 'load', item: index, loadKg });
    send({ type: 'next' });
  };
  const number = draft.items.indexOf(item) + 1;
  const caption = item.isEasierSession ? 'session.caption-easier' : 'session.caption';
  return (
    <div className="stack exercise-page">
      <PageHeading caption={t(caption, { number, of: draft.items.length })}>
        {translate(item.title)}
      </PageHeading>
      <Drawn dose={item.dose} />
      <PainLimits lookups={draft.painLookups.filter(({ joint }) => item.joints.includes(joint))} />
      <Dose item={item} />
      {/* In the open, beside the weight that could be taken instead. */}
      {(item.limits ?? []).map(translate).map((text) => (
        <p key={text}>{text}</p>
      ))}
      <Start item={item} onTake={take} />
      <About item={item} />
      <Leaving item={item} index={index} send={send} canFinish={didWork(draft)} />
    </div>
  );
};
