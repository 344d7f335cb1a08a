/** One person at the front desk: the next appointment, then name and numbers. Nothing of the record. */
import { say } from '#messages/en/staff/reception/reception.ts';
import { say as sayReview } from '#messages/en/staff/review.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { wholeDayText } from '../../language/text-of-time.ts';
import { PatientDetailsSection } from '../record/patient-details-section.tsx';
import { BookingForm } from '../review/booking-form.tsx';
import type { ClinicClock } from '../when.ts';
import type { ReceptionPerson } from './answers.ts';

interface PersonProps {
  readonly person: ReceptionPerson;
  readonly clock: ClinicClock;
}

const Appointment = ({ person }: Pick<PersonProps, 'person'>) => {
  const { id, booking } = person;
  return (
    <section className="stack-close">
      <h2>{sayReview('next')}</h2>
      <p>
        {booking ? (
          <>
            <strong>
              {[wholeDayText(booking.day), booking.time, booking.place].filter(Boolean).join(', ')}
            </strong>{' '}
            <span className="soft">{say('next-is', { name: booking.byName })}</span>
          </>
        ) : (
          sayReview('next.none')
        )}
      </p>
      <Disclosure summary={sayReview(booking ? 'next.change' : 'next.book')} isOpen={!booking}>
        <BookingForm patientId={id} seen={booking?.id ?? null} desk="reception" />
      </Disclosure>
    </section>
  );
};

export const ReceptionPersonScreen = (props: PersonProps) => (
  <div className="stack-wide">
    <Appointment person={props.person} />
    <PatientDetailsSection
      patientId={props.person.id}
      details={props.person.details}
      clock={props.clock}
      desk="reception"
    />
    <p className="soft small">{say('birth-note')}</p>
    <p className="soft small">{say('not-here')}</p>
  </div>
);
