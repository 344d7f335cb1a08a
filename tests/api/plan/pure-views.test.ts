/** What the phone, the worklist and the handover are made from says what the plan says, on drawn plans without a file. */
import { describe, expect, it } from 'vitest';
import { dangerTexts } from '#api/patient/today-danger.ts';
import { exercisesByPlace } from '#api/patient/today-exercise.ts';
import { openSigns, type Plan } from '#core/plan/plan.ts';
import { planFor } from '#core/plan/plan-for.ts';
import { dueItems } from '#core/worklist/due-items.ts';
import type { PatientState } from '#core/worklist/item.ts';
import type { Access } from '#data/access.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import { drawn, drawnInputs } from '#tests/core/plan/drawn-plans.ts';
import { day } from '#tests/core/plan/plan-inputs.ts';
import { disagreements, type Surfaces } from '#tests/support/agreement.ts';
import { drawSeed, rounds } from '#tests/support/drawn-rounds.ts';

const records = rounds(2500, 10_000);
const clinic = { name: 'Test clinic', phone: '01 234' };
const due = { missingMornings: 3, screeningDays: 180, pressureDays: 90, baselineDays: 42 };

const stateWith = (plan: Plan): PatientState => ({
  plan,
  proposals: [],
  unsignedSince: null,
  conflictSince: null,
  clockDoubtfulSince: null,
  reportedNew: null,
  messageSince: null,
  reviewOn: null,
  retests: [],
  lastMorning: null,
  startedOn: null,
  screenedOn: null,
  pressureMeasuredOn: null,
  baselines: [],
  care: {
    episodeStatus: { state: 'not-recorded', change: null, returned: null },
    closedAt: null,
    limits: [],
    phases: [],
    events: [],
    answeredAt: null,
    passes: [],
  },
});

const viewsOf = (rows: readonly Prescription[], plan: Plan): Surfaces => {
  const items = dueItems(stateWith(plan), due).filter(({ showsFrom }) => showsFrom <= day);
  return {
    today: {
      exercises: exercisesByPlace('home', rows, {
        access: { day } as Access,
        zone: 'Europe/Dublin',
        isQuiet: false,
        programmes: [],
        plan,
        record: null,
      }).exercises,
      isStopped: openSigns(plan).length > 0,
      danger: dangerTexts(plan, clinic),
      contact: plan.contact,
    },
    review: plan,
    handover: { plan, dangers: items },
    worklist: items,
    document: null,
  };
};

describe('the views of a plan', () => {
  it(`of ${records} drawn records (seed ${drawSeed}) say of every exercise what the plan says`, () => {
    const draw = drawn(drawSeed);
    const found: string[] = [];
    for (let record = 1; record <= records; record++) {
      const inputs = drawnInputs(draw);
      const plan = planFor(inputs);
      const rows = inputs.versions.map((version) => ({
        ...version,
        cautions: [],
        working: [],
        decisionId: null,
        recordedAt: version.signedAt,
        signedName: 'N. Derravane',
        endReason: null,
        withdrawnAt: null,
        handedAt: null,
      }));
      const differences = disagreements(viewsOf(rows, plan), plan, day);
      if (differences.length > 0) found.push(`record ${record}: ${differences.join(', ')}`);
    }
    expect(found).toEqual([]);
  });
});
