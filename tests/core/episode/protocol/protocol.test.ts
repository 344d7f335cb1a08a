/** Phases after surgery: a day that comes opens nothing, and each phase binds as limits do. */
import { describe, expect, it } from 'vitest';
import { limitRefusals, limitsFor } from '#core/episode/limit-bounds.ts';
import { cautionsOn } from '#core/episode/limit-cautions.ts';
import {
  limitsOfProtocol,
  nextPhase,
  type Phase,
  type PhaseStep,
  type Protocol,
  phaseDue,
  phaseInForce,
  phasesOf,
  stepRefusals,
} from '#core/episode/protocol/protocol.ts';
import { type PhaseRow, phaseConsistent } from '#core/episode/protocol/protocol-fields.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { WeightBearing } from '#core/record/limit.ts';
import { addDays, dayNumber } from '#core/time/day.ts';

const operated = '2026-02-02';
const at = (day: string): number => dayNumber(day) * 86_400_000 + 36_000_000;

const row = (over: Partial<PhaseRow> = {}): PhaseRow => ({
  place: 1,
  name: 'Protected',
  from: operated,
  weightBearing: 'touch',
  bearKg: null,
  movement: null,
  fromDegrees: null,
  toDegrees: null,
  limitKg: null,
  lowLoad: true,
  variation: true,
  occlusion: true,
  ...over,
});
const phase = (over: Partial<Phase> = {}): Phase => {
  const recordedOn = over.recordedOn ?? operated;
  return { ...row(over), recordedOn, recordedAt: over.recordedAt ?? at(recordedOn) };
};
const step = (place: number, on: string): PhaseStep => ({
  place,
  on,
  at: at(on) + 1,
  by: 'C',
  seen: 'Seen.',
});

const later = phase({ place: 2, name: 'Building', from: '2026-03-16', weightBearing: 'as-tolerated' });
const protocol = (over: Partial<Protocol> = {}): Protocol => ({
  id: 'p',
  joint: 'right-knee',
  procedure: 'Knee replacement',
  on: operated,
  author: 'Dr Surgeon',
  letter: null,
  phases: [phase(), later],
  steps: [step(1, operated)],
  ...over,
});

const stand: Dose = {
  method: 'low-load',
  exerciseId: 'sit-to-stand-chair',
  side: 'both',
} as unknown as Dose;
const extend: Dose = {
  method: 'low-load',
  exerciseId: 'knee-extension-seated',
  side: 'right',
  loadKg: 5,
} as unknown as Dose;
const refusedOn = (day: string, dose: Dose, of = protocol()) =>
  limitRefusals(limitsOfProtocol(of), dose, day).map(({ reason }) => reason);

describe('a phase that is planned', () => {
  it.each([
    ['the day before', '2026-03-15', null],
    ['on its day', '2026-03-16', 2],
    ['the day after', '2026-03-17', 2],
  ])('is due %s: %s', (_, day, due) => {
    expect(phaseDue(protocol(), day)?.place ?? null).toBe(due);
  });

  it('opens nothing by its day: what held before goes on until a clinician confirms it', () => {
    const wait = addDays(later.from, 30);
    expect(phaseInForce(protocol(), wait)?.place).toBe(1);
    expect(refusedOn(wait, stand).join(' ')).toMatch(/Only touch weight-bearing is allowed/);
    const confirmed = protocol({ steps: [step(1, operated), step(2, later.from)] });
    expect(refusedOn(addDays(later.from, -1), stand, confirmed)).toHaveLength(1);
    expect(refusedOn(later.from, stand, confirmed)).toEqual([]);
  });

  it('cannot be confirmed before its day, left out, or confirmed twice; going back is open on every day', () => {
    const three = protocol({ phases: [phase(), later, phase({ place: 3, from: '2026-04-01' })] });
    const said = (place: number, day: string, of = three) => stepRefusals(of, place, day)[0]?.reason;
    expect(said(2, '2026-03-15')).toMatch(/planned from 2026-03-16/);
    expect(said(2, '2026-03-16')).toBeUndefined();
    expect(said(3, '2026-04-02')).toMatch(/Confirm phase 2 first/);
    expect(said(1, '2026-03-16')).toMatch(/in force already/);
    expect(said(4, '2026-04-02')).toMatch(/no such phase/);
    const second = protocol({ steps: [step(1, operated), step(2, later.from)] });
    expect(said(1, '2026-03-17', second)).toBeUndefined();
    const over = protocol({ steps: [step(1, operated), step(0, later.from)] });
    expect(said(2, '2026-03-17', over)).toMatch(/has ended/);
  });

  it('that is the first binds from its day on, confirmed or not, and is asked about until it is', () => {
    const planned = phase({ from: '2026-02-10' });
    const ahead = protocol({ phases: [planned], steps: [] });
    expect(refusedOn('2026-02-09', stand, ahead)).toEqual([]);
    expect(refusedOn('2026-02-10', stand, ahead)).toHaveLength(1);
    expect(refusedOn('2026-02-11', stand, ahead)).toHaveLength(1);
    expect(['2026-02-09', '2026-02-10'].map((day) => phaseInForce(ahead, day)?.place)).toEqual([
      undefined,
      1,
    ]);
    expect([nextPhase(ahead)?.place, phaseDue(ahead, '2026-02-10')?.place]).toEqual([1, 1]);
    const put = phase({ from: '2026-03-01', recordedOn: '2026-02-09' });
    expect(refusedOn('2026-02-20', stand, protocol({ phases: [planned, put], steps: [] }))).toEqual([]);
    // Once it binds, another day written for it opens nothing.
    const late = phase({ from: '2026-03-01', recordedOn: '2026-02-11' });
    expect(refusedOn('2026-02-20', stand, protocol({ phases: [planned, late], steps: [] }))).toHaveLength(1);
    const over = protocol({ phases: [planned], steps: [step(0, '2026-02-05')] });
    expect(refusedOn('2026-02-20', stand, over)).toEqual([]);
  });

  it('binds nothing before one is written and after the end, and is then due no more', () => {
    expect(limitsOfProtocol(protocol({ phases: [], steps: [] }))).toEqual([]);
    const over = protocol({ steps: [step(1, operated), step(0, '2026-02-20')] });
    expect(refusedOn('2026-02-19', stand, over)).toHaveLength(1);
    expect(refusedOn('2026-02-20', stand, over)).toEqual([]);
    expect(phaseDue(over, '2027-01-01')).toBeNull();
  });

  it('written anew while it holds binds by its new words from that day, and by the old ones before', () => {
    const anew = phase({ weightBearing: 'as-tolerated', recordedOn: '2026-02-10' });
    const changed = protocol({ phases: [phase(), later, anew] });
    expect(refusedOn('2026-02-09', stand, changed)).toHaveLength(1);
    expect(refusedOn('2026-02-10', stand, changed)).toEqual([]);
    expect(phasesOf(changed).map(({ place }) => place)).toEqual([1, 2]);
  });
});

