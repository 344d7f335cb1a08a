/**
 * Said on every page of a record that is merged with another one of the same person. The overview of a
 * merged record leads to the one shown, where this says so and links the other for reading.
 */
import { Notice } from '#ui/design-system/notice.tsx';
import type { Patient } from '../answers.ts';

export const MergeNotice = ({ patient }: { readonly patient: Patient }) => {
  const { mergedInto, merges, isPlanOpen } = patient;
  const shownId = mergedInto?.intoId ?? patient.id;
  if (merges.length === 0) return null;
  return (
    <Notice tone={isPlanOpen ? 'care' : 'plain'} title="Two records of one person">
      {mergedInto ? (
        <p>
          This record was merged into another record of the same person by {mergedInto.byName}:{' '}
          {mergedInto.reason} It can only be read. <a href={`/patients/${shownId}`}>Open the record shown</a>
        </p>
      ) : (
        merges.map((merge) => (
          <p key={merge.patientId}>
            Another record of this person was merged into this one by {merge.byName}: {merge.reason}{' '}
            <a href={`/patients/${merge.patientId}?read=1`}>Read the other record</a>
          </p>
        ))
      )}
      {isPlanOpen ? (
        <p>
          <strong>Nothing new can be signed</strong> until somebody chooses whose prescriptions stay in force.
          Until then the stricter plan of the two holds.{' '}
          <a href={`/patients/${shownId}/access#merge`}>Choose now</a>
        </p>
      ) : null}
    </Notice>
  );
};
