/** Appointments: where, who is present, and where to ring back. */
import { isRemote, needsHandsOnTest } from '#core/episode/remote-visit.ts';
import { listed } from '#core/review/plain-words.ts';
import { optionInWords } from '#ui/clinician/forms/field-words.ts';
import { type ClinicClock, momentInWords } from '#ui/clinician/when.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import type { VisitsAnswer } from '../episode/answers.ts';
import { VisitForm } from './visit-form.tsx';

const none = 'not given';

export const AppointmentsScreen = (props: {
  readonly patientId: string;
  readonly answer: VisitsAnswer;
  readonly clock: ClinicClock;
}) => {
  const { now, visits } = props.answer;
  return (
    <div className="stack-wide">
      {now && isRemote(now.place) ? (
        <Notice tone="care" title={`Your appointment today is by ${now.place}`}>
          <p>
            Locked until you meet in person:{' '}
            {listed(
              needsHandsOnTest.map((kind) => kind.replace(/-/g, ' ')),
              10,
            )}
            . Do not do a first session with a cuff remotely. If the call drops, ring {now.callBackPhone}; the
            patient is at: {now.whereabouts}.
          </p>
        </Notice>
      ) : null}
      <section className="stack-close screen-only">
        <h2>Begin an appointment</h2>
        <VisitForm patientId={props.patientId} />
      </section>
      <DataTable
        caption="Appointments"
        columns={[
          { key: 'when', title: 'When' },
          { key: 'place', title: 'Where' },
          { key: 'present', title: 'Present' },
          { key: 'phone', title: 'Call-back number' },
          { key: 'by', title: 'Held by' },
        ]}
        rows={visits.map((visit) => ({
          key: visit.id,
          cells: [
            momentInWords(visit.recordedAt, props.clock),
            `${optionInWords(visit.place)}${visit.whereabouts ? `; patient at: ${visit.whereabouts}` : ''}`,
            visit.present.length > 0 ? listed(visit.present, 8) : 'nobody else named',
            visit.callBackPhone ?? none,
            visit.byName,
          ],
        }))}
        empty="No appointment is recorded."
      />
    </div>
  );
};
