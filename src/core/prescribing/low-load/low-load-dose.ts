/**
 * Proposes a low-load dose: load from a test or a known maximum, three sets near failure, reserve,
 * rest, tempo and repetition band, with its working, its warnings and its bad-day session. It
 * computes; it has not asked the joint, and a clinician signs.
 */

import { equationCitations } from '#core/assessment/strength/equations/all.ts';
import { accuracyCitations } from '#core/assessment/strength/estimate-citations.ts';
import { longSetReserve } from '#core/assessment/strength/reserve-confidence.ts';
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import { checkSettings, defaultsOf, type SettingValues } from '#core/sources/clinic-setting.ts';
import type { LowLoadDose } from '../dose.ts';
import type { WorkingLine } from '../working-line.ts';
import { badDayDose, badDayWarnings, type LowLoadWork } from './bad-day-dose.ts';
import { doubleProgressionCitations } from './double-progression.ts';
import { type Estimate, estimateMaximum } from './low-load-estimate.ts';
import { defersToClinician, evidenceLimits, floorReason, lowLoadCitations } from './low-load-evidence.ts';
import { lowLoadConflicts, lowLoadInput } from './low-load-input.ts';
import { type ChosenLoad, chooseLoad, type Rounding } from './low-load-load.ts';
import { lowLoadWarnings } from './low-load-warnings.ts';
import { workLines, workOf } from './low-load-work.ts';
import { strengthSettings } from './settings.ts';
import type { WithTypedLoad } from './typed-load.ts';

export interface LowLoadProposal<D = LowLoadWork> {
  readonly dose: D;
  readonly badDay: D;
  readonly equation: Estimate['equation'];
  readonly spread: Estimate['spread'];
  readonly targetKg: number;
  readonly truePercent: number | null;
  readonly truePercentRange: ChosenLoad['truePercentRange'];
  readonly nextLoad: ChosenLoad['nextLoad'];
  readonly working: readonly WorkingLine[];
  readonly warnings: readonly Note[];
}

/** Only this area's choices, so that a clinic's whole list may be handed in. */
const ownSettings = (settings: SettingValues): SettingValues =>
  Object.fromEntries(strengthSettings.map(({ id }) => [id, settings[id] ?? Number.NaN]));

const fixedNotes: readonly Note[] = [floorReason, longSetReserve, evidenceLimits, defersToClinician];

export const lowLoadWork = (
  input: WithTypedLoad,
  clinicSettings: SettingValues,
  rounding: Rounding = 'as-asked',
): Outcome<LowLoadProposal> => {
  const settings = ownSettings(clinicSettings);
  const refused = [...checkSettings(strengthSettings, settings), ...lowLoadConflicts(input)];
  if (refused.length > 0) return { ok: false, refused };
  const estimate = estimateMaximum(input, settings);
  if (!estimate.ok) return estimate;
  const load = chooseLoad(input, estimate.result, settings, rounding);
  if (!load.ok) return load;
  const dose = workOf(input, estimate.result.oneRepMaxKg, load.result.loadKg, settings);
  if (dose.repetitions.low > dose.repetitions.high) {
    return refuse('repetitionsLow', 'inconsistent', 'The low end of the band is above its high end.');
  }
  const badDay = badDayDose(dose, settings);
  const { targetKg, truePercent, truePercentRange, nextLoad } = load.result;
  const proposal: LowLoadProposal = {
    dose,
    badDay,
    equation: estimate.result.equation,
    spread: estimate.result.spread,
    targetKg,
    truePercent,
    truePercentRange,
    nextLoad,
    working: [...estimate.result.working, ...load.result.working, ...workLines(input, dose)],
    warnings: [
      ...lowLoadWarnings(input, load.result, dose.repetitions, dose.reserve, settings),
      ...badDayWarnings(dose, badDay),
    ],
  };
  return answer(proposal, [...estimate.notes, ...load.notes, ...fixedNotes]);
};

/** The same for one exercise and side, as the record keeps a dose. */
export const proposeLowLoadDose = (
  on: Pick<LowLoadDose, 'exerciseId' | 'side'>,
  input: WithTypedLoad,
  settings: SettingValues,
): Outcome<LowLoadProposal<LowLoadDose>> => {
  const outcome = lowLoadWork(input, settings, 'nearest-in-band');
  if (!outcome.ok) return outcome;
  const { dose, badDay, warnings, ...rest } = outcome.result;
  // That work under the floor is not proposed is not said beside a proposal under the floor.
  const isUnderFloor = warnings.some(({ code }) => code === 'under-floor');
  const notes = outcome.notes.filter((note) => !(isUnderFloor && note === floorReason));
  return answer({ ...rest, warnings, dose: { ...on, ...dose }, badDay: { ...on, ...badDay } }, notes);
};

export const lowLoadDoseRow = calculation({
  id: 'low-load-dose',
  title: 'Low-load dose with its bad-day session',
  area: 'strength',
  input: lowLoadInput,
  result: [
    { name: 'dose', unit: '', about: 'Sets, band, reserve, rest, tempo, load in kg.' },
    { name: 'badDay', unit: '', about: 'The easier session signed with it.' },
    { name: 'equation', unit: '', about: 'Null without an estimate.' },
    { name: 'spread', unit: 'kg', about: 'Lowest and highest estimate.' },
    { name: 'targetKg', unit: 'kg' },
    { name: 'truePercent', unit: '%', about: 'After rounding; null when dosed by effort alone.' },
    { name: 'truePercentRange', unit: '%', about: 'Against the highest and lowest estimate.' },
    { name: 'nextLoad', unit: 'kg', about: 'Next heavier load owned and its step.' },
    { name: 'working', unit: '' },
    { name: 'warnings', unit: '' },
  ],
  citations: [...lowLoadCitations, ...equationCitations, ...accuracyCitations, ...doubleProgressionCitations],
  consistent: lowLoadConflicts,
  calculate: (input) => lowLoadWork(input, defaultsOf(strengthSettings)),
  example: {
    test: { loadKg: 6, repetitions: 12 },
    ageYears: 68,
    availableKg: [1, 2, 3, 4, 5],
    percent: 40,
    reserve: 2,
  },
});
