'use client';
/** A joint hurt more than is allowed: what to do about it, at once and without a network. */
import { Fragment } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Text } from '#messages/text.ts';
import { Button } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { t, translate } from '#ui/patient/words.ts';
import { type Hurt, hurtAtSet, leftFor } from '../left-out.ts';
import { partsOf } from '../step-names.ts';
import { nextStep } from '../steps.ts';
import type { PageProps } from './page-props.ts';

interface AdviceProps {
  readonly hurt: readonly Hurt[];
  /** What else of today loads a joint, so that nobody goes on with it by mistake. */
  readonly othersOf: (joint: Joint) => readonly { readonly title: Text | string }[];
  readonly clinic: TodayView['clinic'];
}

export const PainAdvice = ({ hurt, othersOf, clinic }: AdviceProps) => {
  const { name, phone, urgentNumber } = clinic;
  return (
    <>
      {hurt.map(({ joint, score }, place) => {
        const titles = othersOf(joint).map(({ title }) => translate(title));
        return (
          <Fragment key={joint}>
            {place === 0 ? null : <h2>{t('hurt.title', { joint, score })}</h2>}
            <p>{t('hurt.no-more', { joint })}</p>
            {titles.length > 0 ? <p>{t('hurt.others', { titles: titles.join('; ') })}</p> : null}
            <p>{t('hurt.tomorrow', { joint })}</p>
          </Fragment>
        );
      })}
      <p>
        <RingText text={t('hurt.ring', { clinic: name, phone, urgent: urgentNumber })} clinic={clinic} />
      </p>
    </>
  );
};

/** On with an exercise that spares the joint, where there is one; else with the questions after the work. */
export const StopAdvicePage = ({ draft, item: index, set, clinic, send }: PageProps) => {
  const hurt = hurtAtSet(draft, draft.items[index]!, set);
  const [first] = hurt;
  const next = partsOf(nextStep(draft, draft));
  return (
    <div className="stack">
      {first ? <PageHeading>{t('hurt.stopped', first)}</PageHeading> : null}
      <PainAdvice hurt={hurt} othersOf={(joint) => leftFor(draft, joint)} clinic={clinic} />
      <Button isLarge isWide onClick={() => send({ type: 'next' })}>
        {next.name === 'item' ? t('hurt.go-on', { number: next.item + 1 }) : t('ask.continue')}
      </Button>
    </div>
  );
};
