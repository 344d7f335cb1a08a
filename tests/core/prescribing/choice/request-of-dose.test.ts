import { describe, expect, it } from 'vitest';
import { changesFromInForce } from '#core/prescribing/changes-in-words.ts';
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

describe('what changes from the dose in force', () => {
  it('says that nothing does', () => {
    expect(changesFromInForce(chinDraw, { ...chinDraw })).toEqual(['The same dose again.']);
  });

  it.each<[string, Partial<typeof chinDraw>, string]>([
    ['sets', { sets: 3 }, 'Sets: 2 → 3.'],
    ['repetitions', { repetitions: { low: 10, high: 10 } }, 'Repetitions: 8–12 → 10.'],
    ['an added load', { addedKg: 1 }, 'Load: 0 kg → 1 kg (size of the step not known).'],
    ['reserve', { reserve: 3 }, 'Left in reserve: 2 → 3.'],
    ['rest', { restSeconds: 90 }, 'Rest: 60 s → 90 s.'],
    ['the time of a repetition', { secondsPerRepetition: 6 }, 'One repetition: 4 s → 6 s.'],
    ['sessions', { sessionsPerWeek: 2 }, 'Sessions a week: 3 → 2.'],
    ['the side', { side: 'left' }, 'Side: both → left.'],
  ])('says each difference, and nothing else: %s', (_, change, sentence) => {
    expect(changesFromInForce(chinDraw, { ...chinDraw, ...change })).toEqual([sentence]);
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
    const changes = changesFromInForce(underCuff, { ...underCuff, ...change });
    expect(changes).toHaveLength(1);
    expect(changes[0]).toMatch(sentence);
  });
});
