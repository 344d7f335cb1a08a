/** Contrast of the look, computed from the tokens by the definition of WCAG 2 (relative luminance). */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../../../src/ui/design-system/styles/tokens.css', import.meta.url), 'utf8');

const tokensIn = (text: string): ReadonlyMap<string, string> =>
  new Map([...text.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, value]) => [name!, value!]));

const [, darkPart = ''] = css.split('@media (prefers-color-scheme: dark)');
const light = tokensIn(css.split('@media')[0]!);
const dark = new Map([...light, ...tokensIn(darkPart.split('@media')[0]!)]);

const channel = (value: number): number =>
  value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;

const luminance = (colour: string): number => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    channel(Number.parseInt(colour.slice(at, at + 2), 16) / 255),
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

const contrast = (one: string, other: string): number => {
  const [high = 0, low = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (high + 0.05) / (low + 0.05);
};

const texts: readonly (readonly [string, readonly string[]])[] = [
  ['ink', ['paper', 'sheet', 'well', 'accent-wash', 'care-wash', 'danger-wash']],
  ['ink-soft', ['paper', 'sheet', 'well']],
  ['accent', ['paper', 'sheet', 'well', 'accent-wash']],
  ['accent-deep', ['paper', 'sheet']],
  ['on-accent', ['accent', 'accent-deep']],
  ['danger', ['paper', 'sheet', 'danger-wash']],
  ['on-danger', ['danger']],
  ['care', ['paper', 'sheet', 'care-wash']],
];

const marks: readonly (readonly [string, readonly string[]])[] = [
  ['line-strong', ['paper', 'sheet', 'well']],
  ['accent', ['paper', 'sheet']],
  ['focus', ['paper', 'sheet']],
];

const pairs = (list: typeof texts) => list.flatMap(([front, backs]) => backs.map((back) => [front, back]));

describe.each([
  ['light', light],
  ['dark', dark],
])('in the %s look', (_, tokens) => {
  const of = (name: string) => {
    const value = tokens.get(name);
    if (!value) throw new TypeError(`No token ${name}`);
    return value;
  };

  it.each(pairs(texts))('text in %s on %s reaches 4.5 to 1', (front, back) => {
    expect(contrast(of(front!), of(back!))).toBeGreaterThanOrEqual(4.5);
  });

  it.each(pairs(marks))('marks in %s on %s reach 3 to 1', (front, back) => {
    expect(contrast(of(front!), of(back!))).toBeGreaterThanOrEqual(3);
  });
});

it('black on white is 21 to 1', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
});
