/** A dose as a clinician would say it, with its units. */
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Cuff, Dose, RepetitionBand } from '#core/prescribing/dose.ts';
import { figure } from '#core/review/plain-words.ts';

const sideInWords = { left: 'left', right: 'right', both: 'both sides' } as const;

const underRestriction = (dose: Dose): string => {
  if (dose.method !== 'occlusion') return '';
  return dose.cuff.kind === 'elastic-wrap' ? ', with a wrap' : ', with a cuff';
};

/** "Straighten the knee, sitting, left"; the same exercise with a cuff is another line and says so. */
export const doseTitle = (dose: Dose): string =>
  `${exerciseTitle(dose.exerciseId)}, ${sideInWords[dose.side]}${underRestriction(dose)}`;

const band = ({ low, high }: RepetitionBand): string => (low === high ? `${low}` : `${low} to ${high}`);

const cuffInWords = (cuff: Cuff): string =>
  cuff.kind === 'elastic-wrap'
    ? `elastic wrap at tightness ${cuff.tightness} of 10; a wrap has no pressure`
    : `cuff ${figure(cuff.widthCm)} cm at ${Math.round(cuff.pressureMmhg)} mmHg, ${figure(cuff.percentOfLimbOcclusionPressure)} % of ${cuff.limbOcclusionPressureMmhg} mmHg measured ${cuff.position} on ${cuff.measuredOn}`;

const work = (dose: Dose): string => {
  switch (dose.method) {
    case 'low-load':
      return `${dose.sets} × ${band(dose.repetitions)} repetitions with ${figure(dose.loadKg)} kg, ${dose.reserve} in reserve`;
    case 'variation': {
      const load =
        dose.effectiveLoadKg === null
          ? 'effective load not computed'
          : `effective load ${figure(dose.effectiveLoadKg)} kg`;
      const added = dose.addedKg > 0 ? `, ${figure(dose.addedKg)} kg added` : '';
      return `${dose.sets} × ${band(dose.repetitions)} repetitions, ${dose.reserve} in reserve, ${load}${added}`;
    }
    case 'occlusion':
      return `${dose.scheme.join(' / ')} repetitions with ${figure(dose.loadKg)} kg, ${cuffInWords(dose.cuff)}, ${
        dose.inflation === 'continuous' ? 'cuff stays inflated during rests' : 'cuff deflated during rests'
      }, no more than ${figure(dose.capSeconds / 60)} min under restriction, ${
        dose.supervised ? 'with a clinician present' : 'at home'
      }${dose.pulseShown ? ', pulse beyond the cuff checked before, during and after' : ''}`;
  }
};

export const doseInWords = (dose: Dose): string =>
  `${work(dose)}; rest ${dose.restSeconds} s, ${figure(dose.secondsPerRepetition)} s a repetition, ${dose.sessionsPerWeek} a week`;
