'use client';
/** A message to the clinic, with when it is read and what to do when it cannot wait. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { LongTextField } from '#ui/design-system/text-field.tsx';
import './words.ts';
import { type NumbersToRing, RingText } from '#ui/language/ring-text.tsx';
import { instantDayText, timeText } from '#ui/language/text-of-time.ts';
import { t, translate } from '#ui/language/words.ts';
import { waiting } from '../outbox/outbox.ts';
import type { Owner } from '../outbox/use-outbox.ts';
import type { MyMessages } from '../pre-visit/answers.ts';
import { useMessage } from './use-message.ts';

const Line = ({
  line,
  clinic,
}: {
  readonly line: MyMessages['lines'][number];
  readonly clinic: NumbersToRing;
}) => (
  <blockquote className="message">
    <p>
      <RingText text={translate(line.text)} clinic={clinic} />
    </p>
    <footer className="soft" suppressHydrationWarning>
      {t(line.from === 'patient' ? 'write.from-me' : 'write.from-clinic', {
        name: line.byName,
        date: `${instantDayText(line.at)}, ${timeText(line.at)}`,
      })}
    </footer>
  </blockquote>
);

/** What reached the clinic stands in the conversation as soon as it is there. */
const useRefreshOnArrival = (stored: number) => {
  const router = useRouter();
  const before = useRef<number | null>(null);
  useEffect(() => {
    if (before.current !== null && stored > before.current) router.refresh();
    before.current = stored;
  }, [stored, router]);
};

interface MessageFormProps {
  readonly mine: MyMessages;
  readonly ownerId: string;
  readonly clinicKey: string;
}

/** When it is read, and what to do when it cannot wait. */
const WhenRead = ({ mine }: Pick<MessageFormProps, 'mine'>) => (
  <Notice tone="plain" title={t('write.when', { hours: translate(mine.monitoringHours) })}>
    <p>
      <RingText
        text={t('write.urgent', { phone: mine.phone, emergency: mine.emergencyNumber })}
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
);

/** Both sides, newest first; one's own that waits cannot be opened again and is only counted. */
const Conversation = ({ mine, waits }: { readonly mine: MyMessages; readonly waits: number }) => (
  <section className="stack-close">
    <h2>{t('write.conversation')}</h2>
    {waits > 0 ? <p role="status">{t('write.waits', { count: waits })}</p> : null}
    {mine.lines.length === 0 ? <p className="soft">{t('write.none-yet')}</p> : null}
    {mine.lines.map((line) => (
      <Line key={line.id} line={line} clinic={mine} />
    ))}
  </section>
);

export const MessageForm = ({ mine, ownerId, clinicKey }: MessageFormProps) => {
  const owner: Owner = useMemo(() => ({ id: ownerId, clinicKey }), [ownerId, clinicKey]);
  const { clockOffset } = mine;
  const clock = useCallback(() => Date.now() + clockOffset, [clockOffset]);
  const { text, isReady, type, send, outbox } = useMessage(owner, clock);
  const [told, setTold] = useState<'kept' | 'not-kept' | 'empty' | null>(null);
  const ofKind = outbox.state.entries.filter(({ kind }) => kind === 'message');
  const waits = waiting(outbox.state).filter(({ kind }) => kind === 'message').length;
  useRefreshOnArrival(ofKind.filter(({ status }) => status === 'stored').length);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() === '') return setTold('empty');
    setTold((await send()) ? 'kept' : 'not-kept');
  };
  const kept = outbox.state.isSignedOut ? 'kept-signed-out' : 'kept';
  const status = told === 'kept' ? (waits > 0 ? kept : 'sent') : told === 'not-kept' ? 'not-kept' : null;
  return (
    <div className="stack-wide">
      <div className="stack">
        <PageHeading>{t('write.title')}</PageHeading>
        <p>{t('write.lead')}</p>
        <WhenRead mine={mine} />
        <ScriptedForm className="stack" onSubmit={(event) => void submit(event)}>
          <LongTextField
            name="text"
            label={t('write.label')}
            hint={t('write.hint')}
            maxLength={1000}
            value={text}
            disabled={!isReady}
            error={told === 'empty' && text.trim() === '' ? t('write.empty') : undefined}
            onChange={(event) => type(event.target.value)}
          />
          <div className="row">
            <SendButton>{t('write.send')}</SendButton>
          </div>
          <p role="status">{status === null ? '' : t(`write.${status}`)}</p>
        </ScriptedForm>
      </div>
      <Conversation mine={mine} waits={waits} />
    </div>
  );
};
