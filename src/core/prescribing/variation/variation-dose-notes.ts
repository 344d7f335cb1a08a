/** What a clinician must be told with a proposed variation: size of the next step, fit of the start, limits. */
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Level } from '#core/exercises/exercise.ts';
import type { NeighbouringLevel } from '#core/exercises/ladder/ladder.ts';
import type { StartFit } from '#core/exercises/ladder/start-level.ts';
import type { Note } from '#core/outcome.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { VariationDose } from '../dose.ts';
import { handEvidence } from './hand-evidence.ts';
import { markedThing } from './marked-things.ts';

interface NoteContext {
  readonly dose: VariationDose;
  readonly badDay: VariationDose;
  readonly level: Level;
  readonly next: NeighbouringLevel | null;
  readonly fit: StartFit;
  readonly movedDown: boolean;
  readonly settings: SettingValues;
}

/** Doubles leave a step of exactly ten percent a hair above it. */
const hair = 1e-9;

const stepNote = (next: NeighbouringLevel | null, largestPercent: number): Note => {
  if (!next) {
    return { code: 'no-next-rung', text: 'No harder rung is known in this family for this person.' };
  }
  const title = exerciseTitle(next.rung.exerciseId);
  if (next.stepPercent === null) {
    return {
      code: 'step-unknown',
      text: `The step to “${title}” cannot be computed; its order is common practice. Treat it as large.`,
    };
  }
  const size = `${next.stepPercent.toFixed(0)} %`;
  return next.stepPercent > largestPercent + hair
    ? {
        code: 'step-over-window',
        text: `The step to “${title}” is ${size}, over ${largestPercent} %: add repetitions first and decide on it by name.`,
      }
    : { code: 'step-within-window', text: `The step to “${title}” is ${size}.` };
};

const fitNotes = ({ fit, movedDown }: NoteContext): readonly Note[] => {
  switch (fit) {
    case 'not-tested':
      return [
        {
          code: 'start-not-tested',
          text: 'No test of this level is on record. Watch one set; start where it ends in the band with the reserve asked.',
        },
      ];
    case 'too-hard':
      return [
        movedDown
          ? {
              code: 'start-moved-down',
              text: 'The set tried was too hard for the band; the rung below is proposed.',
            }
          : {
              code: 'start-too-hard',
              text: 'The set tried was too hard for the band and no easier rung is known.',
            },
      ];
    case 'too-easy':
      return [
        { code: 'start-too-easy', text: 'The set tried was too easy for the band; consider the next rung.' },
      ];
    case 'challenging':
      return [];
  }
};

/** No setting of the clinic fills a mark in, so that a dose without one names no piece. */
const markNotes = ({ exerciseId, mark }: VariationDose): readonly Note[] => {
  const thing = markedThing(exerciseId);
  return thing === null || mark !== undefined
    ? []
    : [
        {
          code: 'mark-not-given',
          text: `No mark of the ${thing} is given, so this dose does not say which ${thing} to use. Type its mark.`,
        },
      ];
};

export const variationDoseNotes = (context: NoteContext): readonly Note[] => {
  const { dose, badDay, level, next, settings } = context;
  const notes: Note[] = [
    ...markNotes(dose),
    ...fitNotes(context),
    stepNote(next, settings['variation-largest-step-percent'] ?? 0),
    { code: 'rung', text: level.remark },
  ];
  if (dose.repetitions.high > 12 && !dose.hold) {
    notes.push({
      code: 'reserve-uncertain-in-long-sets',
      text: 'In sets of more than 12 repetitions a reported reserve is a rough word, usually too low.',
    });
  }
  if (badDay.exerciseId !== dose.exerciseId) {
    notes.push({ code: 'bad-day-rung', text: `On a bad day: “${exerciseTitle(badDay.exerciseId)}”.` });
  }
  notes.push(...handEvidence(dose.exerciseId));
  notes.push({
    code: 'clinician-decides',
    text: `${dose.effectiveLoadKg === null ? 'No load was computed' : 'Computed from body measures'}; the joint was not asked. A clinician checks and signs, by local rules.`,
  });
  return notes;
};
