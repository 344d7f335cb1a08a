'use client';
/** One exercise before its first set: how, how much, which weight. */
import { useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ErrorSummary, type Problem } from '#ui/design-system/error-summary.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
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

type Pick = 'planned' | 'other';

/** The record takes no more. */
const mostKg = 500;

/** A tenth over the plan is where the clinic hears of it as well. */
const isFarOver = (loadKg: number, plannedKg: number) => loadKg > plannedKg * 1.1;

const loadProblem = (pick: Pick | null, typed: string): Problem | null => {
  if (pick === null) return { field: 'load', text: t('item.load-missing') };
  if (pick === 'planned') return null;
  const read = readNumber(typed);
  if (read === null || Number.isNaN(read)) return { field: 'load-kg', text: t('item.load-number') };
  const loadKg = kilogramsOf(read);
  if (loadKg < 0 || loadKg > mostKg) {
    return { field: 'load-kg', text: t('item.load-range', { weight: weightText(mostKg) }) };
  }
  return null;
};

/** What is on the page about the weight, kept apart from what has been taken as the answer. */
const useLoad = (item: ItemDraft) => {
  const plannedKg = plannedLoadKg(item.dose);
  const given = item.loadKg;
  const [pick, setPick] = useState<Pick | null>(
    given === null ? null : given === plannedKg ? 'planned' : 'other',
  );
  const [typed, setTyped] = useState(
    given === null || given === plannedKg ? '' : numberText(Number(weightFigure(given))),
  );
  const [sure, setSure] = useState<number | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  return { plannedKg, pick, setPick, typed, setTyped, sure, setSure, problem, setProblem };
};

const LoadQuestion = ({ load }: { readonly load: ReturnType<typeof useLoad> }) => {
  const errorAt = (field: string) => (load.problem?.field === field ? load.problem.text : undefined);
  return (
    <>
      <RadioGroup<Pick>
        name="load"
        legend={t('item.load')}
        error={errorAt('load')}
        options={[
          { value: 'planned', label: t('item.load-planned', { weight: weightText(load.plannedKg) }) },
          { value: 'other', label: t('item.load-other') },
        ]}
        chosen={load.pick}
        onChoose={load.setPick}
      />
      {load.pick === 'other' ? (
        <NumberField
          name="load-kg"
          label={t('item.load-other-label')}
          unit={weightUnit()}
          error={errorAt('load-kg')}
          value={load.typed}
          onChange={(event) => load.setTyped(event.target.value)}
        />
      ) : null}
    </>
  );
};

const About = ({ item }: { readonly item: ItemDraft }) => (
  <>
    <p className="dose figure">{doseTitle(item.dose)}</p>
    <ul className="dose-lines">
      {doseLines(item.dose).map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
    <section className="stack-close">
      <h2>{t('item.how')}</h2>
      <HowTo exerciseId={item.dose.exerciseId} instructions={item.instructions} />
    </section>
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

export const ItemPage = ({ draft, item: index, send }: PageProps) => {
  const item = draft.items[index]!;
  const load = useLoad(item);
  const take = (loadKg: number | null) => {
    if (loadKg !== null) send({ type: 'load', item: index, loadKg });
    send({ type: 'next' });
  };
  const goOn = () => {
    if (!asksLoad(item)) return take(null);
    const problem = loadProblem(load.pick, load.typed);
    load.setProblem(problem);
    if (problem) return;
    const loadKg = load.pick === 'planned' ? load.plannedKg : kilogramsOf(readNumber(load.typed) ?? 0);
    if (isFarOver(loadKg, load.plannedKg) && loadKg !== item.loadKg) load.setSure(loadKg);
    else take(loadKg);
  };
  const number = draft.items.indexOf(item) + 1;
  return (
    <div className="stack">
      <ErrorSummary problems={load.problem ? [load.problem] : []} />
      <PageHeading caption={t('session.caption', { number, of: draft.items.length })}>
        {translate(item.title)}
      </PageHeading>
      <PainLimits lookups={draft.painLookups.filter(({ joint }) => item.joints.includes(joint))} />
      <About item={item} />
      {asksLoad(item) ? <LoadQuestion load={load} /> : null}
      {load.sure === null ? (
        <Button isLarge isWide onClick={goOn}>
          {t(item.dose.method === 'occlusion' ? 'ask.continue' : 'item.start')}
        </Button>
      ) : (
        <ConfirmQuestion
          question={t('item.load-sure', { weight: weightText(load.sure) })}
          yes={t('item.load-sure-yes', { weight: weightText(load.sure) })}
          no={t('item.load-sure-no')}
          onYes={() => take(load.sure)}
          onNo={() => load.setSure(null)}
        >
          <p>{t('item.load-sure-note')}</p>
        </ConfirmQuestion>
      )}
      <Leaving item={item} index={index} send={send} />
    </div>
  );
};
