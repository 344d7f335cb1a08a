'use client';
import { t } from '#ui/language/words.ts';
import { useVoice } from '../aloud/voice.ts';
/** A session by ear, by choice; where the phone has no voice of its own, it says that notes are sounded. */
import { OnOrOff } from './on-or-off.tsx';

export const ByEarChoice = () => {
  const voice = useVoice();
  return (
    <OnOrOff
      name="byEar"
      legend={t('preferences.ear')}
      hint={voice ? t('preferences.ear-hint') : `${t('preferences.ear-hint')} ${t('preferences.ear-notes')}`}
      no={t('preferences.ear-no')}
      yes={t('preferences.ear-yes')}
    />
  );
};
