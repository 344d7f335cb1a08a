'use client';
/** Reading aloud, by choice: offered only where the phone has a voice of its own in the language of the page. */
import { t } from '#ui/language/words.ts';
import { useVoice } from '../aloud/voice.ts';
import { OnOrOff } from './on-or-off.tsx';

export const ReadingAloud = () =>
  useVoice() ? (
    <OnOrOff
      name="aloud"
      legend={t('preferences.aloud')}
      hint={t('preferences.aloud-hint')}
      no={t('preferences.aloud-no')}
      yes={t('preferences.aloud-yes')}
    />
  ) : (
    <p>{t('preferences.aloud-none')}</p>
  );
