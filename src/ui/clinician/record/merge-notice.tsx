/**
 * Said on every page of a record that is merged with another one of the same person. The overview of a
 * merged record leads to the one shown, where this says so and links the other for reading.
 */
import { say } from '#messages/en/staff/record.ts';
import { Notice } from '#ui/design-system/notice.tsx';
import type { Patient } from '../answers.ts';

export const MergeNotice = ({ patient }: { readonly patient: Patient }) => {
  const { mergedInto, merges, isPlanOpen } = patient;
  const shownId = mergedInto?.intoId ?? patient.id;
  if (merges.length === 0) return null;
  return (
    <Notice tone={isPlanOpen ? 'care' : 'plain'} title={say('merge.title')}>
      {mergedInto ? (
        <p>
          {say('merged-into', { name: mergedInto.byName, reason: mergedInto.reason })}{' '}
          <a href={`/patients/${shownId}`}>{say('merge.open-shown')}</a>
        </p>
      ) : (
        merges.map((merge) => (
          <p key={merge.patientId}>
            {say('merged-here', { name: merge.byName, reason: merge.reason })}{' '}
            <a href={`/patients/${merge.patientId}?read=1`}>{say('merge.read')}</a>
          </p>
        ))
      )}
      {isPlanOpen ? (
        <p>
          <strong>{say('merge.nothing-signed')}</strong> {say('merge.until')}{' '}
          <a href={`/patients/${shownId}/access#merge`}>{say('merge.choose')}</a>
        </p>
      ) : null}
    </Notice>
  );
};
