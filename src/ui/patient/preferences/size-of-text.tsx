'use client';
/** How large the pages are written: changes at once, and stays on this phone. */
import { useEffect, useState } from 'react';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { type TextSize, textSizes, writeIn, writtenIn } from '#ui/language/text-size.ts';
import { t } from '#ui/language/words.ts';
import { choose } from './chosen.ts';

export const SizeOfText = () => {
  const [now, setNow] = useState<TextSize | null>(null);
  useEffect(() => setNow(writtenIn()), []);
  const take = (size: TextSize) => {
    choose('text', size);
    writeIn(size);
    setNow(size);
  };
  return (
    <RadioGroup<TextSize>
      name="text"
      legend={t('preferences.text')}
      options={textSizes.map((value) => ({ value, label: t(`preferences.text-${value}`) }))}
      chosen={now}
      onChoose={take}
    />
  );
};
