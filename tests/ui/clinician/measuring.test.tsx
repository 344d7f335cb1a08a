/** Entering a measurement: units of one’s own, last time beside the field, what is out of date said. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import { measurementForm } from '#core/assessment/measurements/measurement-fields.ts';
import type { Recorded } from '#ui/clinician/answers.ts';
import { readTyped } from '#ui/clinician/forms/typed.ts';
import { readAs, readWithUnit } from '#ui/clinician/forms/typed-units.ts';
import { MeasurementForm } from '#ui/clinician/measurements/measurement-form.tsx';
import { isOld } from '#ui/clinician/measurements/measurements-screen.tsx';

// Forms ask the framework for its router, which is not there outside a request.
vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

describe('a figure with a unit of its own', () => {
  // International pound 0.45359237 kg and inch 2.54 cm, exact by definition; 14 pounds to the stone.
  it.each([
    ['154 lb', 'kg', 69.85322498],
    ['11 st', 'kg', 69.85322498],
    ['11 st 2 lb', 'kg', 70.76040972],
    ['64 in', 'cm', 162.56],
    ['5 ft 4 in', 'cm', 162.56],
    ['1.63 m', 'cm', 163],
    ['1,63m', 'cm', 163],
    ['30 kgf', 'N', 294.1995],
  ])('“%s” in a field in %s is %f', (typed, unit, value) => {
    expect(readWithUnit(typed, unit)).toBeCloseTo(value, 8);
  });

  it.each([
    ['12 in', 'kg'],
    ['12 lb', 's'],
    ['12 parsecs', 'kg'],
    ['about 12 lb', 'kg'],
    ['lb', 'kg'],
    ['12 lb -', 'kg'],
  ])('“%s” in a field in %s is not read', (typed, unit) => {
    expect(readWithUnit(typed, unit)).toBeNaN();
  });

  it('says what it was read as, and says nothing of a bare number', () => {
    expect(readAs('154 lb', 'kg')).toBeCloseTo(69.85, 2);
    expect([readAs('70', 'kg'), readAs('', 'kg'), readAs('soon', 'kg')]).toEqual([null, null, null]);
  });

  it('is sent in the unit of the field', () => {
    const { value } = readTyped(measurementForm('body-mass')!.fields, {
      day: '2026-04-20',
      massKg: '154 lb',
    });
    expect(value.massKg).toBeCloseTo(69.853, 3);
  });
});

it('beside each number stands what it was last time, with its day', () => {
  const previous = {
    id: 'm',
    kind: 'blood-pressure',
    day: '2026-03-02',
    systolicMmhg: 128,
    diastolicMmhg: 78,
    position: 'seated',
  } as unknown as Recorded;
  const markup = renderToStaticMarkup(
    <MeasurementForm
      patientId="p"
      form={measurementForm('blood-pressure')!}
      day="2026-04-20"
      previous={previous}
    />,
  );
  expect(markup).toContain('Last 128 on 2 Mar. 50 to 300');
  expect(markup).toContain('Last 78 on 2 Mar. 20 to 200');
});

it.each([
  ['2026-03-23', false],
  ['2026-03-22', true],
])('an occlusion pressure of %s with 28 valid days is out of date on 20 Apr: %s', (day, isOut) => {
  expect(isOld({ kind: 'limb-occlusion-pressure', day }, '2026-04-20', 28)).toBe(isOut);
  expect(isOld({ kind: 'grip', day }, '2026-04-20', 28)).toBe(false);
});
