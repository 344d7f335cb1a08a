/** What a calculation answers, as a person reads it. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { ResultView } from '#ui/clinician/calculations/result-view.tsx';

const shown = (result: unknown): string =>
  renderToStaticMarkup(<ResultView result={result} fields={[{ name: 'oneRepMaxKg', unit: 'kg' }]} />);

describe('the result of a calculation', () => {
  it.each([
    [49.655172, '49.7 kg'],
    [0.01234567, '0.0123 kg'],
    [1234.56, '1235 kg'],
    [99.97, '100 kg'],
    [-2.3456, '-2.35 kg'],
  ])('is rounded for people, and the unrounded figure is a press away: %f', (value, text) => {
    const html = shown({ oneRepMaxKg: value });
    expect(html).toContain(`>${text}<`);
    expect(html).toMatch(new RegExp(`<details.*Unrounded.*${value} kg`, 's'));
  });

  it.each([[1234567], [0], [40]])('that is a whole number loses no figure, and hides none: %i', (value) => {
    const html = shown({ oneRepMaxKg: value });
    expect(html).toContain(`>${value} kg<`);
    expect(html).not.toContain('Unrounded');
  });

  it('rounds inside lists and rows as well', () => {
    const html = shown({ lows: [1.23456, 2.34567] });
    expect(html).toContain('1.23, 2.35');
    expect(html).toContain('1.23456, 2.34567');
  });
});
