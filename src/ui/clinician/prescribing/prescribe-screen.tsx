/** Prescribe: choose a method among what is open, then ask for a dose. */

import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { exercisesFor } from '#core/exercises/catalogue.ts';
import type { Anthropometry } from '#core/exercises/exercise.ts';
import { type Method, methods } from '#core/prescribing/methods.ts';
import { anthropometryOf } from '#core/prescribing/variation/variation-for-patient.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { say } from '#messages/en/staff/prescribing.ts';
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
  ...(patient.profile ? [] : [say('needs.profile')]),
  ...(patient.profile?.ownedLoadsKg.length ? [] : [say('needs.loads')]),
  ...(person ? [] : [say('needs.body')]),
  ...(measurements.some((row) => row.kind === 'repetitions-to-failure') ? [] : [say('needs.repetitions')]),
  ...(measurements.some((row) => row.kind === 'limb-occlusion-pressure') ? [] : [say('needs.pressure')]),
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
        {needs.length > 0 ? <p className="soft">{say('needs', { things: needs.join('; ') })}</p> : null}
      </section>
      {method ? (
        <section className="stack">
          <h2>
            {version
              ? say('new-version', { method: methodInWords[method], title: doseTitle(version.dose) })
              : methodInWords[method]}
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
