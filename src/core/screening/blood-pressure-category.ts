/**
 * The name three guidelines give to one office reading; the higher of the two components decides.
 *
 * The systems disagree (118/75 is normal, optimal and elevated), so the label always stands with its
 * system and year. A label of one reading is no diagnosis: that takes at least two careful readings
 * on at least two occasions. It opens and closes nothing; the start gate does.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, type Note } from '../outcome.ts';
import { diastolicBelowSystolic, diastolicField, systolicField } from './blood-pressure-fields.ts';

const bloodPressureSystems = ['acc-aha-2025', 'esc-2024', 'esh-2023'] as const;
type BloodPressureSystem = (typeof bloodPressureSystems)[number];

interface Row {
  /** Both components must lie under these; the last row is open. */
  readonly systolicUnder: number;
  readonly diastolicUnder: number;
  readonly category: string;
}

const open = Number.POSITIVE_INFINITY;

const tables = {
  'acc-aha-2025': [
    { systolicUnder: 120, diastolicUnder: 80, category: 'normal' },
    { systolicUnder: 130, diastolicUnder: 80, category: 'elevated' },
    { systolicUnder: 140, diastolicUnder: 90, category: 'stage-1' },
    { systolicUnder: open, diastolicUnder: open, category: 'stage-2' },
  ],
  'esc-2024': [
    { systolicUnder: 120, diastolicUnder: 70, category: 'non-elevated' },
    { systolicUnder: 140, diastolicUnder: 90, category: 'elevated' },
    { systolicUnder: open, diastolicUnder: open, category: 'hypertension' },
  ],
  'esh-2023': [
    { systolicUnder: 120, diastolicUnder: 80, category: 'optimal' },
    { systolicUnder: 130, diastolicUnder: 85, category: 'normal' },
    { systolicUnder: 140, diastolicUnder: 90, category: 'high-normal' },
    { systolicUnder: 160, diastolicUnder: 100, category: 'grade-1' },
    { systolicUnder: 180, diastolicUnder: 110, category: 'grade-2' },
    { systolicUnder: open, diastolicUnder: open, category: 'grade-3' },
  ],
} as const satisfies Record<BloodPressureSystem, readonly Row[]>;

/** The 2025 term for a reading over these without acute organ damage; strictly over. */
const severeAbove = { systolicMmhg: 180, diastolicMmhg: 120 } as const;

const bloodPressureLabel = (
  system: BloodPressureSystem,
  systolicMmhg: number,
  diastolicMmhg: number,
): string => {
  const rows: readonly Row[] = tables[system];
  const row = rows.find((one) => systolicMmhg < one.systolicUnder && diastolicMmhg < one.diastolicUnder);
  return (row ?? rows[rows.length - 1]!).category;
};

const isSevere = (systolicMmhg: number, diastolicMmhg: number): boolean =>
  systolicMmhg > severeAbove.systolicMmhg || diastolicMmhg > severeAbove.diastolicMmhg;

const noDiagnosis: Note = {
  code: 'no-diagnosis',
  text: 'The label of one reading is no diagnosis; systems differ, so name the system and year beside it.',
};
const organDamageUnknown: Note = {
  code: 'organ-damage-not-checked',
  text: 'Severe without acute organ damage is the 2025 term; whether organs are damaged was not checked here.',
};

export const bloodPressureCategory = calculation({
  id: 'blood-pressure-category',
  title: 'Blood-pressure category of one reading',
  area: 'screening',
  input: [{ name: 'system', kind: 'enum', values: bloodPressureSystems }, systolicField, diastolicField],
  result: [
    { name: 'category', unit: '' },
    { name: 'severe', unit: '', about: 'acc-aha-2025 only: over 180 or over 120' },
  ],
  citations: [
    {
      source: 'blood-pressure-usa-2017',
      locator: 'category table, restated',
      mark: 'second-hand',
      remark: 'four categories',
    },
    {
      source: 'blood-pressure-usa-2025',
      locator: 'categories kept; severe over 180 or 120',
      mark: 'second-hand',
    },
    { source: 'blood-pressure-europe-2024', locator: 'three categories', mark: 'second-hand' },
    { source: 'blood-pressure-esh-2023', locator: 'categories and grades', mark: 'second-hand' },
  ],
  consistent: diastolicBelowSystolic,
  calculate: ({ system, systolicMmhg, diastolicMmhg }) => {
    const category = bloodPressureLabel(system, systolicMmhg, diastolicMmhg);
    if (system !== 'acc-aha-2025')
      return answer<{ category: string; severe?: boolean }>({ category }, [noDiagnosis]);
    const severe = isSevere(systolicMmhg, diastolicMmhg);
    return answer<{ category: string; severe?: boolean }>(
      { category, severe },
      severe ? [noDiagnosis, organDamageUnknown] : [noDiagnosis],
    );
  },
  example: { system: 'esc-2024', systolicMmhg: 118, diastolicMmhg: 75 },
});
