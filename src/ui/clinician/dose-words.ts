/** A dose as a clinician would say it, with its units. */

import { heldSeconds } from '#core/decision/dose/volume.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Cuff, Dose, RepetitionBand } from '#core/prescribing/dose.ts';
import { dayInWords, figure, massInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/clinic.ts';

const sideInWords = { left: 'left', right: 'right', both: say('both-sides') } as const;

const underRestriction = (dose: Dose): string => {
  if (dose.method !== 'occlusion') return '';
  return `, ${say(dose.cuff.kind === 'elastic-wrap' ? 'with-a-wrap' : 'with-a-cuff')}`;
};

/** "Straighten the knee, sitting, left"; the same exercise with a cuff is another line and says so. */
export const doseTitle = (dose: Dose): string =>
  `${exerciseTitle(dose.exerciseId)}, ${sideInWords[dose.side]}${underRestriction(dose)}`;

const band = ({ low, high }: RepetitionBand): string =>
  low === high ? `${low}` : say('range', { low, high });

const cuffInWords = (cuff: Cuff): string =>
  cuff.kind === 'elastic-wrap'
    ? say('elastic-wrap-at-tightness', { tightness: cuff.tightness })
    : say('cuff', {
        width: figure(cuff.widthCm),
        pressure: Math.round(cuff.pressureMmhg),
        percent: figure(cuff.percentOfLimbOcclusionPressure),
        measured: cuff.limbOcclusionPressureMmhg,
        position: cuff.position,
        on: dayInWords(cuff.measuredOn),
      });

const work = (dose: Dose): string => {
  switch (dose.method) {
    case 'low-load': {
      const done = say('sets-with-load', {
        sets: dose.sets,
        repetitions: band(dose.repetitions),
        load: massInWords(dose.loadKg),
        reserve: dose.reserve,
      });
      return dose.machine ? `${done}, ${say('at-the-clinic', { machine: dose.machine.name })}` : done;
    }
    case 'variation': {
      const load =
        dose.effectiveLoadKg === null
          ? say('no-effective-load')
          : say('effective-load', { load: figure(dose.effectiveLoadKg) });
      const added = dose.addedKg > 0 ? `, ${say('added', { load: massInWords(dose.addedKg) })}` : '';
      const mark = dose.mark === undefined ? '' : `, ${say('mark', { mark: dose.mark })}`;
      const values = {
        sets: dose.sets,
        repetitions: band(dose.repetitions),
        reserve: dose.reserve,
        load: `${load}${added}${mark}`,
      };
      return dose.hold
        ? say('holds-in-reserve', { ...values, seconds: dose.hold.seconds, most: dose.hold.mostSeconds })
        : say('sets-in-reserve', values);
    }
    case 'occlusion':
      return [
        say('scheme-with-load', { scheme: dose.scheme.join(' / '), load: massInWords(dose.loadKg) }),
        cuffInWords(dose.cuff),
        say(dose.inflation === 'continuous' ? 'cuff-stays-inflated' : 'cuff-deflated'),
        say('no-more-than', { minutes: figure(dose.capSeconds / 60) }),
        say(dose.supervised ? 'with-a-clinician-present' : 'at-home'),
        ...(dose.pulseShown ? [say('pulse-checked')] : []),
      ].join(', ');
  }
};

export const doseInWords = (dose: Dose): string =>
  say(heldSeconds(dose) === null ? 'dose' : 'dose-held', {
    dose: work(dose),
    rest: dose.restSeconds,
    repetition: figure(dose.secondsPerRepetition),
    sessions: dose.sessionsPerWeek,
  });
