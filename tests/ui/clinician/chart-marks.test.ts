/**
 * The marks of the review picture: each stands out from its ground by 3 to 1, and any two are told apart
 * without colour, or by a colour that the three common kinds of colour blindness leave apart. Simulated by
 * the matrices of Machado, Oliveira and Fernandes 2009 at full severity, on linear sRGB.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decisionStatus } from '#ui/clinician/words.ts';
import { shapes } from '#ui/design-system/mark.tsx';

const read = (file: string) => readFileSync(new URL(`../../../src/ui/${file}`, import.meta.url), 'utf8');
const tokensCss = read('design-system/styles/tokens.css');
const chartCss = read('clinician/styles/chart.css');

const tokensIn = (text: string): ReadonlyMap<string, string> =>
  new Map([...text.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, value]) => [name!, value!]));
const light = tokensIn(tokensCss.split('@media')[0]!);
const darkPart = tokensCss.split('@media (prefers-color-scheme: dark)')[1]!.split('@media')[0]!;
const dark = new Map([...light, ...tokensIn(darkPart)]);

type Triple = readonly [number, number, number];
const linear = (colour: string): Triple =>
  [1, 3, 5].map((at) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  }) as unknown as Triple;

const identity: readonly Triple[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const simulations: readonly (readonly [string, readonly Triple[]])[] = [
  ['full colour vision', identity],
  [
    'protanopia',
    [
      [0.152286, 1.052583, -0.204868],
      [0.114503, 0.786281, 0.099216],
      [-0.003882, -0.048116, 1.051998],
    ],
  ],
  [
    'deuteranopia',
    [
      [0.367322, 0.860646, -0.227968],
      [0.280085, 0.672501, 0.047413],
      [-0.01182, 0.04294, 0.968881],
    ],
  ],
  [
    'tritanopia',
    [
      [1.255528, -0.076749, -0.178779],
      [-0.078411, 0.930809, 0.147602],
      [0.004733, 0.691367, 0.3039],
    ],
  ],
];

const seenBy = (colour: string, matrix: readonly Triple[]): Triple => {
  const from = linear(colour);
  return matrix.map((row) =>
    Math.min(1, Math.max(0, row[0] * from[0] + row[1] * from[1] + row[2] * from[2])),
  ) as unknown as Triple;
};

const luminance = ([red, green, blue]: Triple) => 0.2126 * red + 0.7152 * green + 0.0722 * blue;
const contrast = (one: Triple, other: Triple): number => {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (high + 0.05) / (low + 0.05);
};

/** CIE 1976 L*a*b* of linear sRGB under D65, and the plain distance in it. */
const lab = ([red, green, blue]: Triple): Triple => {
  const x = (0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505;
  const y = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  const z = (0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.089;
  const bend = (t: number) => (t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116);
  return [116 * bend(y) - 16, 500 * (bend(x) - bend(y)), 200 * (bend(y) - bend(z))];
};
const distance = (one: Triple, other: Triple): number => {
  const [a, b] = [lab(one), lab(other)];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
};
/** Apart at a glance: several times the just noticeable difference of about 2.3. */
const apart = 10;

/** What a mark looks like besides its colour; the class carries the colour, read from the style sheet. */
const marks = [
  { mark: 'staircase', of: '.chart-load-line .recharts-line-curve', look: 'steps, solid' },
  { mark: 'session', of: '.chart-load', look: 'square, filled' },
  { mark: 'signed step', of: '.chart-signed', look: 'notch across the steps' },
  { mark: 'easier session', of: '.chart-hung', look: 'open square on a dotted thread' },
  { mark: 'morning within usual', of: '.chart-within', look: 'small disc' },
  { mark: 'morning over usual', of: '.chart-morning-pain', look: 'disc on a stem' },
  { mark: 'its stem', of: '.chart-stem', look: 'upright line from the edge of usual' },
  { mark: 'flare', of: '.chart-flare', look: 'bracket over a hatch' },
  { mark: 'pain in a session', of: '.chart-session-within', look: 'small rhombus, open' },
  { mark: 'pain in a session over the limit', of: '.chart-session-pain', look: 'rhombus on a stem, open' },
  { mark: 'answer missing', of: '.chart-missing', look: 'cross' },
  { mark: 'corrected later', of: '.chart-amended', look: 'hook above a mark' },
  { mark: 'top of usual pain', of: '.chart-usual', look: 'level line, dots' },
  { mark: 'pain limit', of: '.chart-pain-limit', look: 'level line, long dashes' },
  { mark: 'gap', of: '.chart-gap', look: 'level line, round dots under the load' },
  { mark: 'decision', of: '.chart-marker', look: 'short upright line between the panels' },
  { mark: 'day in hand', of: '.chart-cursor', look: 'upright line, solid' },
  { mark: 'stroke at usual', of: '.tally-strokes', look: 'upright stroke in a row' },
  { mark: 'cross over usual', of: '.tally-crosses', look: 'cross in a row' },
  { mark: 'highest at usual', of: '.tally-highest', look: 'level line across the tally, solid' },
  { mark: 'lowest over usual', of: '.tally-lowest', look: 'level line across the tally, dashes' },
  { mark: 'joint within usual', of: '.joint-within', look: 'bar from 0' },
  { mark: 'joint over usual', of: '.joint-over', look: 'bar from the edge of usual' },
  { mark: 'glyph progress', of: '.chart-glyph-progress', look: `glyph ${decisionStatus.progress.shape}` },
  { mark: 'glyph hold', of: '.chart-glyph', look: `glyph ${decisionStatus.hold.shape}` },
  {
    mark: 'glyph ease back',
    of: '.chart-glyph-ease-back',
    look: `glyph ${decisionStatus['ease-back'].shape}`,
  },
  { mark: 'glyph pause', of: '.chart-glyph-pause', look: `glyph ${decisionStatus.pause.shape}` },
] as const;

/** The token that colours a class: its stroke, or its fill where it has none. */
const tokenOf = (selector: string): string => {
  const escaped = selector.replace(/[.]/g, '\\.');
  const rule = new RegExp(`${escaped}\\s*(?:,[^{]*)?\\{([^}]*)\\}`).exec(chartCss)?.[1] ?? '';
  const colour = /stroke:\s*var\(--([a-z-]+)\)/.exec(rule) ?? /fill:\s*var\(--([a-z-]+)\)/.exec(rule);
  if (!colour) throw new TypeError(`No colour of ${selector} in the style sheet`);
  return colour[1]!;
};

const pairsOfMarks = marks.flatMap((one, place) =>
  marks.slice(place + 1).map((other) => [one, other] as const),
);

describe.each([
  ['light', light],
  ['dark', dark],
] as const)('in the %s look', (_look, tokens) => {
  describe.each(simulations)('seen with %s', (_name, matrix) => {
    const colourOf = (selector: string) => seenBy(tokens.get(tokenOf(selector))!, matrix);

    it.each(marks)('$mark stands out from its ground by 3 to 1', ({ of }) => {
      expect(contrast(colourOf(of), seenBy(tokens.get('paper')!, matrix))).toBeGreaterThanOrEqual(3);
    });

    it('any two marks differ in what they look like, or in a colour that is left apart', () => {
      const alike = pairsOfMarks
        .filter(([one, other]) => one.look === other.look)
        .filter(([one, other]) => distance(colourOf(one.of), colourOf(other.of)) < apart);
      expect(alike.map(([one, other]) => `${one.mark} and ${other.mark}`)).toEqual([]);
    });
  });
});

it('the four answers have four different shapes, and dashes differ between the two thresholds', () => {
  const drawn = Object.values(decisionStatus).map(({ shape }) => shapes[shape]);
  expect(new Set(drawn).size).toBe(4);
  const dashes = ['chart-usual', 'chart-pain-limit', 'chart-marker', 'chart-gap'].map(
    (name) => new RegExp(`\\.${name} \\{[^}]*stroke-dasharray: ([\\d ]+);`).exec(chartCss)?.[1],
  );
  expect(new Set(dashes).size).toBe(4);
  expect(dashes).not.toContain(undefined);
});

it('the simulation leaves grey as it is, and brings a red and a green together that differ for others', () => {
  for (const [, matrix] of simulations)
    expect(distance(seenBy('#808080', matrix), linear('#808080'))).toBeLessThan(0.5);
  const [red, green] = ['#b04a00', '#5a7a00'];
  const deuteranopia = simulations[2]![1];
  expect(distance(linear(red), linear(green))).toBeGreaterThan(60);
  expect(distance(seenBy(red, deuteranopia), seenBy(green, deuteranopia))).toBeLessThan(20);
});
