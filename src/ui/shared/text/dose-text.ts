/** A dose in plain words: the main figure, then what goes with it. */
import type { Dose } from '#core/model/dose.ts';
import { say } from '#ui/words.ts';
import { weightText } from './weight-text.ts';

/** "3 sets of 10 to 15", "4 sets: 30, 15, 15, 15". */
export const doseTitle = (dose: Dose): string => {
  const { sets } = dose;
  if (dose.method === 'occlusion') return say('dose.scheme', { sets, scheme: dose.scheme.join(', ') });
  const { low, high } = dose.repetitions;
  if (low === high) return say(sets === 1 ? 'dose.set-one-same' : 'dose.sets-same', { sets, low });
  return say(sets === 1 ? 'dose.set-one' : 'dose.sets', { sets, low, high });
};

export const loadText = (dose: Dose): string => {
  if (dose.method === 'variation') {
    return dose.addedKg > 0 ? say('dose.added', { weight: weightText(dose.addedKg) }) : say('dose.no-load');
  }
  return dose.loadKg > 0 ? say('dose.load', { weight: weightText(dose.loadKg) }) : say('dose.no-load');
};

const cuffText = (dose: Dose): readonly string[] => {
  if (dose.method !== 'occlusion') return [];
  const cuff =
    dose.cuff.kind === 'pneumatic'
      ? say('dose.cuff', { mmhg: dose.cuff.pressureMmhg })
      : say('dose.wrap', { tightness: dose.cuff.tightness });
  return [
    ...(dose.supervised ? [say('cuff.supervised')] : []),
    cuff,
    ...(dose.pulseShown ? [say('dose.pulse')] : []),
  ];
};

export const doseLines = (dose: Dose): readonly string[] => [
  loadText(dose),
  say(`dose.${dose.side}`),
  ...cuffText(dose),
  ...(dose.sets > 1 ? [say('dose.rest', { seconds: dose.restSeconds })] : []),
];
