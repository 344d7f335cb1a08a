/** Prescribe: choose a method among what is open, then ask for a dose. */

import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { exercisesFor } from '#core/exercises/catalogue.ts';
import type { Anthropometry } from '#core/exercises/exercise.ts';
import { type Method, methods } from '#core/prescribing/methods.ts';
import { anthropometryOf } from '#core/prescribing/variation/variation-for-patient.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import type { Patient, Version } from '../answers.ts';
import { doseTitle } from '../dose-words.ts';
import { methodInWords } from '../words.ts';
import { type LadderRow, ladderRows } from './ladder-rows.ts';
import { MethodChoice } from './method-choice.tsx';
import { PrescribeForm } from './prescribe-form.tsx';

export interface PrescribeProps {
  readonly patient: Patient;
  readonly outcomes: readonly MethodOutcome[];
  readonly measurements: readonly Measurement[];
  readonly method: Method | null;
  /** The newest version of the line to write anew; null for a new exercise. */
  readonly version: Version | null;
  readonly signer: string;
}

export const methodFrom = (text: unknown): Method | null => methods.find((method) => method === text) ?? null;

const laddersFor = (person: Anthropometry | null): Readonly<Record<string, readonly LadderRow[]>> => {
  if (!person) return {};
  const families = [...new Set(exercisesFor('variation').map((exercise) => exercise.family))];
  return Object.fromEntries(families.map((family) => [family, ladderRows(family, person)]));
};

const needsOf = (
  { patient, measurements }: PrescribeProps,
  person: Anthropometry | null,
): readonly string[] => [
  ...(patient.profile ? [] : ['a care profile (overview)']),
  ...(patient.profile?.ownedLoadsKg.length
    ? []
    : ['the loads the patient has at home (overview), for low load']),
  ...(person ? [] : ['weight, height and sex used in body formulas, for the levels of a variation']),
  ...(measurements.some((row) => row.kind === 'repetitions-to-failure')
    ? []
    : ['repetitions to failure at one load, for low load without a known maximum']),
  ...(measurements.some((row) => row.kind === 'limb-occlusion-pressure')
    ? []
    : ['a measured limb occlusion pressure, for cuff work']),
];

export const PrescribeScreen = (props: PrescribeProps) => {
  const { patient, method, version } = props;
  const person = anthropometryOf({
    measurements: props.measurements,
    formulaSex: patient.profile?.formulaSex ?? null,
  });
  const needs = needsOf(props, person);
  return (
    <div className="stack-wide">
      <section className="stack-close">
        <h2>Method</h2>
        <MethodChoice patientId={patient.id} outcomes={props.outcomes} chosen={method} />
        {needs.length > 0 ? <p className="soft">Not recorded yet: {needs.join('; ')}.</p> : null}
      </section>
      {method ? (
        <section className="stack">
          <h2>
            {methodInWords[method]}
            {version ? `: a new version of ${doseTitle(version.dose)}` : ''}
          </h2>
          <PrescribeForm
            key={method}
            patientId={patient.id}
            method={method}
            ladders={method === 'variation' ? laddersFor(person) : {}}
            signer={props.signer}
            line={
              version && {
                itemId: version.itemId,
                exerciseId: version.dose.exerciseId,
                side: version.dose.side,
              }
            }
          />
        </section>
      ) : null}
    </div>
  );
};
