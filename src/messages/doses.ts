/** A dose in plain words, for the phone and for paper: the main figure, then what goes with it. */
import { heldSeconds, markOf, prescribedLoadKg } from '#core/decision/dose/volume.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { machineOf } from '#core/prescribing/place-of-dose.ts';
import { markedThing } from '#core/prescribing/variation/marked-things.ts';
import type { pages } from './en/pages.ts';
import type { Args } from './sentence.ts';

type DoseKey = Extract<keyof typeof pages, `dose.${string}` | `handout.do-${string}` | 'cuff.supervised'>;

/** What a dose is said with: the words of a language, and weights in the unit of whoever reads it. */
export interface DoseSpeech {
  readonly say: <Key extends DoseKey>(key: Key, ...values: Args<(typeof pages)[Key]>) => string;
  readonly weight: (kg: number) => string;
  /** "30, 15 and 15". */
  readonly list: (parts: readonly string[]) => string;
}

const count = ({ say }: DoseSpeech, low: number, high: number): string =>
  low === high ? say('dose.repetitions', { count: low }) : say('dose.repetitions-span', { low, high });

const holds = ({ say }: DoseSpeech, low: number, high: number, seconds: number): string =>
  low === high ? say('dose.holds', { count: low, seconds }) : say('dose.holds-span', { low, high, seconds });

/** "3 sets of 10 to 15 repetitions", "2 sets of 5 to 10 holds of 5 seconds", "4 sets: 30, 15, 15 and 15 repetitions". */
export const doseTitle = (dose: Dose, speech: DoseSpeech): string => {
  const { sets } = dose;
  const [low, high] =
    dose.method === 'occlusion'
      ? [Math.min(...dose.scheme), Math.max(...dose.scheme)]
      : [dose.repetitions.low, dose.repetitions.high];
  if (dose.method === 'occlusion' && low !== high)
    return speech.say('dose.scheme', { sets, scheme: speech.list(dose.scheme.map(String)) });
  const seconds = heldSeconds(dose);
  return seconds === null
    ? speech.say('dose.sets', { sets, repetitions: count(speech, low, high) })
    : speech.say('dose.sets-held', { sets, holds: holds(speech, low, high, seconds) });
};

/** The weight, or which piece of putty, which ring or which band; that there is none of either. */
export const loadText = (dose: Dose, { say, weight }: DoseSpeech): string => {
  const [loadKg, mark] = [prescribedLoadKg(dose), markOf(dose)];
  if (loadKg > 0)
    return say(dose.method === 'variation' ? 'dose.added' : 'dose.load', { weight: weight(loadKg) });
  if (mark === null) return say('dose.no-load');
  return say(markedThing(dose.exerciseId) === 'band' ? 'dose.mark-band' : 'dose.mark', { mark });
};

const cuffText = (dose: Dose, { say }: DoseSpeech): readonly string[] => {
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

/** Where a machine stands; of what is done at home nothing is said. */
const placeText = (dose: Dose, { say }: DoseSpeech): readonly string[] => {
  const machine = machineOf(dose);
  return machine ? [say('dose.machine', { machine: machine.name })] : [];
};

/** Rest between the sets; nothing where there is one set. */
export const restLines = (dose: Dose, { say }: DoseSpeech): readonly string[] =>
  dose.sets > 1 ? [say('dose.rest', { seconds: dose.restSeconds })] : [];

export const doseLines = (dose: Dose, speech: DoseSpeech): readonly string[] => [
  loadText(dose, speech),
  speech.say(`dose.${dose.side}`),
  ...placeText(dose, speech),
  ...cuffText(dose, speech),
  ...restLines(dose, speech),
];

/** What is wanted with the exercise in hand: a weight where there is one, one side where it is one, the cuff. */
export const doseInHand = (dose: Dose, speech: DoseSpeech): readonly string[] => [
  ...(prescribedLoadKg(dose) > 0 || markOf(dose) !== null ? [loadText(dose, speech)] : []),
  ...(dose.side === 'both' ? [] : [speech.say(`dose.${dose.side}`)]),
  ...placeText(dose, speech),
  ...cuffText(dose, speech),
];
