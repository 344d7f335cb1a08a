/** What is left of each method: never screened, too young, too old an answer, blood pressure, arteries, clearances. */
import { describe, expect, it } from 'vitest';
import type { Measurement } from '#core/model/measurement.ts';
import type { Clearance } from '#core/model/screening.ts';
import { screeningItems } from '#core/screening/items.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import { bloodPressure, codesOf, outcomeOf, outcomesInput, screeningWith, today } from './answers.ts';

const openingsOf = (changed: Parameters<typeof outcomesInput>[0]) =>
  new Set(methodOutcomes(outcomesInput(changed)).map(({ opening }) => opening));

describe('who may start at all', () => {
  it('a screened adult with nothing found has every method open on every limb', () => {
    expect(methodOutcomes(outcomesInput())).toHaveLength(12);
    expect(openingsOf({})).toEqual(new Set(['open']));
  });

  it('nobody who was never screened', () => {
    expect(openingsOf({ screening: null })).toEqual(new Set(['closed']));
    expect(codesOf(outcomeOf('low-load', 'arm', 'left', { screening: null }))).toContain('never-screened');
  });

  it('nobody under 18, and nobody whose age is not known', () => {
    expect(openingsOf({ ageYears: 17 })).toEqual(new Set(['closed']));
    expect(openingsOf({ ageYears: 18 })).toEqual(new Set(['open']));
    expect(openingsOf({ ageYears: Number.NaN })).toEqual(new Set(['closed']));
  });

  it('nobody whose screening is past its age: 83, 84 and 85 days (clinic choice)', () => {
    const from = (day: string) => openingsOf({ screening: screeningWith([], day) });
    expect(from('2025-12-09')).toEqual(new Set(['open']));
    expect(from('2025-12-08')).toEqual(new Set(['open']));
    expect(from('2025-12-07')).toEqual(new Set(['closed']));
  });

  it('nobody whose screening is dated tomorrow', () => {
    expect(openingsOf({ screening: screeningWith([], '2026-03-03') })).toEqual(new Set(['closed']));
  });
});

describe('questions left open', () => {
  const without = (ids: readonly string[]) => ({
    ...screeningWith(),
    answers: screeningWith().answers.filter(({ item }) => !ids.includes(item)),
  });

  it('low load opens on its minimum set while occlusion stays closed', () => {
    const occlusionOnly = screeningItems
      .filter(({ minimumFor }) => !minimumFor.includes('low-load'))
      .map(({ id }) => id);
    const screening = without(occlusionOnly);
    expect(outcomeOf('low-load', 'leg', 'left', { screening }).opening).toBe('open-with-precautions');
    expect(outcomeOf('occlusion', 'leg', 'left', { screening }).opening).toBe('closed');
  });

  it('a question of the minimum set that nobody asked closes the method', () => {
    for (const item of screeningItems) {
      for (const method of item.minimumFor) {
        const outcome = outcomeOf(method, 'arm', 'right', { screening: without([item.id]) });
        expect([item.id, outcome.opening]).toEqual([item.id, 'closed']);
      }
    }
  });

  it('an item that this sheet does not know closes everything', () => {
    const screening = {
      ...screeningWith(),
      answers: [...screeningWith().answers, { item: 'from-elsewhere', answer: 'no' as const }],
    };
    expect(openingsOf({ screening })).toEqual(new Set(['closed']));
  });
});

