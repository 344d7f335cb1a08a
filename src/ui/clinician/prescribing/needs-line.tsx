/** What is not on record and a dose may need, each a link to where it is recorded. */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { anthropometryOf } from '#core/prescribing/variation/variation-for-patient.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import type { Patient } from '../answers.ts';

interface NeedsProps {
  readonly patient: Patient;
  readonly measurements: readonly Measurement[];
}

const needsOf = ({ patient, measurements }: NeedsProps): readonly (readonly [string, string])[] => {
  const { profile } = patient;
  const isMeasured = (kind: Measurement['kind']) => measurements.some((row) => row.kind === kind);
  const person = anthropometryOf({ measurements, formulaSex: profile?.formulaSex ?? null });
  return [
    ...(profile ? [] : [[say('needs.profile'), ''] as const]),
    ...(profile?.ownedLoadsKg.length ? [] : [[say('needs.loads'), ''] as const]),
    ...(person ? [] : [[say('needs.body'), '/measurements'] as const]),
    ...(isMeasured('repetitions-to-failure') ? [] : [[say('needs.repetitions'), '/measurements'] as const]),
    ...(isMeasured('limb-occlusion-pressure') ? [] : [[say('needs.pressure'), '/measurements'] as const]),
  ];
};

export const NeedsLine = (props: NeedsProps) => {
  const needs = needsOf(props);
  return needs.length === 0 ? null : (
    <p className="soft small needs-line">
      {say('needs')}{' '}
      {needs.map(([text, path]) => (
        <a key={text} href={`/patients/${props.patient.id}${path}`}>
          {text}
        </a>
      ))}
    </p>
  );
};
