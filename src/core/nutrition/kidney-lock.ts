/**
 * Kidney disease takes protein out of the tool's hands.
 *
 * An estimated filtration rate under 60, known kidney disease, a single kidney or dialysis: no automatic
 * target. The guideline's 0.8 g/kg is shown as a usual ceiling to discuss, with 1.3 g/kg as the figure to
 * stay under; it does not say which body mass. Dialysis needs more and is never automated. In a frail older
 * adult the two aims conflict, and the clinician decides.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, type Note } from '../outcome.ts';
import type { Citation } from '../sources/citation.ts';
import { massKg } from './body-fields.ts';
import { egfrField, kidneyQuestions, type LockAnswers, locks } from './lock-fields.ts';

export const kidneyCitations: readonly Citation[] = [
  {
    source: 'kdigo-2024',
    locator: 'protein intake in G3 to G5: 0.8 g/kg; avoid more than 1.3 g/kg',
    mark: 'second-hand',
    remark: 'Applies under 60, not only under 30 as an older restatement for the elderly has it.',
  },
  { source: 'dialysis-protein', locator: 'table T1: 1.0 to 1.2 g/kg', mark: 'seen' },
  {
    source: 'windahl-2024',
    locator: 'adults of 65 and over with a rate under 20',
    mark: 'seen',
    remark: 'Restriction not linked to worse survival overall, but differently above 75 years.',
  },
];

export const kidneyFigures = { lockUnderEgfr: 60, ceilingGPerKg: 0.8, warnAboveGPerKg: 1.3 } as const;

export interface KidneyFacts extends Pick<LockAnswers, 'kidneyDisease' | 'singleKidney' | 'dialysis'> {
  readonly egfr?: number;
}

export const kidneyLockReasons = (facts: KidneyFacts): readonly string[] => [
  ...(facts.egfr !== undefined && facts.egfr < kidneyFigures.lockUnderEgfr ? ['egfr-under-60'] : []),
  ...(locks(facts.kidneyDisease) ? ['kidney-disease'] : []),
  ...(locks(facts.singleKidney) ? ['single-kidney'] : []),
  ...(locks(facts.dialysis) ? ['dialysis'] : []),
];

export const kidneyNotes = (facts: KidneyFacts, age?: number): readonly Note[] => [
  {
    code: 'refer-kidney',
    text: 'No automatic protein target. Refer to the treating physician and a renal dietitian; the figures shown are for that talk.',
  },
  ...(locks(facts.dialysis)
    ? [
        {
          code: 'dialysis',
          text: 'On dialysis the need is higher than 0.8 g/kg; it is set by the renal team only.',
        },
      ]
    : []),
  ...(age !== undefined && age > 65
    ? [
        {
          code: 'older-with-kidney-disease',
          text: 'Figures for older adults are higher than those for kidney disease. The sources conflict; the clinician decides.',
        },
      ]
    : []),
];

export const kidneyLockRow = calculation({
  id: 'kidney-lock',
  title: 'Kidney lock on protein targets',
  area: 'nutrition',
  input: [massKg, egfrField, ...kidneyQuestions],
  result: [
    { name: 'locked', unit: '' },
    { name: 'reasons', unit: '' },
    { name: 'ceilingToDiscussG', unit: 'g/d', about: 'null unless locked, and null on dialysis' },
    { name: 'warnAboveG', unit: 'g/d', about: 'null unless locked, and null on dialysis' },
  ],
  citations: kidneyCitations,
  calculate: (input) => {
    const reasons = kidneyLockReasons(input);
    const locked = reasons.length > 0;
    const shown = locked && !locks(input.dialysis);
    return answer(
      {
        locked,
        reasons,
        ceilingToDiscussG: shown ? kidneyFigures.ceilingGPerKg * input.massKg : null,
        warnAboveG: shown ? kidneyFigures.warnAboveGPerKg * input.massKg : null,
      },
      locked ? kidneyNotes(input) : [],
    );
  },
  example: { massKg: 70, egfr: 45 },
});
