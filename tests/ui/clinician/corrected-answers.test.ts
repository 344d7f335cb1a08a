/** A session that a patient put right: the day of the review says what stood before, beside what stands now. */
import { describe, expect, it } from 'vitest';
import type { AnswerChange } from '#core/record/answer-changes.ts';
import { reviewChartOf } from '#core/review/review-chart.ts';
import { answeredSessions, series } from '#tests/core/review/builders.ts';
import { weightDose } from '#tests/ui/patient/views.ts';
import { chartNames } from '#ui/clinician/review/chart-names.ts';
import type { ReviewProps } from '#ui/clinician/review/review-props.ts';

const change = (more: Partial<AnswerChange> & Pick<AnswerChange, 'what' | 'from' | 'to'>): AnswerChange => ({
  itemId: null,
  set: null,
  joint: null,
  ...more,
});

const linesOn = (day: string, changes: readonly AnswerChange[], correctedBy: readonly string[] = []) => {
  const props = {
    review: {
      prescriptions: [{ itemId: 'i', version: 1, dose: weightDose, signedName: null }],
      responses: [],
      corrected: [{ day: '2026-03-10', changes }],
      supervised: [
        { day: '2026-03-04', name: 'Ada Verrin', did: 'supervised' },
        ...correctedBy.map((name) => ({ day: '2026-03-04', name, did: 'corrected' })),
      ],
    },
    choice: { version: null },
    clock: {},
  } as unknown as ReviewProps;
  const chart = reviewChartOf(series(answeredSessions(['2026-03-04', '2026-03-10'], 2)), chartNames(props));
  return chart.days.find((one) => one.day === day)?.lines ?? [];
};

it('the day of a session in a group hour says who supervised it, and no other day does', () => {
  expect(linesOn('2026-03-04', [])).toContain('Entered by Ada Verrin, who supervised the session.');
  expect(linesOn('2026-03-10', []).join(' ')).not.toContain('supervised');
  const lines = linesOn('2026-03-04', [], ['Bo Halse']);
  expect(lines).toContain('Corrected by Bo Halse.');
  expect(lines.join(' ')).not.toContain('Entered by Bo Halse');
});

describe('the day of a corrected session', () => {
  it('says each answer before and after, with its exercise, set or joint', () => {
    const lines = linesOn('2026-03-10', [
      change({ what: 'repetitions', itemId: 'i', set: 2, from: 20, to: 12 }),
      change({ what: 'pain-during', joint: 'right-knee', from: 3, to: 7 }),
      change({ what: 'extra', from: false, to: null }),
    ]);
    expect(lines.join('\n')).toMatch(
      /Corrected by the patient on the same day: .*, set 2, repetitions 12, before 20; right knee, highest pain 7, before 3; more done than planned not answered, before no\./,
    );
  });

  it('alone says so, and not where nothing changed', () => {
    const pain = [change({ what: 'pain-after', joint: 'right-knee', from: 1, to: 2 })];
    expect(linesOn('2026-03-04', pain).join(' ')).not.toContain('Corrected');
    expect(linesOn('2026-03-10', []).join(' ')).not.toContain('Corrected');
  });
});
