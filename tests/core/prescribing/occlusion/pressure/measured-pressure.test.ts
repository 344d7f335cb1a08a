/** A measured pressure belongs to a limb, side, cuff width, position and day; anything else asks for a new one. */
import { describe, expect, it } from 'vitest';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measuredPressureFor } from '#core/prescribing/occlusion/pressure/measured-pressure.ts';

type Reading = Extract<Measurement, { kind: 'limb-occlusion-pressure' }>;

const reading = (changed: Partial<Reading> = {}): Reading => ({
  kind: 'limb-occlusion-pressure',
  day: '2026-02-16',
  limb: 'leg',
  side: 'left',
  cuffWidthCm: 18,
  position: 'supine',
  method: 'doppler',
  firstMmhg: 186,
  secondMmhg: 180,
  ...changed,
});
const plan = { limb: 'leg', side: 'left', cuffWidthCm: 18, position: 'supine' } as const;
const find = (measurements: readonly Measurement[], changed = {}, today = '2026-03-02') =>
  measuredPressureFor(measurements, { ...plan, ...changed }, today, {});
const said = (outcome: ReturnType<typeof find>) =>
  outcome.ok
    ? outcome.notes.map(({ code }) => code)
    : outcome.refused.map(({ code, reason }) => `${code}: ${reason}`);

describe('the pressure that may be used', () => {
  it('is the lower of the two readings', () => {
    expect(find([reading()])).toMatchObject({ ok: true, result: { pressureMmhg: 180 } });
    expect(find([reading({ firstMmhg: 170 })])).toMatchObject({ ok: true, result: { pressureMmhg: 170 } });
  });

  it('is the newest one that fits, whatever the order of entry', () => {
    const old = reading({ day: '2026-02-10', firstMmhg: 150, secondMmhg: 150 });
    expect(find([old, reading()])).toMatchObject({ result: { pressureMmhg: 180 } });
    expect(find([reading(), old])).toMatchObject({ result: { pressureMmhg: 180 } });
  });

  it('is not the one measured lying when standing is planned; standing lay 1.291 times as high (Hughes 2018) [occlusion 47]', () => {
    expect(241.5 / 187).toBeCloseTo(1.291, 3);
    expect(said(find([reading()], { position: 'standing' }))).toEqual([
      'inconsistent: Measured supine, planned standing; measure in the planned position.',
    ]);
  });

  it('is not the one of an 18 cm cuff when 11 cm is planned (Wedig 2025, Loenneke 2012) [occlusion 48]', () => {
    expect(said(find([reading()], { cuffWidthCm: 11 }))).toEqual([
      'inconsistent: Measured with 18 cm, planned with 11 cm; measure with the planned cuff.',
    ]);
  });

  it('is not the one of the other side or the other limb', () => {
    expect(said(find([reading()], { side: 'right' }))[0]).toMatch(/^inconsistent: Measured on the other leg/);
    expect(said(find([reading()], { limb: 'arm' }))[0]).toMatch(/^missing/);
    expect(find([])).toMatchObject({ ok: false, refused: [{ code: 'missing' }] });
  });

  it('may be 28 days old and not 29 (clinic choice)', () => {
    expect(find([reading()], {}, '2026-03-15').ok).toBe(true); // 27
    expect(find([reading()], {}, '2026-03-16').ok).toBe(true); // 28
    expect(said(find([reading()], {}, '2026-03-17'))[0]).toMatch(/^outside-validity/); // 29
  });

  it('is not one dated after today', () => {
    expect(find([reading()], {}, '2026-02-15').ok).toBe(false);
    expect(find([reading()], {}, '2026-02-16').ok).toBe(true);
  });

  it('needs two readings no more than 15 mmHg apart (clinic choice)', () => {
    const apart = (difference: number) => find([reading({ firstMmhg: 180 + difference })]).ok;
    expect([apart(14), apart(15), apart(16)]).toEqual([true, true, false]);
    expect(find([reading({ secondMmhg: Number.NaN })]).ok).toBe(false);
    expect(find([reading({ secondMmhg: 0 })]).ok).toBe(false);
  });

  it('read on a leg by oximeter is taken with the note that its validity is disputed (Brekke 2020 against Zeng 2019) [occlusion 52]', () => {
    expect(said(find([reading({ method: 'pulse-oximeter' })]))).toEqual(['validity-disputed']);
    const onArm = reading({ method: 'pulse-oximeter', limb: 'arm' });
    expect(said(find([onArm], { limb: 'arm' }))).toEqual([]);
    expect(said(find([reading({ method: 'automated' })]))).toEqual([]);
  });

  it('is measured again once resting pressure has moved by 20 mmHg or the limb by 2 cm (clinic choices)', () => {
    const pressure = (systolicMmhg: number, day: string): Measurement => ({
      kind: 'blood-pressure',
      day,
      systolicMmhg,
      diastolicMmhg: 76,
      position: 'seated',
    });
    const thigh = (circumferenceCm: number, day: string, side: 'left' | 'right' = 'left'): Measurement => ({
      kind: 'limb-circumference',
      day,
      limb: 'leg',
      side,
      site: 'mid-thigh',
      circumferenceCm,
    });
    const usedAfter = (now: Measurement, then: Measurement) => find([then, reading(), now]).ok;
    const was = pressure(120, '2026-02-16');
    expect([139, 140, 141].map((mmhg) => usedAfter(pressure(mmhg, '2026-02-27'), was))).toEqual([
      true,
      false,
      false,
    ]);
    const around = thigh(55, '2026-02-16');
    expect([56.9, 57, 57.1].map((cm) => usedAfter(thigh(cm, '2026-02-27'), around))).toEqual([
      true,
      false,
      false,
    ]);
    expect(usedAfter(thigh(60, '2026-02-27', 'right'), around)).toBe(true);
  });
});
