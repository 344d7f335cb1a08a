/**
 * Session load: the rating of the whole session (0–10) times its minutes, in arbitrary units. Asked
 * about half an hour afterwards; stable from one minute to 14 days. Not comparable between people.
 * Stays at the desk and drives no decision.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome } from '#core/outcome.ts';

/** Words of the rating where the scale has one. */
const exertionWords: Readonly<Record<number, string>> = {
  0: 'rest',
  1: 'very, very easy',
  2: 'easy',
  3: 'moderate',
  4: 'somewhat hard',
  5: 'hard',
  7: 'very hard',
  10: 'maximal',
};

const wordNote = (exertion: number): readonly Note[] => {
  const words = exertionWords[exertion];
  return words === undefined ? [] : [{ code: 'scale-words', text: `On the scale: ${words}.` }];
};

const deskOnly: Note = {
  code: 'desk-only',
  text: 'Arbitrary units, for one person over time. No decision is taken from it.',
};

export const sessionLoad = (input: {
  readonly exertion: number;
  readonly minutes: number;
}): Outcome<{ readonly load: number }> =>
  answer({ load: input.exertion * input.minutes }, [...wordNote(input.exertion), deskOnly]);

export const sessionLoadRow = calculation({
  id: 'session-load',
  title: 'Session load from rated exertion and minutes',
  area: 'monitoring',
  input: [
    {
      name: 'exertion',
      kind: 'number',
      unit: '{score}',
      min: 0,
      max: 10,
      about: 'How hard the whole session was.',
    },
    { name: 'minutes', kind: 'number', unit: 'min', min: 0, max: 600 },
  ],
  result: [{ name: 'load', unit: '1', about: 'Arbitrary units.' }],
  citations: [
    { source: 'foster-2001', locator: 'abstract', mark: 'seen', remark: 'Scale words second-hand.' },
    { source: 'foster-2021', locator: 'abstract', mark: 'seen', remark: 'When the rating may be asked.' },
  ],
  calculate: sessionLoad,
  example: { exertion: 7, minutes: 75 },
});
