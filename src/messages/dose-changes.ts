/** What a decision changes in a dose, as the patient reads it: the new dose before the old one. */
import type { Today } from '#core/decision/answers.ts';
import type { DoseChangeForPatient, TellableChange } from '#core/prescribing/dose-change-for-patient.ts';
import { gramsOf, isInGrams } from '#core/units/units.ts';
import { textOf } from './every-language.ts';
import { exerciseName } from './exercises.ts';
import { joined, type Text } from './text.ts';

/** "12–12" is said as 12. */
const bandText = (band: string | number): string => {
  const [low, high] = String(band).split('–');
  return low !== undefined && low === high ? low : String(band);
};

const oneChange = ({ variable, from, to }: TellableChange): Text => {
  switch (variable) {
    case 'rung':
      return textOf('dose-changes', 'new-exercise', {
        from: exerciseName(String(from)),
        to: exerciseName(String(to)),
      });
    case 'load':
      return isInGrams(Number(from)) && isInGrams(Number(to))
        ? textOf('dose-changes', 'new-load-grams', { from: gramsOf(Number(from)), to: gramsOf(Number(to)) })
        : textOf('dose-changes', 'new-load', { from, to });
    case 'hold':
      return textOf('dose-changes', 'new-hold', { from, to });
    case 'mark':
      return textOf('dose-changes', 'new-mark', { from, to });
    case 'sets':
      return textOf('dose-changes', 'new-sets', { from, to });
    case 'holds':
      return textOf('dose-changes', 'new-holds', { from: bandText(from), to: bandText(to) });
    case 'repetitions':
      return textOf('dose-changes', 'new-repetitions', { from: bandText(from), to: bandText(to) });
  }
};

/** A clinician set it anew by hand: what an earlier decision said of it no longer counts. */
export const writtenAnewText = (exerciseId: string, name: string): Text =>
  textOf('dose-changes', 'written-anew', { exercise: exerciseName(exerciseId), name });

/**
 * One sentence, or two where a change waits for a signature. While only the easier session is done, or none, the
 * new dose is for afterwards, and nothing is said to be done as before.
 */
export const doseChangeText = (change: DoseChangeForPatient, today: Today = 'as-planned'): Text => {
  const exercise = exerciseName(change.exerciseId);
  const now = today === 'as-planned' ? null : today === 'bad-day' ? 'easier' : 'rest';
  if (now && change.kind !== 'stop' && change.kind !== 'changed')
    return textOf('dose-changes', `${now}-now`, { exercise });
  const changed = now ? (`${now}-then-changed` as const) : 'changed';
  return change.kind === 'changed'
    ? textOf('dose-changes', changed, { exercise, changes: joined(change.changes.map(oneChange), '; ') })
    : textOf('dose-changes', change.kind, { exercise });
};
