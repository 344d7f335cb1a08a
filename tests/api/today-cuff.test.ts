/** Which days work with a cuff stands on the patient's page. */
import { describe, expect, it } from 'vitest';
import { exercisesByPlace } from '#api/patient/today-exercise.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Programme } from '#core/prescribing/programme/planned-sessions.ts';
import type { Access } from '#data/access.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import { asSigned } from '#tests/support/plan-as-signed.ts';
import { cuffDose, weightDose } from '#tests/ui/patient/views.ts';

const row = (itemId: string, dose: Dose): Prescription => ({
  id: `version-${itemId}`,
  itemId,
  version: 1,
  dose,
  badDay: dose,
  joints: [],
  cautions: [],
  working: [],
  origin: 'clinician',
  decisionId: null,
  recordedAt: 0,
  signedAt: 0,
  signedName: 'N. Derravane',
  endedAt: null,
  endReason: null,
  withdrawnAt: null,
  handedAt: null,
});

const shown = (day: string, versions: readonly Prescription[], programmes: readonly Programme[] = []) =>
  exercisesByPlace('home', versions, {
    access: { day } as Access,
    zone: 'Europe/London',
    isQuiet: false,
    programmes,
    plan: asSigned(versions),
    record: null,
  })
    .exercises.filter(({ planned }) => planned)
    .map(({ itemId }) => itemId);

const both = [row('weight', weightDose), row('cuff', cuffDose)];

describe('work with a cuff on the patient’s page', () => {
  // 2026-03-09 is a Monday. The weight, three times a week, is counted from the Thursday of its signature.
  it.each([
    ['2026-03-09', ['weight', 'cuff']],
    ['2026-03-10', []],
    ['2026-03-11', ['cuff']],
    ['2026-03-12', ['weight']],
    ['2026-03-13', ['cuff']],
    ['2026-03-14', ['weight']],
    ['2026-03-15', []],
  ])('stands on %s among %j while no week is planned: three days at most', (day, expected) => {
    expect(shown(day, both)).toEqual(expected);
  });

  it('is one exercise a session on a limb, also where two are prescribed', () => {
    const twice = [row('first', cuffDose), row('second', cuffDose)];
    expect(shown('2026-03-09', twice)).toEqual(['first']);
  });

  it('follows the week once it is planned', () => {
    const week: Programme = {
      version: 1,
      fromDay: '2026-03-01',
      lines: [{ itemId: 'cuff', weekdays: [2, 4] }],
    };
    expect(shown('2026-03-09', both, [week])).toEqual([]);
    expect(shown('2026-03-10', both, [week])).toEqual(['cuff']);
  });
});