describe('blood pressure', () => {
  const at = (method: 'low-load' | 'occlusion', measurements: readonly Measurement[], changed = {}) =>
    outcomeOf(method, 'leg', 'left', { measurements, ...changed }).opening;

  it('from 180 or 110 holds everything; from 160 or 100 holds occlusion and asks a clinician about the rest', () => {
    const pair = (systolic: number, diastolic: number) => [
      at('low-load', [bloodPressure(systolic, diastolic)]),
      at('occlusion', [bloodPressure(systolic, diastolic)]),
    ];
    expect(pair(159, 99)).toEqual(['open', 'open']);
    expect(pair(160, 80)).toEqual(['closed-until-cleared', 'closed']);
    expect(pair(140, 100)).toEqual(['closed-until-cleared', 'closed']);
    expect(pair(179, 109)).toEqual(['closed-until-cleared', 'closed']);
    expect(pair(180, 80)).toEqual(['closed', 'closed']);
    expect(pair(150, 110)).toEqual(['closed', 'closed']);
  });

  it('not measured keeps occlusion closed and is said for low load', () => {
    expect(at('occlusion', [])).toBe('closed');
    expect(at('low-load', [])).toBe('open-with-precautions');
  });

  it('not measured closes low load too, once high blood pressure was named or is not known', () => {
    for (const answer of ['yes', 'not-known'] as const) {
      const screening = screeningWith([{ item: 'high-blood-pressure', answer }]);
      expect(at('low-load', [], { screening })).toBe('closed');
    }
  });

  it('counts for 28 days and not for 29 (clinic choice), and never from the future', () => {
    expect(at('occlusion', [bloodPressure(124, 76, '2026-02-03')])).toBe('open'); // 27
    expect(at('occlusion', [bloodPressure(124, 76, '2026-02-02')])).toBe('open'); // 28
    expect(at('occlusion', [bloodPressure(124, 76, '2026-02-01')])).toBe('closed'); // 29
    expect(at('occlusion', [bloodPressure(124, 76, '2026-03-03')])).toBe('closed');
  });

  it('is the newest day, and the highest of that day, whatever the order of entry', () => {
    const old = bloodPressure(190, 100, '2026-02-20');
    const now = bloodPressure(124, 76);
    expect([at('occlusion', [old, now]), at('occlusion', [now, old])]).toEqual(['open', 'open']);
    const again = bloodPressure(170, 80);
    expect([at('occlusion', [again, now]), at('occlusion', [now, again])]).toEqual(['closed', 'closed']);
  });

  it('that cannot be read is not a normal one', () => {
    expect(at('occlusion', [bloodPressure(Number.NaN, 70)])).toBe('closed');
    expect(at('occlusion', [bloodPressure(70, 120)])).toBe('closed');
  });

  it('diagnosed keeps occlusion closed even when treated and in range, until a clinician clears it', () => {
    const screening = screeningWith([{ item: 'high-blood-pressure', answer: 'yes' }]);
    const outcome = outcomeOf('occlusion', 'arm', 'left', { screening });
    expect(outcome.opening).toBe('closed-until-cleared');
    expect(outcome.reasons).toMatchObject([
      { code: 'diagnosed-high-blood-pressure', clearedBy: 'clinician' },
    ]);
    expect(outcomeOf('low-load', 'arm', 'left', { screening }).opening).toBe('open-with-precautions');
  });

  it('a clinic may tighten its gate', () => {
    const changed = { measurements: [bloodPressure(150, 80)], choices: { 'hold-occlusion-systolic': 150 } };
    expect(outcomeOf('occlusion', 'leg', 'left', changed).opening).toBe('closed');
  });
});

describe('ankle-brachial index', () => {
  const reading = (ankle: number, day = today, side: 'left' | 'right' = 'left'): Measurement => ({
    kind: 'ankle-brachial-index',
    day,
    side,
    dorsalisPedisMmhg: ankle,
    posteriorTibialMmhg: 0,
    brachialMmhg: [100, 98],
  });
  const leg = (...readings: Measurement[]) =>
    outcomeOf('occlusion', 'leg', 'left', { measurements: [bloodPressure(124, 76), ...readings] }).opening;

  it('up to 0.90 and over 1.40 closes that leg, 0.91 to 0.99 waits for a clinician', () => {
    expect([90, 91, 99, 100, 140, 141].map((ankle) => leg(reading(ankle)))).toEqual([
      'closed',
      'closed-until-cleared',
      'closed-until-cleared',
      'open',
      'open',
      'closed',
    ]);
  });

  it('speaks of its own leg only, and of no other method', () => {
    const measurements = [bloodPressure(124, 76), reading(80)];
    expect(outcomeOf('occlusion', 'leg', 'right', { measurements }).opening).toBe('open');
    expect(outcomeOf('occlusion', 'arm', 'left', { measurements }).opening).toBe('open');
    expect(outcomeOf('low-load', 'leg', 'left', { measurements }).opening).toBe('open');
  });

  it('dated tomorrow does not count yet', () => {
    expect(leg(reading(110), reading(80, '2026-03-03'))).toBe('open');
    expect(leg(reading(80), reading(110, '2026-03-03'))).toBe('closed');
  });

  it('does not age into being normal, and yields to a newer one', () => {
    expect(leg(reading(80, '2020-01-01'))).toBe('closed');
    expect(leg(reading(80, '2025-01-01'), reading(110, '2026-02-01'))).toBe('open');
  });
});

