/** A dose as it is signed: what is done in large figures, the rest of it on one line. */
import { prescribedLoadKg } from '#core/decision/dose/volume.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { setsInShort } from '#core/prescribing/dose-in-short.ts';
import { figure, massInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { doseInWords } from '../dose-words.ts';

const restOf = (dose: Exclude<Dose, { method: 'occlusion' }>): string =>
  [
    say('reserve', { count: dose.reserve }),
    say('rest', { seconds: dose.restSeconds }),
    say('repetition', { seconds: figure(dose.secondsPerRepetition) }),
    say('week', { count: dose.sessionsPerWeek }),
  ].join(' · ');

/** Of work with a cuff every figure of the cuff belongs to the dose, so it is said whole. */
export const DoseLarge = ({ dose }: { readonly dose: Dose }) => {
  const loadKg = prescribedLoadKg(dose);
  return (
    <>
      <p className="dose-large">
        <span>{setsInShort(dose)}</span>
        {loadKg > 0 ? <span>{massInWords(loadKg)}</span> : null}
      </p>
      <p>{dose.method === 'low-load' ? restOf(dose) : doseInWords(dose)}</p>
    </>
  );
};
