/**
 * Every load that can be put together from what is in the house: fixed dumbbells, a bar with pairs
 * of plates, a cuff filled in equal steps. Sums are kept as whole milligrams so that no load appears
 * twice. Which sizes people own is common knowledge of the trade; they are asked, never assumed.
 */

import { loadField, ownedLoadField } from '../assessment/strength/fields.ts';
import { calculation } from '../calculations/calculation.ts';
import { answer, type Outcome, refuse } from '../outcome.ts';
import { roundingCitations } from '../prescribing/low-load/load-rounding.ts';
import { kilogramsFromMilligrams, milligrams } from '../units/units.ts';

/** More than this and a list of loads helps nobody; it also bounds the work. */
const mostLoads = 2000;

export interface HomeEquipment {
  readonly fixedKg?: readonly number[];
  /** Bar or handle without plates. */
  readonly barKg?: number;
  /** One plate of each pair; a pair adds twice this. */
  readonly pairsOfPlatesKg?: readonly number[];
  readonly cuffStepKg?: number;
  readonly cuffMostKg?: number;
}

const barLoads = (equipment: HomeEquipment): readonly number[] => {
  if (equipment.barKg === undefined) return [];
  const sums = new Set([milligrams(equipment.barKg)]);
  for (const plateKg of equipment.pairsOfPlatesKg ?? []) {
    for (const sum of [...sums]) sums.add(sum + 2 * milligrams(plateKg));
    if (sums.size > mostLoads) break;
  }
  return [...sums];
};

const cuffLoads = (equipment: HomeEquipment): readonly number[] => {
  if (equipment.cuffStepKg === undefined || equipment.cuffMostKg === undefined) return [];
  const step = milligrams(equipment.cuffStepKg);
  if (step === 0) return [];
  const steps = Math.min(Math.floor(milligrams(equipment.cuffMostKg) / step), mostLoads + 1);
  return Array.from({ length: steps }, (_, place) => (place + 1) * step);
};

export const achievableLoads = (
  equipment: HomeEquipment,
): Outcome<{ readonly loadsKg: readonly number[] }> => {
  if ((equipment.cuffStepKg === undefined) !== (equipment.cuffMostKg === undefined)) {
    return refuse('cuffStepKg', 'inconsistent', 'Give the step of the cuff and the most it holds together.');
  }
  if (equipment.pairsOfPlatesKg?.length && equipment.barKg === undefined) {
    return refuse('barKg', 'missing', 'Plates need a bar: give its mass.');
  }
  const fixed = (equipment.fixedKg ?? []).map(milligrams);
  const distinct = new Set([...fixed, ...barLoads(equipment), ...cuffLoads(equipment)]);
  if (distinct.size > mostLoads) {
    return refuse('pairsOfPlatesKg', 'too-high', `More than ${mostLoads} loads; list fewer plates or steps.`);
  }
  if (distinct.size === 0) return refuse('fixedKg', 'missing', 'List at least one load, bar or cuff.');
  const loadsKg = [...distinct].sort((first, second) => first - second).map(kilogramsFromMilligrams);
  return answer({ loadsKg }, [
    { code: 'household', text: 'With nothing else to hand, a litre of water weighs 1.0 kg.' },
  ]);
};

export const achievableLoadsRow = calculation({
  id: 'achievable-loads',
  title: 'Loads that can be put together at home',
  area: 'strength',
  input: [
    { name: 'fixedKg', kind: 'list', of: ownedLoadField, maxItems: 200, optional: true },
    { ...loadField('barKg', 'Bar or handle without plates.'), optional: true },
    {
      name: 'pairsOfPlatesKg',
      kind: 'list',
      of: loadField('plate', 'One plate of a pair.'),
      maxItems: 20,
      optional: true,
    },
    { ...loadField('cuffStepKg', 'Smallest step of the cuff.'), optional: true },
    { ...loadField('cuffMostKg', 'The most the cuff holds.'), optional: true },
  ],
  result: [{ name: 'loadsKg', unit: 'kg', about: 'Distinct, lightest first.' }],
  citations: roundingCitations,
  calculate: achievableLoads,
  example: { barKg: 2, pairsOfPlatesKg: [0.5, 1.25] },
});
