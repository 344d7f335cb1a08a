/** What every prescription carries, whoever it is for: who decides, when to stop, and what nobody checked. */

import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { Screening } from '#core/screening/screening.ts';
import type { Dose } from '../dose.ts';
import type { Caution } from './caution.ts';

const deferral: Caution = {
  id: 'clinician-decides',
  text: 'A proposal for a licensed clinician: your examination, your judgement and local rules come first.',
  patientText:
    'Your clinician and the rules where you live come first. If they differ from this page, follow them.',
  from: 'always',
  support: 'common-practice',
};

const stopSigns: Caution = {
  id: 'stop-signs',
  text: 'Stop and get emergency care: chest pain, breathlessness at rest, fainting, severe headache or change of sight, numb saddle or loss of bladder or bowel control.',
  patientText:
    'Stop and call emergency care if you have chest pain, cannot get your breath, faint, have a very bad headache or a change in your sight, or lose feeling between the legs or control of bladder or bowel.',
  from: 'always',
  support: 'common-practice',
};

const sameDaySigns: Caution = {
  id: 'same-day-signs',
  text: 'Stop and make contact the same day: hot swollen joint, calf pain or swelling, dark urine, fever, new weakness, a fall with injury, or a limb that cannot take weight.',
  patientText:
    'Stop and ring us the same day if a joint turns hot and swollen, a calf hurts or swells, your urine is dark like tea, you have a fever, a limb turns weak or cannot take weight, or you fall and hurt yourself.',
  from: 'always',
  support: 'common-practice',
};

export const alwaysCautions: readonly Caution[] = [deferral, stopSigns, sameDaySigns];

const has = (measurements: readonly Measurement[], kind: Measurement['kind']): boolean =>
  measurements.some((measurement) => measurement.kind === kind);

interface Unchecked {
  readonly text: string;
  readonly patientText: string;
}

const unchecked = (text: string, patientText: string): Unchecked => ({ text, patientText });

const alwaysUnchecked: readonly Unchecked[] = [
  unchecked('silent blood clots', 'blood clots that give no signs'),
  unchecked('the heart under effort', 'your heart during effort'),
  unchecked('bone strength', 'how strong your bones are'),
  unchecked('how the exercise is done at home', 'how you move at home'),
];

const uncheckedThings = (
  dose: Dose,
  screening: Screening | null,
  measurements: readonly Measurement[],
): readonly Unchecked[] => {
  const things = [...alwaysUnchecked];
  if (!screening)
    things.push(unchecked('health questions (none recorded)', 'your answers about your health'));
  if (!has(measurements, 'blood-pressure')) {
    things.push(unchecked('resting blood pressure (none recorded)', 'your blood pressure'));
  }
  if (dose.method !== 'occlusion') return things;
  things.push(unchecked('the blood vessels of the limb by imaging', 'the blood vessels from inside'));
  if (dose.limb === 'leg' && !has(measurements, 'ankle-brachial-index')) {
    things.push(unchecked('ankle-brachial index (none recorded)', 'the blood flow to your foot'));
  }
  if (dose.cuff.kind === 'elastic-wrap') {
    things.push(unchecked('the pressure under the wrap, which cannot be known', 'how hard the wrap presses'));
  }
  return things;
};

/** Says what was not checked, so that a filled-in form is not read as an all-clear. */
export const notChecked = (
  dose: Dose,
  screening: Screening | null,
  measurements: readonly Measurement[],
): Caution => {
  const things = uncheckedThings(dose, screening, measurements);
  return {
    id: 'not-checked',
    text: `Not checked by this tool: ${things.map(({ text }) => text).join('; ')}.`,
    patientText: `Nobody has checked: ${things.map(({ patientText }) => patientText).join('; ')}. If you worry about one of these, ask before you start.`,
    from: 'always',
    support: 'clinic',
  };
};
