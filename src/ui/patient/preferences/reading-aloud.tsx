'use client';
/** Reading aloud, by choice: offered only where the phone has a voice of its own in the language of the page. */
import { useEffect, useState } from 'react';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { t } from '#ui/language/words.ts';
import { useVoice } from '../aloud/voice.ts';
import { choose, isChosen } from './chosen.ts';

const answers = ['no', 'yes'] as const;
type Answer = (typeof answers)[number];

export const ReadingAloud = () => {
  const voice = useVoice();
  const [now, setNow] = useState<Answer | null>(null);
  useEffect(() => setNow(isChosen('aloud') ? 'yes' : 'no'), []);
  const take = (answer: Answer) => {
    choose('aloud', answer);
    setNow(answer);
  };
  return voice ? (
    <RadioGroup<Answer>
      name="aloud"
      legend={t('preferences.aloud')}
      hint={t('preferences.aloud-hint')}
      options={answers.map((value) => ({ value, label: t(`preferences.aloud-${value}`) }))}
      chosen={now}
      onChoose={take}
    />
  ) : (
    <p>{t('preferences.aloud-none')}</p>
  );
};
