/** Weights under a kilogram are shown and typed in grams; they are stored in kilograms. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import { changeText } from '#core/prescribing/changes-in-words.ts';
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { massInWords } from '#core/review/plain-words.ts';
import { kilogramsFromGrams } from '#core/units/units.ts';
import { doseChangeText } from '#messages/dose-changes.ts';
import { paperSpeech } from '#messages/papers/paper-speech.ts';
import { weighIn, weightText } from '#ui/language/weight-text.ts';
import { OtherWeight } from '#ui/patient/session/pages/other-weight.tsx';
import '#ui/patient/words.ts';
import { weightDose } from '../views.ts';

afterEach(() => weighIn('kg'));

describe('a small weight', () => {
  it.each([
    [0, '0 kg'],
    [0.25, '250 g'],
    [0.999, '999 g'],
    [1, '1 kg'],
    [1.25, '1.25 kg'],
  ])('of %d kg is said as %s on the phone', (kg, said) => {
    expect(weightText(kg)).toBe(said);
  });

  it('is said so on paper and on the desk, never rounded to a tenth of a kilogram', () => {
    expect(paperSpeech('de').weight(0.25)).toBe('250\u00a0g');
    expect([0.25, 0.75, 1, 4.55].map(massInWords)).toEqual(['250 g', '750 g', '1 kg', '4.55 kg']);
    expect(doseInShort({ ...weightDose, method: 'low-load', loadKg: 0.25 } as never)).toContain('250 g');
    const load = { variable: 'load', from: 0.75, to: 1, unit: 'kg', percent: 33.3 } as const;
    expect(changeText(load)).toBe('Load: 750 g → 1 kg (+33.3 %).');
  });

  it('stays in pounds for whoever reads pounds', () => {
    weighIn('lb');
    expect(weightText(0.25)).toBe('0.55 lb');
  });

  it('is typed in grams where the planned one is small, and comes back as it was typed', () => {
    const page = (plannedKg: number, given: number | null) =>
      renderToStaticMarkup(
        <OtherWeight plannedKg={plannedKg} given={given} takeText="ok" onTake={() => undefined} />,
      );
    expect(page(0.25, 0.5)).toContain('value="500"');
    expect(page(0.25, 0.5)).toMatch(/>g</);
    expect(page(2, 0.5)).toContain('value="0.5"');
    expect(kilogramsFromGrams(250)).toBe(0.25);
  });

  it('that changes is told in grams while both are small', () => {
    const told = (from: number, to: number) =>
      doseChangeText({
        exerciseId: 'wrist-bend-up',
        kind: 'changed',
        changes: [{ variable: 'load', from, to }],
      });
    expect(told(0.25, 0.5)).toMatchObject({
      en: expect.stringContaining('500 g instead of 250 g'),
      de: expect.stringContaining('500 g statt 250 g'),
    });
    expect(told(0.75, 1).en).toContain('1 kg instead of 0.75 kg');
  });
});