describe('what a phase bounds', () => {
  const holding = (over: Partial<PhaseRow>) => protocol({ phases: [phase(over)] });

  it.each<[WeightBearing, boolean]>([
    ['none', true],
    ['touch', true],
    ['partial', true],
    ['as-tolerated', false],
    ['full', false],
  ])('weight-bearing %s closes what puts body weight on the joint: %s', (weightBearing, isClosed) => {
    const of = holding({ weightBearing, bearKg: weightBearing === 'partial' ? 20 : null });
    expect(refusedOn(operated, stand, of).length > 0).toBe(isClosed);
    expect(refusedOn(operated, extend, of)).toEqual([]);
  });

  it('a load over its highest is refused, one at it is not', () => {
    const on = (limitKg: number) => refusedOn(operated, extend, holding({ weightBearing: 'full', limitKg }));
    expect(on(4.9).join(' ')).toMatch(/5 kg is over the limit of 4.9 kg/);
    expect(on(5)).toEqual([]);
    expect(on(5.1)).toEqual([]);
  });

  it('a range closes what goes beyond its degrees', () => {
    const range = { movement: 'flexion', fromDegrees: 0, toDegrees: 60 } as const;
    const limits = limitsOfProtocol(holding({ weightBearing: 'full', ...range }));
    expect(limitsFor(limits, 'knee-extension-seated', 'right', operated).contraindications[0]).toMatch(
      /allows 0° to 60° of flexion/,
    );
  });

  it('a method it does not allow is closed, and no other', () => {
    const of = holding({ weightBearing: 'full', occlusion: false });
    const cuff = { ...extend, method: 'occlusion' } as unknown as Dose;
    expect(refusedOn(operated, cuff, of).join(' ')).toMatch(/does not allow occlusion work/);
    expect(refusedOn(operated, extend, of)).toEqual([]);
  });

  it('is told with the dose as it stands today, not as it stood when the dose was signed', () => {
    const partial = limitsOfProtocol(holding({ weightBearing: 'partial', bearKg: 20 }));
    const signed = cautionsOn([], partial, extend, operated);
    expect(signed.map(({ patient }) => patient)).toEqual([
      { key: 'limit', kind: 'bears-partial', joint: 'right-knee', author: 'Dr Surgeon', kg: 20 },
    ]);
    const free = limitsOfProtocol(holding({ weightBearing: 'full' }));
    expect(cautionsOn(signed, free, extend, operated)).toEqual([]);
  });
});

describe('a phase as it is entered', () => {
  const of = { joint: 'right-knee', on: operated, phases: [row()] } as const;
  const reasons = (over: Partial<PhaseRow>) => phaseConsistent(row(over), of).map(({ reason }) => reason);

  it('is taken as the surgeon wrote it', () => {
    expect(reasons({ place: 2, from: '2026-02-16', weightBearing: 'partial', bearKg: 20 })).toEqual([]);
  });

  it.each<[string, Partial<PhaseRow>, RegExp]>([
    ['partial without kilograms', { weightBearing: 'partial' }, /needs its kilograms/],
    ['kilograms without partial', { bearKg: 20 }, /Only partial/],
    ['a day before the operation', { from: '2026-02-01' }, /day of the operation or later/],
    ['a phase with none before it', { place: 3, from: '2026-03-01' }, /Write phase 2 first/],
    ['half a range', { movement: 'flexion' }, /both angles/],
    ['a movement the joint has not', { movement: 'abduction', fromDegrees: 0, toDegrees: 10 }, /no such/],
    ['a range that ends first', { movement: 'flexion', fromDegrees: 9, toDegrees: 8 }, /before it begins/],
    ['no method at all', { lowLoad: false, variation: false, occlusion: false }, /leaves nothing/],
  ])('is refused with %s, and says what to do', (_, over, said) => {
    expect(reasons(over).join(' ')).toMatch(said);
  });

  it('keeps the order of its days', () => {
    const two = { ...of, phases: [row({ from: '2026-02-10' }), row({ place: 2, from: '2026-03-01' })] };
    const said = (place: number, from: string) => phaseConsistent(row({ place, from }), two).length;
    expect([said(1, '2026-02-28'), said(1, '2026-03-01'), said(1, '2026-03-02')]).toEqual([0, 0, 1]);
    expect([said(2, '2026-02-09'), said(2, '2026-02-10'), said(2, '2026-02-11')]).toEqual([1, 0, 0]);
  });
});
