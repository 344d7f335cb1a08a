'use client';
/** One exercise before its first set: how, how much, which weight. */
import { useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ErrorSummary, type Problem } from '#ui/design-system/error-summary.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { doseLines, doseTitle } from '#ui/language/dose-text.ts';
import { numberText } from '#ui/language/text-of-time.ts';
import { kilogramsOf, weightFigure, weightText, weightUnit } from '#ui/language/weight-text.ts';
import { HowTo } from '#ui/patient/figures/how-to.tsx';
import { t, translate } from '#ui/patient/words.ts';
import { PainLimits } from '../../questions/pain-limit.tsx';
import { type ItemDraft, plannedLoadKg } from '../draft.ts';
import { isCuffOn } from '../restriction.ts';
import { asksLoad } from '../steps.ts';
import type { PageProps } from './page-props.ts';

/** The record takes no more. */
const mostKg = 500;

/** A tenth over the plan is where the clinic hears of it as well. */
const isFarOver = (loadKg: number, plannedKg: number) => loadKg > plannedKg * 1.1;

const loadProblem = (typed: string): Problem | null => {
  const read = readNumber(typed);
  if (read === null || Number.isNaN(read)) return { field: 'load-kg', text: t('item.load-number') };
  const loadKg = kilogramsOf(read);
  return loadKg < 0 || loadKg > mostKg
    ? { field: 'load-kg', text: t('item.load-range', { weight: weightText(mostKg) }) }
    : null;
};

interface OtherWeightProps {
  readonly item: ItemDraft;
  readonly onTake: (loadKg: number) => void;
}

/** Typed, and asked about once where it is far over the plan. */
const OtherWeight = ({ item, onTake }: OtherWeightProps) => {
  const plannedKg = plannedLoadKg(item.dose);
  const given = item.loadKg;
  const [typed, setTyped] = useState(
    given === null || given === plannedKg ? '' : numberText(Number(weightFigure(given))),
  );
  const [sure, setSure] = useState<number | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const take = () => {
    const found = loadProblem(typed);
    setProblem(found);
    if (found) return;
    const loadKg = kilogramsOf(readNumber(typed) ?? 0);
    if (isFarOver(loadKg, plannedKg) && loadKg !== given) setSure(loadKg);
    else onTake(loadKg);
  };
  return (
    <>
      <ErrorSummary problems={problem ? [problem] : []} />
      <NumberField
        name="load-kg"
        label={t('item.load-other-label')}
        unit={weightUnit()}
        error={problem?.text}
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
      />
      {sure === null ? (
        <Button isLarge isWide onClick={take}>
          {t(item.dose.method === 'occlusion' ? 'ask.continue' : 'item.start')}
        </Button>
      ) : (
        <ConfirmQuestion
          question={t('item.load-sure', { weight: weightText(sure) })}
          yes={t('item.load-sure-yes', { weight: weightText(sure) })}
          no={t('item.load-sure-no')}
          onYes={() => onTake(sure)}
          onNo={() => setSure(null)}
        >
          <p>{t('item.load-sure-note')}</p>
        </ConfirmQuestion>
      )}
    </>
  );
};

const Dose = ({ item }: { readonly item: ItemDraft }) => (
  <div>
    <p className="dose figure">{doseTitle(item.dose)}</p>
    <ul className="dose-lines">
      {doseLines(item.dose).map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  </div>
);

const About = ({ item }: { readonly item: ItemDraft }) => (
  <>
    {item.isNew ? (
      <section className="stack-close">
        <h2>{t('item.how')}</h2>
        <HowTo
          exerciseId={item.dose.exerciseId}
          instructions={item.instructions}
          side={item.dose.side}
          hasCuff={item.dose.method === 'occlusion'}
        />
      </section>
    ) : (
      <Disclosure summary={t('item.how')}>
        <HowTo
          exerciseId={item.dose.exerciseId}
          instructions={item.instructions}
          side={item.dose.side}
          hasCuff={item.dose.method === 'occlusion'}
        />
      </Disclosure>
    )}
    {item.cautions.length > 0 ? (
      <Disclosure summary={t('today.cautions')}>
        <ul>
          {item.cautions.map(translate).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </Disclosure>
    ) : null}
  </>
);

const Leaving = ({ item, index, send }: { item: ItemDraft; index: number; send: PageProps['send'] }) =>
  item.sets.length > 0 || isCuffOn(item) ? null : (
    <div className="actions-quiet">
      {item.isEasierSession ? null : (
        <Button tone="quiet" onClick={() => send({ type: 'lighter' })}>
          {t('today.easier')}
        </Button>
      )}
      <Button tone="quiet" onClick={() => send({ type: 'leave-out', item: index })}>
        {t('item.skip')}
      </Button>
      <Button tone="quiet" onClick={() => send({ type: 'finish-here' })}>
        {t('item.finish')}
      </Button>
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
  const loadKg = asksLoad(item) ? (item.loadKg ?? plannedLoadKg(item.dose)) : null;
  if (isOther) return <OtherWeight item={item} onTake={onTake} />;
  return (
    <>
      {loadKg === null ? null : (
        <p className="weight">
          {loadKg === plannedLoadKg(item.dose) ? null : t('item.load-yours', { weight: weightText(loadKg) })}
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
  return (
    <div className="stack">
      <PageHeading caption={t('session.caption', { number, of: draft.items.length })}>
        {translate(item.title)}
      </PageHeading>
      <PainLimits lookups={draft.painLookups.filter(({ joint }) => item.joints.includes(joint))} />
      <Dose item={item} />
      <Start item={item} onTake={take} />
      <About item={item} />
      <Leaving item={item} index={index} send={send} />
    </div>
  );
};
