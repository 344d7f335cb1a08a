/**
 * Ankle-brachial index of one leg: the higher ankle pressure of that leg over the higher arm pressure.
 *
 * The conventional definition. Bands leave a gap between 0.90 and 0.91, so the index is rounded
 * half up to two decimals before it is banded. A normal index can be false in diabetes and kidney
 * disease, where arteries stiffen; it clears nothing by itself. Taking the lower ankle pressure
 * finds more disease; averaging the arms is another convention; neither is used here.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, type Note } from '../outcome.ts';

const ankleBrachialBands = ['abnormal', 'borderline', 'normal', 'non-compressible'] as const;
export type AnkleBrachialBand = (typeof ankleBrachialBands)[number];

/** Upper bounds in hundredths, inclusive. */
const bands = [
  { upToHundredths: 90, band: 'abnormal' },
  { upToHundredths: 99, band: 'borderline' },
  { upToHundredths: 140, band: 'normal' },
] as const satisfies readonly { upToHundredths: number; band: AnkleBrachialBand }[];

interface Pressures {
  readonly dorsalisPedisMmhg: number;
  readonly posteriorTibialMmhg: number;
  readonly brachialMmhg: readonly number[];
}

export const ankleBrachialBand = (
  pressures: Pressures,
): { readonly index: number; readonly band: AnkleBrachialBand } => {
  const ankle = Math.max(pressures.dorsalisPedisMmhg, pressures.posteriorTibialMmhg);
  const arm = Math.max(...pressures.brachialMmhg);
  const hundredths = Math.round((100 * ankle) / arm);
  const found = bands.find((row) => hundredths <= row.upToHundredths);
  return { index: ankle / arm, band: found ? found.band : 'non-compressible' };
};

const falseNormal: Note = {
  code: 'normal-may-be-false',
  text: 'In diabetes or kidney disease a normal index can be false, because stiff arteries resist the cuff.',
};
const oneArm: Note = {
  code: 'one-arm',
  text: 'Only one arm pressure was given; the definition takes the higher of two.',
};

const ankle = (name: 'dorsalisPedisMmhg' | 'posteriorTibialMmhg', about: string) =>
  ({ name, kind: 'number', unit: 'mm[Hg]', min: 0, max: 350, about }) as const;

export const ankleBrachialIndex = calculation({
  id: 'ankle-brachial-index',
  title: 'Ankle-brachial index of one leg',
  area: 'screening',
  input: [
    ankle('dorsalisPedisMmhg', 'Pressure at the top of the foot; 0 when no signal was found.'),
    ankle('posteriorTibialMmhg', 'Pressure behind the inner ankle; 0 when no signal was found.'),
    {
      name: 'brachialMmhg',
      kind: 'list',
      minItems: 1,
      maxItems: 2,
      of: { name: 'pressure', kind: 'number', unit: 'mm[Hg]', min: 50, max: 300 },
      about: 'Systolic pressures of the arms; the higher one is used.',
    },
  ],
  result: [
    { name: 'index', unit: '1', about: 'unrounded' },
    { name: 'band', unit: '', about: 'from the index rounded half up to two decimals' },
  ],
  citations: [
    { source: 'ankle-brachial-definitions-2014', locator: 'abstract: conventional definition', mark: 'seen' },
    { source: 'ankle-brachial-statement-2012', locator: 'title page only', mark: 'seen' },
    { source: 'ankle-brachial-bands', locator: 'bands as restated', mark: 'second-hand' },
  ],
  calculate: (input) =>
    answer(ankleBrachialBand(input), input.brachialMmhg.length < 2 ? [falseNormal, oneArm] : [falseNormal]),
  example: { dorsalisPedisMmhg: 110, posteriorTibialMmhg: 118, brachialMmhg: [132, 128] },
});
