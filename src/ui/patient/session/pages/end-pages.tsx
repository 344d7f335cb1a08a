'use client';
/** Check your answers; sent; or stopped with what to do. */
import type { ReactNode } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import type { Arrival } from '#ui/patient/day-state.ts';
import { Advice } from '#ui/patient/questions/calls.tsx';
import { CheckList } from '#ui/patient/questions/check-list.tsx';
import { flagClassOf } from '#ui/patient/questions/flag-list.ts';
import { t } from '#ui/patient/words.ts';
import { checkRows, neededStep } from '../check-rows.ts';
import { allFlags, type SessionDraft } from '../draft.ts';
import { hurtAfter, leftFor } from '../left-out.ts';
import { isCuffOn } from '../restriction.ts';
import type { PageProps } from './page-props.ts';
import { PainAdvice } from './pain-advice.tsx';

export const CheckPage = ({ draft, send, clock }: PageProps) => (
  <CheckList
    rows={checkRows(draft)}
    onChange={(step) => send({ type: 'change', step })}
    onSend={() => {
      const needed = neededStep(draft);
      send(needed ? { type: 'change', step: needed } : { type: 'sent', now: clock() });
    }}
  />
);

export interface EndProps {
  readonly draft: SessionDraft;
  readonly clinic: PageProps['clinic'];
  readonly arrival: Arrival;
  readonly onHome: () => void;
  readonly children?: ReactNode;
}

const usedCuff = (draft: SessionDraft) => draft.items.some((item) => item.restrictions.length > 0);

/** What was told to hurt too much comes first: nobody has to load the page anew to be told what to do. */
const DoneBody = ({ draft, clinic, arrival }: EndProps) => {
  const hurt = hurtAfter(draft);
  const [first] = hurt;
  return (
    <>
      <PageHeading>{first ? t('hurt.title', first) : t('done.title')}</PageHeading>
      {first ? <PainAdvice hurt={hurt} othersOf={(joint) => leftFor(draft, joint)} clinic={clinic} /> : null}
      <p aria-live="polite">{t(`done.${arrival}`)}</p>
      {draft.asksTwoHours ? <p>{t('done.two-hours')}</p> : null}
      {first ? null : <p>{t('done.morning')}</p>}
    </>
  );
};

export const DonePage = (props: EndProps) => {
  const { draft, clinic, onHome } = props;
  return (
    <div className="stack">
      <DoneBody {...props} />
      {usedCuff(draft) ? <p>{t('done.dark-urine')}</p> : null}
      <Button isLarge isWide onClick={onHome}>
        {t('frame.home')}
      </Button>
      <MonitoringHours clinic={clinic} isFolded />
    </div>
  );
};

export interface CareProps {
  readonly flags: ReturnType<typeof allFlags>;
  readonly clinic: EndProps['clinic'];
  readonly isCuffOn: boolean;
  readonly arrival: Arrival;
  readonly onHome: () => void;
}

/** What to do about a warning sign, at once and without a network. */
export const CareAdvice = ({ flags, clinic, isCuffOn: hasCuff, arrival, onHome }: CareProps) => {
  const level = flagClassOf(flags);
  const names = { clinic: clinic.name, phone: clinic.phone, emergency: clinic.emergencyNumber };
  return (
    <div className="stack">
      <PageHeading>
        <RingText text={t(`care.title-${level}`, names)} clinic={clinic} />
      </PageHeading>
      {hasCuff ? <Notice tone="danger" title={t('care.cuff-first')} /> : null}
      <Advice level={level} clinic={clinic} />
      <section className="stack-close">
        <h2>{t('care.said')}</h2>
        <ul>
          {flags.map((flag) => (
            <li key={flag}>{t(`flag.${flag}`)}</li>
          ))}
        </ul>
      </section>
      <p>{t('care.stopped')}</p>
      <p>{t(arrival === 'stored' ? 'care.sent' : 'care.kept')}</p>
      <p className="soft">{t('care.to-approve')}</p>
      <Button tone="plain" isWide onClick={onHome}>
        {t('frame.home')}
      </Button>
    </div>
  );
};

export const CarePage = ({ draft, ...rest }: EndProps) => (
  <CareAdvice
    flags={allFlags(draft)}
    clinic={rest.clinic}
    isCuffOn={draft.items.some(isCuffOn)}
    arrival={rest.arrival}
    onHome={rest.onHome}
  />
);
