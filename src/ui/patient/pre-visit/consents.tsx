'use client';
/** What the patient is asked to consent to: consenting, refusing, and withdrawing without a reason. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import './consent-words.ts';
import { RingText } from '#ui/language/ring-text.tsx';
import { t, translate } from '#ui/language/words.ts';
import { callPatient } from '../call.ts';
import type { MyConsents } from './answers.ts';

type Consent = MyConsents['kinds'][number];

type Act = 'give' | 'refuse' | 'withdraw';

/** A refusal is offered once: what was refused or withdrawn stays so until the patient consents. */
const actsOn: Readonly<Record<Consent['state'], readonly Act[]>> = {
  given: ['withdraw'],
  'not-asked': ['give', 'refuse'],
  refused: ['give'],
  withdrawn: ['give'],
};

const One = ({ consent, onAct }: { readonly consent: Consent; readonly onAct: (act: Act) => void }) => (
  <section className="stack-close">
    <h2>{t(`consent.${consent.kind}`)}</h2>
    <p>
      <StatusTag
        shape={consent.state === 'given' ? 'done' : 'unknown'}
        tone={consent.state === 'given' ? 'accent' : 'plain'}
      >
        {t(`consent.${consent.state}`)}
      </StatusTag>
    </p>
    <p>{translate(consent.text)}</p>
    {consent.isProposal ? <p className="soft">{t('consent.proposal')}</p> : null}
    {actsOn[consent.state].map((act) => (
      <Button key={act} tone={act === 'withdraw' ? 'stop' : 'plain'} onClick={() => onAct(act)}>
        {t(`consent.${act}`)}
        <span className="visually-hidden">: {t(`consent.${consent.kind}`)}</span>
      </Button>
    ))}
  </section>
);

const noticeAfter = { give: null, refuse: 'noted', withdraw: 'ended' } as const;

export const Consents = ({ mine }: { readonly mine: MyConsents }) => {
  const router = useRouter();
  const [sent, setSent] = useState<'ended' | 'noted' | 'not-sent' | null>(null);
  const act = async ({ kind, wordingSource, wordingVersion }: Consent, wanted: Act) => {
    const taken =
      wanted === 'withdraw'
        ? await callPatient('consents.withdraw', { kind })
        : await callPatient(`consents.${wanted}`, { kind, wordingSource, wordingVersion });
    setSent(taken ? noticeAfter[wanted] : 'not-sent');
    router.refresh();
  };
  return (
    <div className="stack-wide">
      <div className="stack">
        <PageHeading>{t('consent.title')}</PageHeading>
        <p>{t('consent.lead')}</p>
        <Notice
          tone={mine.isMonitored ? 'plain' : 'care'}
          title={
            mine.isMonitored
              ? t('consent.monitored', { hours: translate(mine.monitoringHours) })
              : t('consent.not-monitored')
          }
        >
          <p>
            <RingText
              text={t('consent.call', { number: mine.emergencyNumber, phone: mine.phone })}
              clinic={mine}
            />
          </p>
          <p>
            <RingText
              text={t('hours.nobody-answers', { clinic: mine.clinicName, urgent: mine.urgentNumber })}
              clinic={mine}
            />
          </p>
        </Notice>
        {sent === null ? null : (
          <Notice isAnnounced tone={sent === 'not-sent' ? 'care' : 'plain'} title={t(`consent.${sent}`)} />
        )}
      </div>
      {mine.kinds.map((consent) => (
        <One key={consent.kind} consent={consent} onAct={(wanted) => void act(consent, wanted)} />
      ))}
      <p className="seldom">
        <a href="/today">{t('frame.home')}</a>
      </p>
    </div>
  );
};
