/** What a clinician must see about a low-load dose before signing it. */

import type { Note } from '#core/outcome.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { RepetitionBand } from '../dose.ts';
import { shown } from '../working-line.ts';
import { repetitionsBeforeStep } from './double-progression.ts';
import { largestStepPercent } from './load-step.ts';
import type { LowLoadInput } from './low-load-input.ts';
import type { ChosenLoad } from './low-load-load.ts';
import { isUnder } from './percent-band.ts';

const leavesWindow = (load: ChosenLoad, settings: SettingValues): Note[] => {
  if (load.truePercent === null) return [];
  const floor = settings['low-load-percent-floor'] ?? Number.NaN;
  const top = settings['low-load-percent-top'] ?? Number.NaN;
  const share = `${shown(load.loadKg)} kg is ${shown(load.truePercent)} % of the maximum`;
  if (isUnder(load.truePercent, floor)) {
    const text = `${share}, under the floor of ${floor} %: less growth is to be expected. Lend a load nearer to ${shown(load.targetKg)} kg.`;
    return [{ code: 'under-floor', text }];
  }
  if (isUnder(top, load.truePercent)) {
    return [
      { code: 'over-top', text: `${share}, over the top of ${top} %: the joint carries more than asked.` },
    ];
  }
  const range = load.truePercentRange;
  if (range && (isUnder(range.low, floor) || isUnder(top, range.high))) {
    const text = `By the other equations it may be anything from ${shown(range.low)} to ${shown(range.high)} %, outside ${floor}–${top} %.`;
    return [{ code: 'spread-leaves-window', text }];
  }
  return [];
};

const largeStep = (load: ChosenLoad, band: RepetitionBand): Note[] => {
  if (load.nextLoad === null) {
    return [
      {
        code: 'no-heavier-load',
        text: 'Nothing heavier is available within the limits given: progress by repetitions, sets or another method.',
      },
    ];
  }
  if (load.nextLoad.verdict !== 'over-window') return [];
  const { loadKg, stepPercent } = load.nextLoad;
  const before = repetitionsBeforeStep({
    fromKg: load.loadKg,
    toKg: loadKg,
    lowRepetitions: band.low,
  });
  const wanted = before.ok
    ? ` About ${before.result.repetitionsNeeded} repetitions would be wanted first, as an order of magnitude.`
    : '';
  const text = `The next load available, ${shown(loadKg)} kg, is a step of ${shown(stepPercent)} %, over ${largestStepPercent} %: add repetitions first, or find a load between.${wanted}`;
  return [{ code: 'step-over-window', text }];
};

/** A test of known length says whether the tested load can end inside the band. */
const effortFits = (input: LowLoadInput, load: ChosenLoad, band: RepetitionBand, reserve: number): Note[] => {
  if (load.truePercent !== null || input.test === undefined) return [];
  const toReserve = input.test.repetitions - reserve;
  if (load.loadKg < input.test.loadKg || toReserve > band.high) {
    const text = `At ${shown(input.test.loadKg)} kg the test ran to ${input.test.repetitions} repetitions, so sets at ${shown(load.loadKg)} kg may reach ${band.high} with much in reserve. Test the next load owned, or widen the band.`;
    return [{ code: 'light-for-band', text }];
  }
  if (toReserve < band.low) {
    const text = `The test ended at ${input.test.repetitions} repetitions: with ${reserve} in reserve the band of ${band.low}–${band.high} is not reached.`;
    return [{ code: 'heavy-for-band', text }];
  }
  return [];
};

export const lowLoadWarnings = (
  input: LowLoadInput,
  load: ChosenLoad,
  band: RepetitionBand,
  reserve: number,
  settings: SettingValues,
): readonly Note[] => [
  ...leavesWindow(load, settings),
  ...largeStep(load, band),
  ...effortFits(input, load, band, reserve),
];
