/**
 * Heart events, clots by their time, aneurysm, stroke, metal, muscles and two medicines: what each leaves
 * of each method, typed by hand with where it comes from beside it. Marks: "memory" from memory, "choice"
 * a choice of this project; all to be confirmed by a licensed clinician.
 */
import { describe, expect, it } from 'vitest';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { codesOf, outcomeOf, screeningWith } from './answers.ts';

const left = (answer: ScreeningItemAnswer, limb: 'arm' | 'leg' = 'leg', side: 'left' | 'right' = 'left') => {
  const screening = screeningWith([answer]);
  return (['variation', 'low-load', 'occlusion'] as const).map(
    (method) => outcomeOf(method, limb, side, { screening }).eligibility,
  );
};
const yes = (item: string, ...details: readonly string[]): ScreeningItemAnswer => ({
  item,
  answer: 'yes',
  ...(details.length > 0 ? { details } : {}),
});
const clearedBy = (answer: ScreeningItemAnswer, method: 'variation' | 'low-load' | 'occlusion') =>
  outcomeOf(method, 'leg', 'left', { screening: screeningWith([answer]) }).reasons.map(
    (reason) => reason.clearedBy,
  );

const wait = 'closed-until-cleared';
const careful = 'open-with-precautions';
const none = 'closed';
const contraindicated = [wait, wait, wait];

describe('a heart event', () => {
  it.each([
    // Infarct within three weeks: Australian cardiac-rehabilitation page. Stent and bypass alike: choice.
    ['within three weeks', ['heart-attack', 'within-three-weeks', 'cleared-since']],
    // Unstable angina: Heart Fail Rev 2023;28:1285 and doi 10.2147/IBPC.S449086, both absolute.
    ['unstable angina', ['unstable-angina', 'cleared-since']],
    // Nobody said that a physician allowed exercise: choice.
    ['not cleared since', ['heart-attack']],
    ['stent, not cleared since', ['stent-or-bypass']],
    ['stable angina, not cleared since', ['stable-angina']],
  ])('%s contraindicates all loading until a physician clears it', (_title, details) => {
    const answer = yes('heart-event', ...details);
    expect(left(answer)).toEqual(contraindicated);
    for (const method of ['variation', 'low-load', 'occlusion'] as const)
      expect(clearedBy(answer, method)).toContain('physician');
  });

  it('that is stable and cleared waits as a heart condition does: by the same people for each method', () => {
    for (const kind of ['heart-attack', 'stable-angina', 'stent-or-bypass']) {
      const answer = yes('heart-event', kind, 'cleared-since');
      expect(left(answer)).toEqual(contraindicated);
      for (const method of ['variation', 'low-load', 'occlusion'] as const) {
        expect(clearedBy(answer, method)).toEqual(
          clearedBy(yes('heart-condition', 'stable-heart-failure'), method),
        );
      }
    }
  });

  // 20, 21 and 22 days before the screening of 2 March 2026 (within three weeks).
  it.each([
    ['2026-02-10', true],
    ['2026-02-09', true],
    ['2026-02-08', false],
  ])('on %s counts as within three weeks: %s', (day, isRecent) => {
    const screening = screeningWith([{ ...yes('heart-event', 'heart-attack', 'cleared-since'), day }]);
    const codes = codesOf(outcomeOf('low-load', 'leg', 'left', { screening }));
    expect(codes.includes('recent-heart-event')).toBe(isRecent);
  });
});

describe('an aneurysm, dissection or Marfan syndrome', () => {
  it('contraindicates all loading on every limb until a physician clears it', () => {
    // Dissection and Marfan: doi 10.2147/IBPC.S449086. Aneurysms: Diabetes Care table 4.
    const answer = yes('aneurysm-dissection-or-marfan');
    for (const limb of ['arm', 'leg'] as const)
      for (const side of ['left', 'right'] as const)
        expect(left(answer, limb, side)).toEqual(contraindicated);
    expect(clearedBy(answer, 'low-load')).toEqual(['physician']);
  });
});

