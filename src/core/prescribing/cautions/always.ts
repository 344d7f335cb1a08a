/** What every prescription carries, whoever it is for: who decides, when to stop, and what nobody checked. */

import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { Screening } from '#core/screening/screening.ts';
import type { Dose } from '../dose.ts';
import type { Caution } from './caution.ts';
import type { AlwaysCautionId, UncheckedThing } from './ids.ts';

const always = (id: AlwaysCautionId, text: string): Caution => ({
  id,
  text,
  patient: { key: id },
  from: 'always',
  support: 'common-practice',
});

export const alwaysCautions: readonly Caution[] = [
  always(
    'clinician-decides',
    'A proposal for a licensed clinician: your examination, your judgement and local rules come first.',
  ),
  always(
    'stop-signs',
    'Stop and get emergency care: chest pain, breathlessness at rest, fainting, severe headache or change of sight, numb saddle or loss of bladder or bowel control.',
  ),
  always(
    'same-day-signs',
    'Stop and make contact the same day: hot swollen joint, calf pain or swelling, dark urine, fever, new weakness, a fall with injury, or a limb that cannot take weight.',
  ),
];

const has = (measurements: readonly Measurement[], kind: Measurement['kind']): boolean =>
  measurements.some((measurement) => measurement.kind === kind);

const uncheckedWords: Readonly<Record<UncheckedThing, string>> = {
  clots: 'silent blood clots',
  'heart-under-effort': 'the heart under effort',
  'bone-strength': 'bone strength',
  'movement-at-home': 'how the exercise is done at home',
  'health-questions': 'health questions (none recorded)',
  'blood-pressure': 'resting blood pressure (none recorded)',
  'vessels-by-imaging': 'the blood vessels of the limb by imaging',
  'ankle-brachial-index': 'ankle-brachial index (none recorded)',
  'wrap-pressure': 'the pressure under the wrap, which cannot be known',
};

const alwaysUnchecked = ['clots', 'heart-under-effort', 'bone-strength', 'movement-at-home'] as const;

const thingsUnchecked = (
  dose: Dose,
  screening: Screening | null,
  measurements: readonly Measurement[],
): readonly UncheckedThing[] => {
  const things: UncheckedThing[] = [...alwaysUnchecked];
  if (!screening) things.push('health-questions');
  if (!has(measurements, 'blood-pressure')) things.push('blood-pressure');
  if (dose.method !== 'occlusion') return things;
  things.push('vessels-by-imaging');
  if (dose.limb === 'leg' && !has(measurements, 'ankle-brachial-index')) things.push('ankle-brachial-index');
  if (dose.cuff.kind === 'elastic-wrap') things.push('wrap-pressure');
  return things;
};

/** Says what was not checked, so that a filled-in form is not read as an all-clear. */
export const notChecked = (
  dose: Dose,
  screening: Screening | null,
  measurements: readonly Measurement[],
): Caution => {
  const things = thingsUnchecked(dose, screening, measurements);
  return {
    id: 'not-checked',
    text: `Not checked by this tool: ${things.map((thing) => uncheckedWords[thing]).join('; ')}.`,
    patient: { key: 'not-checked', things },
    from: 'always',
    support: 'clinic',
  };
};
