/**
 * What screening leaves of each method on each limb, with every reason and who may clear it.
 *
 * The most cautious reason wins; reasons are never dropped. Nobody screened, nobody adult, or a
 * screening past its age closes everything. Occlusion is for arms and legs only: a limb is part of
 * each outcome, so work of the trunk has none.
 */

import type { Measurement } from '../assessment/measurements/measurement.ts';
import { limbs, sides } from '../exercises/joints.ts';
import { type Eligibility, eligibilities, methods } from '../prescribing/methods.ts';
import { defaultsOf, type SettingValues } from '../sources/clinic-setting.ts';
import { type Day, daysBetween } from '../time/day.ts';
import { afterClearances } from './clearances.ts';
import { type DatedReason, reasonsFromAnswers, type Target } from './reasons-from-answers.ts';
import { reasonsFromMeasurements } from './reasons-from-measurements.ts';
import type { Clearance, MethodOutcome, Screening } from './screening.ts';
import { screeningSettings } from './settings.ts';

export interface OutcomesInput {
  readonly screening: Screening | null;
  readonly clearances: readonly Clearance[];
  readonly measurements: readonly Measurement[];
  readonly today: Day;
  readonly ageYears: number;
  readonly settings: SettingValues;
}

const adultFromYears = 18;

export const mostCautious = (all: readonly Eligibility[]): Eligibility =>
  all.reduce<Eligibility>(
    (worst, next) => (eligibilities.indexOf(next) > eligibilities.indexOf(worst) ? next : worst),
    'open',
  );

const closed = (code: string, from: string, text: string, since: Day): DatedReason => ({
  code,
  from,
  eligibility: 'closed',
  text,
  clearedBy: null,
  support: 'clinic',
  since,
});

const reasonsInForce = (input: OutcomesInput, settings: SettingValues): readonly DatedReason[] => {
  const { screening, today, ageYears } = input;
  const reasons: DatedReason[] = [];
  if (!(ageYears >= adultFromYears)) {
    reasons.push(
      closed('under-18', 'age', 'Under 18, or age not known: this tool is for adults only.', today),
    );
  }
  if (!screening) {
    reasons.push(
      closed(
        'never-screened',
        'screening',
        'No screening recorded: complete it before using any method.',
        today,
      ),
    );
    return reasons;
  }
  const age = daysBetween(screening.day, today);
  if (age < 0) {
    reasons.push(
      closed(
        'screening-in-future',
        'screening',
        'The screening is dated in the future; correct its day.',
        today,
      ),
    );
  }
  if (age > settings['screening-valid-days']!) {
    reasons.push(
      closed(
        'screening-expired',
        'screening',
        `The screening is ${age} days old; it must be repeated after ${settings['screening-valid-days']}.`,
        today,
      ),
    );
  }
  return reasons;
};

const outcomeFor = (target: Target, input: OutcomesInput, settings: SettingValues): MethodOutcome => {
  const found = [
    ...reasonsInForce(input, settings),
    ...(input.screening ? reasonsFromAnswers(input.screening, target, input.ageYears) : []),
    ...reasonsFromMeasurements(target, input.measurements, input.screening, input.today, settings),
  ].map((reason) => afterClearances(reason, target, input.clearances, input.today));
  return {
    ...target,
    eligibility: mostCautious(found.map((reason) => reason.eligibility)),
    reasons: found.map(({ since: _since, ...reason }) => reason),
  };
};

/** One outcome per method, limb and side: twelve in all, in a fixed order. */
export const methodOutcomes = (input: OutcomesInput): readonly MethodOutcome[] => {
  const settings = { ...defaultsOf(screeningSettings), ...input.settings };
  return methods.flatMap((method) =>
    limbs.flatMap((limb) => sides.map((side) => outcomeFor({ method, limb, side }, input, settings))),
  );
};
