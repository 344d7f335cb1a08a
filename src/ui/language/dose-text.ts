/** A dose in plain words: the main figure, then what goes with it. */
import type { Dose } from '#core/prescribing/dose.ts';
import { words } from '#messages/en/pages/dose.ts';
import { addEnglish, t } from '#ui/language/words.ts';
import { weightText } from './weight-text.ts';

// In another language they come with the pages that show a dose.
addEnglish(words);

/** "3 sets of 10 to 15", "4 sets: 30, 15, 15, 15". */
export const doseTitle = (dose: Dose): string => {
  const { sets } = dose;
  if (dose.method === 'occlusion') return t('dose.scheme', { sets, scheme: dose.scheme.join(', ') });
  const { low, high } = dose.repetitions;
  if (low === high) return t('dose.sets-same', { sets, low });
  return t('dose.sets', { sets, low, high });
};

export const loadText = (dose: Dose): string => {
  if (dose.method === 'variation') {
    return dose.addedKg > 0 ? t('dose.added', { weight: weightText(dose.addedKg) }) : t('dose.no-load');
  }
  return dose.loadKg > 0 ? t('dose.load', { weight: weightText(dose.loadKg) }) : t('dose.no-load');
};

const cuffText = (dose: Dose): readonly string[] => {
  if (dose.method !== 'occlusion') return [];
  const cuff =
    dose.cuff.kind === 'pneumatic'
      ? t('dose.cuff', { mmhg: dose.cuff.pressureMmhg })
      : t('dose.wrap', { tightness: dose.cuff.tightness });
  return [
    ...(dose.supervised ? [t('cuff.supervised')] : []),
    cuff,
    ...(dose.pulseShown ? [t('dose.pulse')] : []),
  ];
};

export const doseLines = (dose: Dose): readonly string[] => [
  loadText(dose),
  t(`dose.${dose.side}`),
  ...cuffText(dose),
  ...(dose.sets > 1 ? [t('dose.rest', { seconds: dose.restSeconds })] : []),
];
