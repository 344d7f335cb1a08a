/**
 * Simplified disease activity index: the clinical index plus CRP in milligrams per decilitre.
 *
 * For rheumatoid arthritis, entered by a clinician. Laboratories mostly report mg/L: a tenth of that figure is
 * meant here. The bands are from memory.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { bandOf, type UpperBand } from './bands.ts';
import type { ActivityBand } from './das28.ts';
import { clinicalFields, clinicalSum } from './joint-count-fields.ts';

const bands: readonly UpperBand<ActivityBand>[] = [
  { band: 'remission', upTo: 3.3, including: true },
  { band: 'low', upTo: 11, including: true },
  { band: 'moderate', upTo: 26, including: true },
];

export const sdaiRow = calculation({
  id: 'sdai',
  title: 'Simplified disease activity index',
  area: 'outcomes',
  input: [
    ...clinicalFields,
    { name: 'crpMgDl', kind: 'number', unit: 'mg/dL', min: 0, max: 60, about: 'In mg/dL: mg/L over ten.' },
  ],
  result: units({ score: '{score}', band: '' }),
  citations: [
    { source: 'das28-formulae', locator: 'table 187591: composition of the index', mark: 'seen' },
    { source: 'sdai-bands', locator: '3.3, 11 and 26', mark: 'memory' },
  ],
  calculate: (input) => {
    const score = clinicalSum(input) + input.crpMgDl;
    return answer({ score, band: bandOf(score, bands, 'high') }, [
      { code: 'from-memory', text: 'The bands of this index are from memory. CRP is in mg/dL.' },
    ]);
  },
  example: { tender: 4, swollen: 2, patientGlobal: 4, clinicianGlobal: 3, crpMgDl: 1.2 },
});
