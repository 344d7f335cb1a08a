'use client';
/** A joint hurt more than is allowed: what to do about it, at once and without a network. */
import type { TodayView } from '#api/patient/today-view.ts';
import { Button } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { t, translate } from '#ui/patient/words.ts';
import type { SessionDraft } from '../draft.ts';
import { type Hurt, hurtAtSet, leftFor } from '../left-out.ts';
import { partsOf } from '../step-names.ts';
import { nextStep } from '../steps.ts';
import type { PageProps } from './page-props.ts';

interface AdviceProps {
  readonly draft: SessionDraft;
  readonly hurt: readonly Hurt[];
  readonly clinic: TodayView['clinic'];
}

/** What loads the joint as well is named, so that nobody goes on with it by mistake. */
const Rest = ({
  draft,
  hurt: { joint, score },
  isFirst,
}: Pick<AdviceProps, 'draft'> & { hurt: Hurt; isFirst: boolean }) => {
  const others = leftFor(draft, joint);
  return (
    <>
      {isFirst ? null : <h2>{t('hurt.title', { joint, score })}</h2>}
      <p>{t('hurt.no-more', { joint })}</p>
      {others.length > 0 ? (
        <p>{t('hurt.others', { titles: others.map(({ title }) => translate(title)).join('; ') })}</p>
      ) : null}
      <p>{t('hurt.tomorrow', { joint })}</p>
    </>
  );
};

export const PainAdvice = ({ draft, hurt, clinic }: AdviceProps) => {
  const { name, phone, urgentNumber } = clinic;
  return (
    <>
      {hurt.map((one, place) => (
        <Rest key={one.joint} draft={draft} hurt={one} isFirst={place === 0} />
      ))}
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
      <PainAdvice draft={draft} hurt={hurt} clinic={clinic} />
      <Button isLarge isWide onClick={() => send({ type: 'next' })}>
        {next.name === 'item' ? t('hurt.go-on', { number: next.item + 1 }) : t('ask.continue')}
      </Button>
    </div>
  );
};