describe('clearances', () => {
  const screening = screeningWith([{ item: 'high-blood-pressure', answer: 'yes' }]);
  const clearance: Clearance = {
    method: 'occlusion',
    limb: 'leg',
    side: 'left',
    closings: ['diagnosed-high-blood-pressure'],
    reason: 'Three readings under 130/80 this month.',
    by: 'Dr Example',
    day: today,
  };
  const cleared = (changed: Partial<Clearance> = {}, target: 'left' | 'right' = 'left') =>
    outcomeOf('occlusion', 'leg', target, { screening, clearances: [{ ...clearance, ...changed }] });

  it('open a clearable closing with precautions, and the reason stays with name, day and ground', () => {
    const outcome = cleared();
    expect(outcome.opening).toBe('open-with-precautions');
    expect(outcome.reasons[0]?.text).toContain(
      'Cleared by Dr Example on 2026-03-02: Three readings under 130/80 this month.',
    );
  });

  it('reach the limb and side they name; without one they reach all', () => {
    expect(cleared({}, 'right').opening).toBe('closed-until-cleared');
    expect(cleared({ side: null }, 'right').opening).toBe('open-with-precautions');
    expect(cleared({ limb: 'arm' }).opening).toBe('closed-until-cleared');
    expect(cleared({ limb: null, side: null }, 'right').opening).toBe('open-with-precautions');
  });

  it('without a name or a reason clear nothing', () => {
    expect(cleared({ by: ' ' }).opening).toBe('closed-until-cleared');
    expect(cleared({ reason: '' }).opening).toBe('closed-until-cleared');
  });

  it('given before the screening, or dated tomorrow, clear nothing', () => {
    expect(cleared({ day: '2026-03-01' }).opening).toBe('closed-until-cleared');
    expect(cleared({ day: '2026-03-03' }).opening).toBe('closed-until-cleared');
  });

  it('never open what nobody may clear', () => {
    const clot = screeningWith([{ item: 'past-clot', answer: 'yes', details: [] }]);
    const outcome = outcomeOf('occlusion', 'leg', 'left', {
      screening: clot,
      clearances: [{ ...clearance, closings: ['past-clot'] }],
    });
    expect(outcome.opening).toBe('closed');
  });

  it('of one closing leave another standing', () => {
    const two = screeningWith([
      { item: 'high-blood-pressure', answer: 'yes' },
      { item: 'kidney-disease', answer: 'yes' },
    ]);
    const outcome = outcomeOf('occlusion', 'leg', 'left', { screening: two, clearances: [clearance] });
    expect(outcome.opening).toBe('closed-until-cleared');
    expect(codesOf(outcome)).toEqual(['diagnosed-high-blood-pressure', 'kidney-disease']);
  });
});

describe('answers about one limb', () => {
  it('close that limb and leave the others', () => {
    const screening = screeningWith([
      { item: 'lymph', answer: 'yes', limbs: [{ limb: 'arm', side: 'right' }] },
    ]);
    expect(outcomeOf('occlusion', 'arm', 'right', { screening }).opening).toBe('closed');
    expect(outcomeOf('occlusion', 'arm', 'left', { screening }).opening).toBe('open');
    expect(outcomeOf('low-load', 'arm', 'right', { screening }).opening).toBe('open');
  });

  it('that name no limb close every limb', () => {
    for (const limbs of [undefined, []]) {
      const screening = screeningWith([{ item: 'dialysis-access', answer: 'yes', limbs }]);
      expect(outcomeOf('occlusion', 'arm', 'left', { screening }).opening).toBe('closed');
      expect(outcomeOf('occlusion', 'leg', 'right', { screening }).opening).toBe('closed');
    }
  });

  it('walking pain asks about legs only', () => {
    const screening = screeningWith([{ item: 'arterial-disease', answer: 'yes', details: ['walking-pain'] }]);
    expect(outcomeOf('occlusion', 'leg', 'left', { screening }).opening).toBe('closed-until-cleared');
    expect(outcomeOf('occlusion', 'arm', 'left', { screening }).opening).toBe('open');
  });
});
