'use client';
/** The button that reads the page, and stops reading it; leaving the page stops it too. */
import { useEffect, useRef, useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { t } from '#ui/language/words.ts';
import { pageSentences } from './page-sentences.ts';
import { say } from './say.ts';
import { useVoice } from './voice.ts';

export interface ReadAloudProps {
  /** Changes with each page. */
  readonly page: string;
}

const sentencesHere = (): readonly string[] => {
  const main = document.getElementById('main');
  return main ? pageSentences(main as Element & { readonly localName: string }) : [];
};

export const ReadAloud = ({ page }: ReadAloudProps) => {
  const voice = useVoice();
  const [state, setState] = useState<'still' | 'reading' | 'unheard'>('still');
  const stop = useRef(() => {});
  // biome-ignore lint/correctness/useExhaustiveDependencies: leaving the page is what the effect answers to.
  useEffect(() => {
    const hush = () => {
      stop.current();
      setState('still');
    };
    const hushHidden = () => document.visibilityState === 'hidden' && hush();
    document.addEventListener('visibilitychange', hushHidden);
    return () => {
      document.removeEventListener('visibilitychange', hushHidden);
      hush();
    };
  }, [page]);
  if (!voice) return null;
  const press = () => {
    stop.current();
    if (state === 'reading') {
      setState('still');
      return;
    }
    setState('reading');
    stop.current = say(sentencesHere(), voice, (end) => setState(end === 'unheard' ? 'unheard' : 'still'));
  };
  return (
    <div className="aloud">
      <Button tone="plain" onClick={press}>
        {t(state === 'reading' ? 'aloud.stop' : 'aloud.read')}
      </Button>
      {state === 'unheard' ? <p role="status">{t('aloud.unheard')}</p> : null}
    </div>
  );
};
