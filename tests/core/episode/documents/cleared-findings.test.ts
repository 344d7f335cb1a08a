/** Who cleared a finding and when, told only as long as the clearance reaches it. */
import { describe, expect, it } from 'vitest';
import { clearedFindings } from '#core/episode/documents/cleared-findings.ts';
import { screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import type { Clearance, Screening } from '#core/screening/screening.ts';

const screening = (yes: string, details: readonly string[] = []): Screening => ({
  version: 1,
  sheetVersion: screeningSheetVersion,
  day: '2026-02-23',
  answers: screeningItems.map(({ id }) =>
    id === yes ? { item: id, answer: 'yes' as const, details } : { item: id, answer: 'no' as const },
  ),
});

const cancer = screening('cancer');
const clearance = (over: Partial<Clearance> = {}): Clearance => ({
  method: 'occlusion',
  limb: 'leg',
  side: 'left',
  findings: ['cancer'],
  reason: 'Oncologist agrees.',
  by: 'Nuala Derravane',
  day: '2026-03-02',
  ...over,
});

const found = (clearances: readonly Clearance[], of: Screening = cancer) => {
  const outcomes = methodOutcomes({
    screening: of,
    measurements: [],
    clearances,
    today: '2026-04-20',
    ageYears: 50,
    settings: {},
  });
  return clearedFindings(outcomes, clearances, of);
};

describe('cleared findings', () => {
  it('name the limb, the finding without its clearance, who, when and why', () => {
    expect(found([clearance()])).toEqual([
      {
        method: 'occlusion',
        limbs: [{ limb: 'leg', side: 'left' }],
        finding: expect.objectContaining({ code: 'cancer', from: 'cancer' }),
        reason: 'Oncologist agrees.',
        by: 'Nuala Derravane',
        on: '2026-03-02',
      },
    ]);
    expect(found([clearance()])[0]?.finding.text).not.toContain('Cleared by');
  });

  it('leave out a clearance from before the screening, or of another finding', () => {
    expect(found([clearance({ day: '2026-02-22' })])).toEqual([]);
    expect(found([clearance({ findings: ['kidney'] })])).toEqual([]);
    expect(found([])).toEqual([]);
  });

  it('tell of a joint that was judged as well', () => {
    const hot: Screening = {
      ...cancer,
      answers: [{ item: 'hot-joint', answer: 'yes', joints: ['left-knee'] }],
    };
    const findings = ['hot-joint-left-knee'];
    const [one] = clearedFindings([], [clearance({ method: 'low-load', findings })], hot);
    expect(one).toMatchObject({ method: 'low-load', limbs: [], by: 'Nuala Derravane' });
    expect(clearedFindings([], [clearance({ findings, day: '2026-02-22' })], hot)).toEqual([]);
  });
});
