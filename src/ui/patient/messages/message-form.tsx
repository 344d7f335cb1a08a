'use client';
/** A message to the clinic, with when it is read and what to do when it cannot wait. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { LongTextField } from '#ui/design-system/text-field.tsx';
import './words.ts';
import { t, translate } from '#ui/language/words.ts';
import { callPatient } from '../call.ts';
import type { MyMessages } from '../pre-visit/answers.ts';

export const MessageForm = ({ mine }: { readonly mine: MyMessages }) => {
  const router = useRouter();
  const [text, setText] = useState('');
  const [told, setTold] = useState<'sent' | 'not-sent' | 'empty' | null>(null);
  const send = async (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() === '') return setTold('empty');
    const isTaken = await callPatient('messages.send', { text });
    setTold(isTaken ? 'sent' : 'not-sent');
    if (!isTaken) return;
    setText('');
    router.refresh();
  };
  return (
    <div className="stack-wide">
      <div className="stack">
        <PageHeading>{t('write.title')}</PageHeading>
        <p>{t('write.lead')}</p>
        <Notice tone="plain" title={t('write.when', { hours: translate(mine.monitoringHours) })}>
          <p>{t('write.urgent', { phone: mine.phone, emergency: mine.emergencyNumber })}</p>
          <p>{t('hours.nobody-answers', { clinic: mine.clinicName, urgent: mine.urgentNumber })}</p>
        </Notice>
        <form method="post" className="stack" noValidate onSubmit={(event) => void send(event)}>
          <LongTextField
            name="text"
            label={t('write.label')}
            maxLength={1000}
            value={text}
            error={told === 'empty' ? t('write.empty') : undefined}
            onChange={(event) => setText(event.target.value)}
          />
          <div className="row">
            <Button type="submit">{t('write.send')}</Button>
          </div>
          <p role="status">{told === 'sent' || told === 'not-sent' ? t(`write.${told}`) : ''}</p>
        </form>
      </div>
      {mine.messages.length > 0 ? (
        <section className="stack-close">
          <h2>{t('write.mine')}</h2>
          {mine.messages.map((message) => (
            <blockquote className="message" key={message.id}>
              <p>{message.text}</p>
            </blockquote>
          ))}
        </section>
      ) : null}
    </div>
  );
};
