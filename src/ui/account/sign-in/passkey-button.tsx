'use client';
/** Signs in with a passkey of this device, without an address or a passphrase. */
import { useState } from 'react';
import './words.ts';
import { Button } from '#ui/design-system/button.tsx';
import { t } from '#ui/language/words.ts';
import { answerWithPasskey } from './passkey-browser.ts';

const post = async (path: string, body: unknown): Promise<Response | null> => {
  try {
    return await fetch(`/api/auth/passkey/${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
  } catch {
    return null;
  }
};

const problemOf = (answer: Response | null) =>
  !answer || answer.status >= 500
    ? t('sign-in.no-answer')
    : answer.status === 429
      ? t('sign-in.too-often', { seconds: answer.headers.get('retry-after') ?? 60 })
      : t('sign-in.passkey-wrong');

export const PasskeyButton = ({ onDone }: { readonly onDone: () => void }) => {
  const [problem, setProblem] = useState<string | null>(null);
  const signIn = async () => {
    setProblem(null);
    const asked = await post('ask', {});
    if (!asked?.ok) return setProblem(problemOf(asked));
    const { challenge, host } = (await asked.json()) as { challenge: string; host: string };
    const answer = await answerWithPasskey(challenge, host);
    if (!answer) return setProblem(t('sign-in.passkey-none'));
    const opened = await post('sign-in', { answer });
    if (opened?.ok) return onDone();
    setProblem(problemOf(opened));
  };
  return (
    <div className="stack-close">
      <div className="row">
        <Button tone="plain" isLarge onClick={() => void signIn()}>
          {t('sign-in.passkey')}
        </Button>
      </div>
      <p role="status">{problem}</p>
    </div>
  );
};
