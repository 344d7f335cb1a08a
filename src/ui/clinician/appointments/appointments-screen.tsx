/** Appointments: where, who is present, and where to ring back. */
import { isRemote, needsHandsOnTest } from '#core/episode/remote-visit.ts';
import { listed } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/appointments.ts';
import { optionInWords } from '#ui/clinician/forms/field-words.ts';
import { type ClinicClock, momentInWords } from '#ui/clinician/when.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import type { DistanceAnswer, VisitsAnswer } from '../episode/answers.ts';
import { DistanceGuide, FoundAtADistance } from './distance-guide.tsx';
import { VisitForm } from './visit-form.tsx';

const none = say('not-given');

interface AppointmentsProps {
  readonly patientId: string;
  readonly answer: VisitsAnswer;
  readonly distance: DistanceAnswer;
  readonly clock: ClinicClock;
}

const LockedToday = ({ now }: Pick<VisitsAnswer, 'now'>) =>
  now && isRemote(now.place) ? (
    <Notice tone="care" title={say('your-appointment-today', { place: now.place })}>
      <p>
        {say('locked-until-you-meet', {
          tests: listed(
            needsHandsOnTest.map((kind) => kind.replace(/-/g, ' ')),
            10,
          ),
          phone: now.callBackPhone ?? '',
          whereabouts: now.whereabouts ?? '',
        })}
      </p>
    </Notice>
  ) : null;

export const AppointmentsScreen = (props: AppointmentsProps) => {
  const { now, visits } = props.answer;
  return (
    <div className="stack-wide">
      <LockedToday now={now} />
      {props.distance.now ? (
        <DistanceGuide patientId={props.patientId} now={props.distance.now} found={props.distance.found} />
      ) : null}
      <section className="stack-close screen-only">
        <h2>{say('begin-an-appointment')}</h2>
        <VisitForm patientId={props.patientId} />
      </section>
      <DataTable
        caption="Appointments"
        columns={[
          { key: 'when', title: 'When' },
          { key: 'place', title: 'Where' },
          { key: 'present', title: 'Present' },
          { key: 'phone', title: say('call-back-number') },
          { key: 'by', title: say('held-by') },
        ]}
        rows={visits.map((visit) => ({
          key: visit.id,
          cells: [
            momentInWords(visit.recordedAt, props.clock),
            `${optionInWords(visit.place)}${visit.whereabouts ? `; ${say('patient-at', { whereabouts: visit.whereabouts })}` : ''}`,
            visit.present.length > 0 ? listed(visit.present, 8) : say('nobody-else-named'),
            visit.callBackPhone ?? none,
            visit.heldName,
          ],
        }))}
        empty={say('no-appointment-is-recorded')}
      />
      <FoundAtADistance found={props.distance.found} clock={props.clock} />
    </div>
  );
};
