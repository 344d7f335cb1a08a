'use client';
/** Language, size of the text, unit of weight, how a clock says that it is over, and what is heard. */
import { useEffect, useState } from 'react';
import { languages } from '#messages/languages.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { t } from '#ui/language/words.ts';
import { ByEarChoice } from './by-ear-choice.tsx';
import { type Chosen, choose, chosenHere, chosenSound, type Sound, sounds } from './chosen.ts';
import { ReadingAloud } from './reading-aloud.tsx';
import { SizeOfText } from './size-of-text.tsx';

interface Preferences extends Chosen {
  readonly sound: Sound;
}

export const Preferences = () => {
  const [now, setNow] = useState<Preferences | null>(null);
  useEffect(() => setNow({ ...chosenHere(), sound: chosenSound() }), []);
  const take = (name: 'language' | 'unit', value: string) => {
    choose(name, value);
    // Every sentence changes, so the page begins anew; what was answered stands in the phone's store.
    window.location.reload();
  };
  const takeSound = (sound: Sound) => {
    choose('sound', sound);
    setNow((before) => (before ? { ...before, sound } : before));
  };
  return (
    <Disclosure summary={t('preferences.title')}>
      <RadioGroup
        name="language"
        legend={t('preferences.language')}
        hint={now?.language === 'en' ? undefined : t('preferences.clinic-words')}
        options={languages.map(({ tag, name }) => ({ value: tag, label: <span lang={tag}>{name}</span> }))}
        chosen={now?.language ?? null}
        onChoose={(value) => take('language', value)}
      />
      <SizeOfText />
      <RadioGroup
        name="unit"
        legend={t('preferences.unit')}
        options={(['kg', 'lb'] as const).map((value) => ({ value, label: t(`preferences.${value}`) }))}
        chosen={now?.unit ?? null}
        onChoose={(value) => take('unit', value)}
      />
      <RadioGroup<Sound>
        name="sound"
        legend={t('preferences.sound')}
        hint={t('preferences.sound-hint')}
        options={sounds.map((value) => ({ value, label: t(`preferences.sound-${value}`) }))}
        chosen={now?.sound ?? null}
        onChoose={takeSound}
      />
      <ReadingAloud />
      <ByEarChoice />
    </Disclosure>
  );
};
