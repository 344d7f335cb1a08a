/**
 * Grip strength against the sarcopenia consensus of 2019: under 27 kg in men, under 16 kg in women.
 *
 * A painful or deformed hand lowers grip by itself, so in hand arthritis a low grip says little about the rest
 * of the body.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { worked } from '#core/calculations/working.ts';
import { answer } from '#core/outcome.ts';
import { figure } from '#core/review/plain-words.ts';
import { type Judgement, unjudged, withoutNorm } from '../course/judgement.ts';
import { type Person, people, sexNeeded } from '../course/measured.ts';
import { number, side, usually } from './fields.ts';
import { measure } from './measure.ts';

const lowUnderKg = { male: 27, female: 16 } as const;

export const gripStrengthRow = calculation({
  id: 'grip-strength',
  title: 'Grip strength',
  area: 'outcomes',
  input: [
    { name: 'sex', kind: 'enum', values: ['female', 'male'] },
    { name: 'forceKg', kind: 'number', unit: 'kg', min: 0, max: 120 },
  ],
  result: units({ low: '', thresholdKg: 'kg' }),
  citations: [{ source: 'ewgsop2-2019', locator: 'cut-offs for low strength by grip', mark: 'seen' }],
  calculate: (input) => {
    const thresholdKg = lowUnderKg[input.sex];
    return answer({ low: input.forceKg < thresholdKg, thresholdKg }, [
      { code: 'painful-hand', text: 'A painful or deformed hand lowers grip by itself.' },
    ]);
  },
  example: { sex: 'female', forceKg: 15.9 },
});

const norm = ({ forceKg }: { readonly forceKg: number }, { sex }: Person): Judgement => {
  if (sex === null) return withoutNorm(sexNeeded);
  const { working, outcome } = worked(gripStrengthRow, { sex, forceKg });
  if (!outcome.ok) return withoutNorm('No cut-off holds for this force.');
  const { thresholdKg, low } = outcome.result;
  return {
    sentence: `Under ${thresholdKg} kg is low for ${people[sex]}: ${figure(forceKg)} kg is ${low ? 'low' : 'not low'}. A painful or deformed hand lowers grip by itself.`,
    workings: [working],
  };
};

export const grip = measure({
  kind: 'grip',
  title: 'Grip strength',
  fields: [side, number('forceKg', 'kg', 0, 120, 'Grip')],
  usual: [usually('forceKg', 3, 70, 'kg')],
  sameBy: ['side'],
  figure: (row) => row.forceKg,
  farFromLast: { percent: 50, figures: (row) => [{ value: row.forceKg, unit: 'kg' }] },
  inWords: (row) => `${figure(row.forceKg)} kg`,
  course: {
    area: 'function',
    subject: (row) => row.side,
    title: (subject) => `Grip strength, ${subject}`,
    norm,
    drawnAt: (row) => row.forceKg,
    drawn: (_first, _last, { sex }) => ({
      unit: 'kg',
      error: null,
      cut: sex === null ? null : { at: lowUnderKg[sex], words: `under ${lowUnderKg[sex]} kg: low` },
      better: 'higher',
    }),
    change: (first, last) =>
      unjudged(last.forceKg - first.forceKg, ' kg', 'No error of measuring grip is on file.'),
  },
  sides: {
    subject: () => '',
    side: (row) => row.side,
    figure: (row) => row.forceKg,
    unit: ' kg',
    isRatio: true,
    error: null,
  },
  calculations: [gripStrengthRow],
});
