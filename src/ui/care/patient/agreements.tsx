'use client';
/** What the patient has agreed to, in the clinic's words, and taking it back without a reason. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { ConsentKind } from '#core/care/consent.ts';
import { Button } from '#ui/shared/button.tsx';
import { Notice } from '#ui/shared/notice.tsx';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { StatusTag } from '#ui/shared/status-tag.tsx';
import '#ui/words/before-visit.ts';
import { say, tell } from '#ui/words.ts';
import type { MyAgreements } from './answers.ts';
import { callPatient } from './call.ts';

type Agreement = MyAgreements['kinds'][number];

const One = ({ agreement, onAct }: { readonly agreement: Agreement; readonly onAct: () => void }) => (
  <section className="stack-close">
    <h2>{say(`agree.${agreement.kind}`)}</h2>
    <p>
      <StatusTag shape={agreement.stands ? 'done' : 'unknown'} tone={agreement.stands ? 'accent' : 'plain'}>
        {say(agreement.stands ? 'agree.stands' : 'agree.none')}
      </StatusTag>
    </p>
    <p>{tell(agreement.text)}</p>
    {agreement.isProposal ? <p className="soft">{say('agree.proposal')}</p> : null}
    <Button tone={agreement.stands ? 'stop' : 'plain'} onClick={onAct}>
      {say(agreement.stands ? 'agree.withdraw' : 'agree.give')}
      <span className="only-heard">: {say(`agree.${agreement.kind}`)}</span>
    </Button>
  </section>
);

export const Agreements = ({ mine }: { readonly mine: MyAgreements }) => {
  const router = useRouter();
  const [told, setTold] = useState<'ended' | 'failed' | null>(null);
  const act = async (kind: ConsentKind, stands: boolean, wordingVersion: number) => {
    const taken = stands
      ? await callPatient('consents.withdraw', { kind })
      : await callPatient('consents.give', { kind, wordingVersion });
    setTold(taken ? (stands ? 'ended' : null) : 'failed');
    router.refresh();
  };
  return (
    <div className="stack-wide">
      <div className="stack">
        <PageHeading>{say('agree.title')}</PageHeading>
        <p>{say('agree.lead')}</p>
        <Notice
          tone={mine.isWatched ? 'plain' : 'care'}
          title={
            mine.isWatched
              ? say('agree.watched', { hours: mine.monitoringHours.replace(/\.$/, '') })
              : say('agree.not-watched')
          }
        >
          <p>{say('agree.call', { number: mine.emergencyNumber, phone: mine.phone })}</p>
        </Notice>
        {told === null ? null : (
          <Notice
            isAnnounced
            tone={told === 'failed' ? 'care' : 'plain'}
            title={say(told === 'failed' ? 'visit.not-sent' : 'agree.ended')}
          />
        )}
      </div>
      {mine.kinds.map((agreement) => (
        <One
          key={agreement.kind}
          agreement={agreement}
          onAct={() => void act(agreement.kind, agreement.stands, agreement.version)}
        />
      ))}
      <p className="seldom">
        <a href="/today">{say('visit.home')}</a>
      </p>
    </div>
  );
};
