import { describe, expect, it } from 'vitest';
import { changesFromInForce, shareOfWeek } from '#core/prescribing/changes-from-in-force.ts';
import type { Dose, OcclusionDose } from '#core/prescribing/dose.ts';
import type { LowLoadRequest } from '#core/prescribing/dose-request.ts';
import { type PrescriptionRequest, proposePrescription } from '#core/prescribing/propose.ts';
import { requestOfDose } from '#core/prescribing/request-of-dose.ts';
import { chinDraw, context } from './known-patient.ts';

const proposed = (request: PrescriptionRequest): Dose => {
  const outcome = proposePrescription(context, request);
  if (!outcome.ok) throw new Error(outcome.refused.map(({ reason }) => reason).join(' '));
  return outcome.result.dose;
};

const again = (dose: Dose): Dose =>
  proposed({ method: dose.method, ...requestOfDose(context, dose) } as unknown as PrescriptionRequest);

const knee = { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right' } as const;

const underCuff: OcclusionDose = {
  method: 'occlusion',
  exerciseId: 'knee-extension-seated',
  side: 'right',
  limb: 'leg',
  sets: 4,
  scheme: [30, 15, 15, 15],
  restSeconds: 30,
  secondsPerRepetition: 4,
  sessionsPerWeek: 2,
  loadKg: 2,
  oneRepMaxKg: null,
  inflation: 'continuous',
  capSeconds: 600,
  supervised: true,
  pulseShown: true,
  cuff: {
    kind: 'pneumatic',
    widthCm: 11,
    position: 'seated',
    pressureMmhg: 108,
    percentOfLimbOcclusionPressure: 60,
    limbOcclusionPressureMmhg: 180,
    measuredOn: '2026-03-02',
  },
};

describe('the request read from a dose', () => {
  it.each<[string, LowLoadRequest]>([
    ['from a test', knee],
    ['from a load typed', { ...knee, loadKg: 3, sets: 2, repetitionsLow: 12, reserve: 3 }],
    [
      'from a maximum given, where nothing was tested',
      { ...knee, side: 'left', knownOneRepMaxKg: 9, restSeconds: 60 },
    ],
  ])('proposes the same low-load dose again: %s', (_, request) => {
    const dose = proposed(request);
    expect(again(dose)).toEqual(dose);
  });

  it('proposes the same variation again', () => {
    const dose = proposed({
      method: 'variation',
      exerciseId: 'chin-draw',
      side: 'both',
      sets: 2,
      reserve: 3,
    });
    expect(again(dose)).toEqual(dose);
  });

  it('carries every figure of work with a cuff, and where it is done', () => {
    expect(requestOfDose(context, underCuff)).toEqual({
      exerciseId: 'knee-extension-seated',
      side: 'right',
      limb: 'leg',
      schemeId: 'thirty-then-fifteens',
      loadKg: 2,
      cuffKind: 'pneumatic',
      cuffWidthCm: 11,
      position: 'seated',
      percent: 60,
      supervised: true,
      pulseShown: true,
      restSeconds: 30,
      secondsPerRepetition: 4,
      sessionsPerWeek: 2,
    });
  });

  it('asks the scheme anew where the dose follows none of the list', () => {
    expect(requestOfDose(context, { ...underCuff, scheme: [20, 15, 15, 15] })).not.toHaveProperty('schemeId');
  });
});

const textsFrom = (from: Dose, to: Dose) => changesFromInForce(from, to).map(({ text }) => text);

describe('what changes from the dose in force', () => {
  it('says that nothing does', () => {
    expect(textsFrom(chinDraw, { ...chinDraw })).toEqual(['The same dose again.']);
  });

  it.each<[string, Partial<typeof chinDraw>, string]>([
    ['sets', { sets: 3 }, 'Sets: 2 → 3.'],
    ['repetitions', { repetitions: { low: 10, high: 10 } }, 'Repetitions: 8–12 → 10.'],
    ['an added load', { addedKg: 1 }, 'Load: 0 kg → 1 kg (size of the step not known).'],
    ['reserve', { reserve: 3 }, 'Left in reserve: 2 → 3.'],
    ['rest', { restSeconds: 90 }, 'Rest: 60 s → 90 s.'],
    ['the time of a repetition', { secondsPerRepetition: 6 }, 'One repetition: 4 s → 6 s, which asks more.'],
    ['sessions', { sessionsPerWeek: 2 }, 'Sessions a week: 3 → 2.'],
    ['the side', { side: 'left' }, 'Side: both → left.'],
  ])('says each difference, and nothing else: %s', (_, change, sentence) => {
    expect(textsFrom(chinDraw, { ...chinDraw, ...change })).toEqual([sentence]);
  });

  it.each<[string, Partial<OcclusionDose>, RegExp]>([
    [
      'pressure',
      { cuff: { ...underCuff.cuff, pressureMmhg: 90 } as OcclusionDose['cuff'] },
      /108 mmHg.*→ 90 mmHg/,
    ],
    ['at home', { supervised: false }, /Where: with a clinician present → at home/],
    ['the time restricted', { capSeconds: 480 }, /Longest time under restriction: 10 min → 8 min/],
    ['the cuff in the rests', { inflation: 'intermittent' }, /continuous → intermittent/],
  ])('says what changes of the cuff: %s', (_, change, sentence) => {
    const changes = textsFrom(underCuff, { ...underCuff, ...change });
    expect(changes).toHaveLength(1);
    expect(changes[0]).toMatch(sentence);
  });
});

const asksMoreOf = (from: Dose, to: Dose) =>
  changesFromInForce(from, to)
    .filter(({ asksMore }) => asksMore)
    .map(({ text }) => text);

describe('what asks more beside repetitions, sets and load', () => {
  it.each<[string, Partial<typeof chinDraw>, Partial<typeof chinDraw>]>([
    ['fewer in reserve', { reserve: 1 }, { reserve: 3 }],
    ['a shorter rest', { restSeconds: 59 }, { restSeconds: 61 }],
    ['a slower repetition', { secondsPerRepetition: 5 }, { secondsPerRepetition: 3 }],
    ['more sessions a week', { sessionsPerWeek: 4 }, { sessionsPerWeek: 2 }],
  ])('is named, and the other way round is not: %s', (_, more, less) => {
    expect(asksMoreOf(chinDraw, { ...chinDraw, ...more })).toHaveLength(1);
    expect(asksMoreOf(chinDraw, { ...chinDraw, ...less })).toEqual([]);
    expect(asksMoreOf(chinDraw, { ...chinDraw })).toEqual([]);
  });

  const cuff = underCuff.cuff as Extract<OcclusionDose['cuff'], { kind: 'pneumatic' }>;
  const wrap = { kind: 'elastic-wrap', tightness: 5 } as const;
  it.each<[string, Partial<OcclusionDose>, Partial<OcclusionDose>]>([
    ['more pressure', {}, { cuff: { ...cuff, pressureMmhg: cuff.pressureMmhg + 1 } }],
    ['another width, of which nobody knows', {}, { cuff: { ...cuff, widthCm: cuff.widthCm + 1 } }],
    ['a wrap in place of a cuff', {}, { cuff: wrap }],
    ['a tighter wrap', { cuff: wrap }, { cuff: { ...wrap, tightness: 6 } }],
    ['the cuff left on in the rests', { inflation: 'intermittent' }, { inflation: 'continuous' }],
    ['longer under restriction', { capSeconds: 480 }, { capSeconds: 540 }],
    ['nobody present', { supervised: true }, { supervised: false }],
  ])('is named of the cuff: %s', (_, before, after) => {
    const [from, to] = [
      { ...underCuff, ...before },
      { ...underCuff, ...after },
    ];
    expect(asksMoreOf(from, to)).toHaveLength(1);
    expect(asksMoreOf(from, { ...from })).toEqual([]);
  });

  it('says of two cuffs that cannot be compared that the other may ask more, and not that it does', () => {
    const wider = { ...underCuff, cuff: { ...cuff, widthCm: cuff.widthCm + 1 } };
    expect(asksMoreOf(underCuff, wider)).toEqual([expect.stringMatching(/, which may ask more\.$/)]);
    const tighter = { ...underCuff, cuff: { ...cuff, pressureMmhg: cuff.pressureMmhg + 1 } };
    expect(asksMoreOf(underCuff, tighter)).toEqual([expect.stringMatching(/, which asks more\.$/)]);
  });

  it('does not name less pressure, or a looser wrap', () => {
    const less = { ...cuff, pressureMmhg: cuff.pressureMmhg - 1 };
    expect(asksMoreOf(underCuff, { ...underCuff, cuff: less })).toEqual([]);
    const [tight, loose] = [
      { ...underCuff, cuff: wrap },
      { ...underCuff, cuff: { ...wrap, tightness: 4 } },
    ];
    expect(asksMoreOf(tight, loose)).toEqual([]);
  });

  it('counts a week by its sessions: 3 instead of 2 of the same is half as much again', () => {
    const twice = { ...chinDraw, sessionsPerWeek: 2 };
    expect(shareOfWeek({ ...twice, sessionsPerWeek: 3 }, twice)).toBe(1.5);
    expect(shareOfWeek(twice, twice)).toBe(1);
  });
});
