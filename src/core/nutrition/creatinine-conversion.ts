/**
 * Creatinine from micromoles per litre to milligrams per decilitre.
 *
 * The divisor 88.42 is from memory; it follows from a molar mass of 113.12 g/mol to 0.02 %.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';

const umolPerLForOneMgPerDl = 88.42;

const creatinineMgDl = (umolPerL: number): number => umolPerL / umolPerLForOneMgPerDl;

export const creatinineConversionRow = calculation({
  id: 'creatinine-conversion',
  title: 'Creatinine in mg/dL',
  area: 'nutrition',
  input: [{ name: 'creatinineUmolPerL', kind: 'number', unit: 'umol/L', min: 5, max: 3000 }],
  result: [{ name: 'creatinineMgDl', unit: 'mg/dL' }],
  citations: [{ source: 'creatinine-units', locator: 'divisor 88.42', mark: 'memory' }],
  calculate: (input) => answer({ creatinineMgDl: creatinineMgDl(input.creatinineUmolPerL) }),
  example: { creatinineUmolPerL: 100 },
});
