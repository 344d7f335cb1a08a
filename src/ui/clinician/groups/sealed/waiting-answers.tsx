'use client';
/** What was answered in an hour without signal and is not with the clinic yet: counted, and never shown. */
import { say } from '#messages/en/staff/groups/sealed.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { type Sending, useSendingAnswers } from './use-sending-answers.ts';

const AsideNotice = ({ count }: { readonly count: number }) =>
  count === 0 ? null : (
    <Notice tone="care" title={say('put-aside', { count })} isAnnounced>
      <p>{say('put-aside.what')}</p>
    </Notice>
  );

const Waiting = ({ waiting, toSignIn, send }: Omit<Sending, 'arrived' | 'aside'>) => {
  if (waiting.length === 0) return null;
  const isUrgent = waiting.some((one) => one.isUrgent);
  const refused = [...new Set(waiting.flatMap((one) => one.refused ?? []))];
  return (
    <Notice
      tone={isUrgent ? 'danger' : 'care'}
      title={say('waiting', { count: new Set(waiting.map(({ patientId }) => patientId)).size })}
      isAnnounced
    >
      {isUrgent ? <p>{say('waiting.urgent')}</p> : null}
      {waiting.some(({ state }) => state === 'begun') ? <p>{say('waiting.begun')}</p> : null}
      {refused.map((why) => (
        <p key={why}>{say('waiting.refused', { why })}</p>
      ))}
      {toSignIn.map((name) => (
        <p key={name}>{say('waiting.sign-in-as', { name })}</p>
      ))}
      {toSignIn.length > 0 ? (
        <p>
          <a href="/sign-in?with=passphrase">{say('waiting.sign-in')}</a>
        </p>
      ) : null}
      <Button tone="plain" onClick={() => send(true)}>
        {say('waiting.send')}
      </Button>
    </Notice>
  );
};

export const WaitingNotice = ({ aside, ...waiting }: Omit<Sending, 'arrived'>) => (
  <>
    <AsideNotice count={aside.size} />
    <Waiting {...waiting} />
  </>
);

export const WaitingAnswers = () => <WaitingNotice {...useSendingAnswers()} />;
