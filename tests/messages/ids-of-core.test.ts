/** The lists of ids that the sentences are keyed by are those of the tables that bring them. */
import { describe, expect, it } from 'vitest';
import { monitoringHoursFrom } from '#core/episode/monitoring-hours.ts';
import { exerciseCautions } from '#core/exercises/cautions.ts';
import { alwaysCautions } from '#core/prescribing/cautions/always.ts';
import { medicineCautions } from '#core/prescribing/cautions/by-medicine.ts';
import { methodCautions } from '#core/prescribing/cautions/by-method.ts';
import {
  alwaysCautionIds,
  cautionedMedicineIds,
  exerciseCautionIds,
  methodCautionIds,
  occlusionCheckIds,
} from '#core/prescribing/cautions/ids.ts';
import { occlusionChecks } from '#core/prescribing/occlusion/checks.ts';
import { doses } from '#tests/core/prescribing/cautions/doses.ts';
import { screeningWith } from '#tests/core/screening/answers.ts';

const idsOf = (rows: readonly { readonly id: string }[]) => [...new Set(rows.map(({ id }) => id))];

describe('ids', () => {
  it('of cautions are those of the tables', () => {
    expect(idsOf(alwaysCautions)).toEqual([...alwaysCautionIds]);
    expect(idsOf(exerciseCautions)).toEqual([...exerciseCautionIds]);
    expect(idsOf(doses.flatMap(methodCautions)).sort()).toEqual([...methodCautionIds].sort());
  });

  it('of medicines with a caution are those of the questions about medicines', () => {
    const all = screeningWith(
      ['medicines', 'arthritis-medicines', 'diabetes'].map((item) => ({
        item,
        answer: 'not-known' as const,
      })),
    );
    expect(idsOf(medicineCautions(all))).toEqual(cautionedMedicineIds.map((id) => `medicine-${id}`));
  });

  it('of checks around a cuff are those of the table', () => {
    expect(idsOf(occlusionChecks)).toEqual([...occlusionCheckIds]);
  });
});

describe('monitoring hours', () => {
  it('are read day by day, from and to', () => {
    expect(monitoringHoursFrom('Mon-Fri 08:30-18:30; Sat 09:00-12:00')).toEqual([
      { days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], from: '08:30', to: '18:30' },
      { days: ['Sat'], from: '09:00', to: '12:00' },
    ]);
    expect(monitoringHoursFrom('Mon-Fri 08:00-12:00; Mon-Thu 13:00-17:00')).toHaveLength(2);
  });

  it.each([
    '',
    'Mon',
    'Mon-Fri',
    'always',
    'Fri-Mon 08:00-12:00',
    'Mon-Wed-Fri 08:00-12:00',
    'Mon 8:00-12:00',
    'Mon 12:00-08:00',
    'Mon 12:00-12:00',
    'Mon 08:00-24:00',
    'Mon 08:00-12:00-13:00',
    'Mon 08:00-12:00 often',
    'Mon 08:00-12:00;',
    'Mon-Fri 08:00-12:00; Wed 11:00-13:00',
  ])('of "%s" are refused', (text) => {
    expect(monitoringHoursFrom(text)).toBeNull();
  });
});
