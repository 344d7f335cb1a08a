/** What a dose is made of, each with its code and its figure as it is written. */
import type { Dose } from '#core/prescribing/dose.ts';

interface DoseDetail {
  readonly code: string;
  readonly about: string;
  /** null where this dose has none. */
  readonly text: (dose: Dose) => string | null;
}

const known = (value: unknown, unit = ''): string | null =>
  value === undefined || value === null ? null : `${String(value)}${unit}`;

const ofCuff = (dose: Dose): string | null => {
  if (dose.method !== 'occlusion') return null;
  const { cuff } = dose;
  return cuff.kind === 'pneumatic'
    ? `${cuff.pressureMmhg} mmHg, ${cuff.percentOfLimbOcclusionPressure} % of ${cuff.limbOcclusionPressureMmhg} mmHg measured on ${cuff.measuredOn}, ${cuff.position}, cuff ${cuff.widthCm} cm wide`
    : `elastic wrap, tightness ${cuff.tightness} of 10`;
};

export const doseDetails: readonly DoseDetail[] = [
  { code: 'side', about: 'Side worked', text: (dose) => dose.side },
  { code: 'sets', about: 'Sets', text: (dose) => `${dose.sets}` },
  {
    code: 'repetitions',
    about: 'Repetitions of each set, or holds',
    text: (dose) =>
      dose.method === 'occlusion'
        ? dose.scheme.join(', ')
        : `${dose.repetitions.low} to ${dose.repetitions.high}`,
  },
  {
    code: 'reserve',
    about: 'Repetitions in reserve at the end of a set',
    text: (dose) => (dose.method === 'occlusion' ? null : `${dose.reserve}`),
  },
  {
    code: 'load',
    about: 'Load to pick up',
    text: (dose) => (dose.method === 'variation' ? null : `${dose.loadKg} kg`),
  },
  {
    code: 'added-load',
    about: 'Weight added to the exercise',
    text: (dose) => (dose.method === 'variation' ? `${dose.addedKg} kg` : null),
  },
  {
    code: 'hold',
    about: 'Seconds of each hold',
    text: (dose) => (dose.method === 'variation' ? known(dose.hold?.seconds, ' s') : null),
  },
  {
    code: 'mark',
    about: 'Number on the putty or ring, by the clinic’s own row',
    text: (dose) => (dose.method === 'variation' ? known(dose.mark) : null),
  },
  { code: 'rest', about: 'Rest between sets', text: (dose) => `${dose.restSeconds} s` },
  { code: 'tempo', about: 'Seconds of one repetition', text: (dose) => `${dose.secondsPerRepetition} s` },
  {
    code: 'estimated-maximum',
    about: 'One-repetition maximum the load was taken from',
    text: (dose) => (dose.method === 'variation' ? null : known(dose.oneRepMaxKg, ' kg')),
  },
  { code: 'cuff', about: 'Cuff', text: ofCuff },
  {
    code: 'restriction-cap',
    about: 'Longest time under restriction',
    text: (dose) => (dose.method === 'occlusion' ? `${dose.capSeconds} s, ${dose.inflation}` : null),
  },
  {
    code: 'supervised',
    about: 'With a clinician present',
    text: (dose) => (dose.method === 'occlusion' ? (dose.supervised ? 'yes' : 'no') : null),
  },
];
