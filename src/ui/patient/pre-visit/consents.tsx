'use client';
/** What the patient has agreed to, in the clinic's words, and taking it back without a reason. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { ConsentKind } from '#core/episode/consent.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import './consent-words.ts';
import { t, translate } from '#ui/language/words.ts';
import { callPatient } from '../call.ts';
import type { MyConsents } from './answers.ts';

type Consent = MyConsents['kinds'][number];

const One = ({ consent, onAct }: { readonly consent: Consent; readonly onAct: () => void }) => (
  <section className="stack-close">
    <h2>{t(`consent.${consent.kind}`)}</h2>
    <p>
      <StatusTag shape={consent.isGiven ? 'done' : 'unknown'} tone={consent.isGiven ? 'accent' : 'plain'}>
        {t(consent.isGiven ? 'consent.given' : 'consent.not-given')}
      </StatusTag>
    </p>
    <p>{translate(consent.text)}</p>
    {consent.isProposal ? <p className="soft">{t('consent.proposal')}</p> : null}
    <Button tone={consent.isGiven ? 'stop' : 'plain'} onClick={onAct}>
      {t(consent.isGiven ? 'consent.withdraw' : 'consent.give')}
      <span className="visually-hidden">: {t(`consent.${consent.kind}`)}</span>
    </Button>
  </section>
);

export const Consents = ({ mine }: { readonly mine: MyConsents }) => {
  const router = useRouter();
  const [sent, setSent] = useState<'ended' | 'failed' | null>(null);
  const act = async (kind: ConsentKind, isGiven: boolean, wordingVersion: number) => {
    const taken = isGiven
      ? await callPatient('consents.withdraw', { kind })
      : await callPatient('consents.give', { kind, wordingVersion });
    setSent(taken ? (isGiven ? 'ended' : null) : 'failed');
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
          <p>{t('consent.call', { number: mine.emergencyNumber, phone: mine.phone })}</p>
          <p>{t('hours.nobody-answers', { clinic: mine.clinicName, urgent: mine.urgentNumber })}</p>
        </Notice>
        {sent === null ? null : (
          <Notice
            isAnnounced
            tone={sent === 'failed' ? 'care' : 'plain'}
            title={t(sent === 'failed' ? 'consent.not-sent' : 'consent.ended')}
          />
        )}
      </div>
      {mine.kinds.map((consent) => (
        <One
          key={consent.kind}
          consent={consent}
          onAct={() => void act(consent.kind, consent.isGiven, consent.version)}
        />
      ))}
      <p className="seldom">
        <a href="/today">{t('frame.home')}</a>
      </p>
    </div>
  );
};
