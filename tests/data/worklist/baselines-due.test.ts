/** When a baseline asks on the worklist to be set anew. */
import { describe, expect, it } from 'vitest';
import { planFor } from '#core/plan/plan-for.ts';
import type { Baseline } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import { dueItems } from '#core/worklist/due-items.ts';
import { newestBaselines } from '#data/worklist/patient-state.ts';
import { baseline } from '#tests/core/decision/small-record.ts';
import { inputs } from '#tests/core/plan/plan-inputs.ts';

const set = '2026-01-05';
const due = { missingMornings: 3, screeningDays: 180, pressureDays: 90, baselineDays: 42 };

/** The day from which the knee's baseline shows, by its joint. */
const showsFrom = (baselines: readonly Baseline[]) => {
  const state = {
    plan: planFor(inputs()),
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
    baselines: newestBaselines(baselines),
    care: {
      episodeStatus: { state: 'not-recorded', change: null, returned: null } as const,
      closedAt: null,
      limits: [],
      phases: [],
      events: [],
      answeredAt: null,
      passes: [],
    },
  };
  return dueItems(state, due)
    .filter(({ kind }) => kind === 'baseline-due')
    .map((item) => item.showsFrom);
};

describe('a baseline on the worklist', () => {
  it('shows once it is older than the clinic allows', () => {
    expect(showsFrom([baseline({ setOn: set })])).toEqual([addDays(set, 43)]);
  });

  it('shows after two weeks of mornings where usual pain was only told', () => {
    expect(showsFrom([baseline({ setOn: set, provisional: true })])).toEqual([addDays(set, 15)]);
  });

  it('is as old as the one a clinician set, though it followed better mornings since', () => {
    const followed = baseline({ setOn: addDays(set, 20), tightenedFrom: set });
    expect(showsFrom([baseline({ setOn: set }), followed])).toEqual([addDays(set, 43)]);
  });

  it('is the newest one of its joint', () => {
    expect(showsFrom([baseline({ setOn: set }), baseline({ setOn: addDays(set, 9) })])).toEqual([
      addDays(set, 52),
    ]);
  });
});