describe('a stroke or TIA (memory)', () => {
  it('contraindicates all loading while nobody said that a physician has allowed exercise', () => {
    expect(left(yes('stroke-or-tia', 'stroke'))).toEqual(contraindicated);
    expect(left(yes('stroke-or-tia', 'tia'))).toEqual(contraindicated);
  });

  it('cleared since, loads with precautions while occlusion waits for a physician', () => {
    expect(left(yes('stroke-or-tia', 'tia', 'cleared-since'))).toEqual([careful, careful, wait]);
    expect(clearedBy(yes('stroke-or-tia', 'tia', 'cleared-since'), 'occlusion')).toEqual(['physician']);
  });
});

describe('a clot', () => {
  const codes = (...details: readonly string[]) =>
    codesOf(
      outcomeOf('low-load', 'leg', 'left', { screening: screeningWith([yes('past-clot', ...details)]) }),
    );

  it.each([
    // Embolism under four weeks: cardiac-rehabilitation page.
    ['within-four-weeks', 'clot-within-four-weeks', wait],
    // Past four weeks, still treated: choice.
    ['being-treated', 'clot-being-treated', wait],
    // Earlier, not treated now: on no list of stops for loading; choice.
    ['earlier-not-treated', 'clot-earlier', careful],
    // Not known when: choice.
    ['when-not-known', 'clot-when-not-known', wait],
  ])('%s has an effect of its own on loading, and stops occlusion', (detail, code, loading) => {
    expect(codes(detail)).toEqual([code]);
    // Past or present clot: Front Physiol 2022;13:808622, tables 1 and 5.
    expect(left(yes('past-clot', detail))).toEqual([loading, loading, none]);
  });

  // 27, 28 and 29 days before the screening of 2 March 2026 (within four weeks).
  it.each([
    ['2026-02-03', true],
    ['2026-02-02', true],
    ['2026-02-01', false],
  ])('on %s counts as within four weeks: %s, whatever else was ticked', (day, isRecent) => {
    const screening = screeningWith([{ ...yes('past-clot', 'earlier-not-treated'), day }]);
    const found = codesOf(outcomeOf('low-load', 'leg', 'left', { screening }));
    expect(found.includes('clot-within-four-weeks')).toBe(isRecent);
    expect(found).toContain('clot-earlier');
  });

  it('cleared as one being treated stays closed as one within four weeks', () => {
    const clearances = [
      {
        method: 'low-load' as const,
        limb: null,
        side: null,
        findings: ['clot-being-treated'],
        reason: 'Letter',
        by: 'Dr A',
        day: '2026-03-02',
      },
    ];
    const eligibility = (...details: readonly string[]) =>
      outcomeOf('low-load', 'leg', 'left', {
        screening: screeningWith([yes('past-clot', ...details)]),
        clearances,
      }).eligibility;
    expect(eligibility('being-treated')).toBe(careful);
    expect(eligibility('being-treated', 'within-four-weeks')).toBe(wait);
  });
});

describe('metal, muscles and two medicines', () => {
  it('an artificial joint or metalwork (memory) asks a clinician about a cuff there, and loads with care there', () => {
    const answer: ScreeningItemAnswer = {
      ...yes('artificial-joint-or-metalwork'),
      limbs: [{ limb: 'leg', side: 'left' }],
    };
    expect(left(answer)).toEqual([careful, careful, wait]);
    expect(left(answer, 'leg', 'right')).toEqual(['open', 'open', 'open']);
    expect(clearedBy(answer, 'occlusion')).toEqual(['clinician']);
  });

  it.each(['rhabdomyolysis', 'muscle-disease'])(
    '%s (memory) waits for a physician in every method',
    (detail) => {
      const answer = yes('rhabdomyolysis-or-muscle-disease', detail);
      expect(left(answer)).toEqual(contraindicated);
      expect(clearedBy(answer, 'low-load')).toEqual(['physician']);
    },
  );

  // Higher alert for muscle breakdown on a statin: memory. Colchicine: memory.
  it.each(['statin', 'colchicine'])('%s is a precaution in every method and stops none', (detail) => {
    expect(left(yes('medicines', detail))).toEqual([careful, careful, careful]);
  });
});
