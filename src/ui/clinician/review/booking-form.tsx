'use client';
/** Booking the next review, or taking the booking back. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/review.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { callsOf, type Desk } from '../desk-calls.ts';
import { FormFrame } from '../forms/form-frame.tsx';
import { useSubmit } from '../forms/use-submit.ts';

const fields: readonly Field[] = [
  { name: 'day', kind: 'day', about: 'Day' },
  { name: 'time', kind: 'text', maxLength: 5, nullable: true, about: 'Time' },
  { name: 'place', kind: 'text', maxLength: 120, nullable: true, about: 'Place' },
];

export interface BookingFormProps {
  readonly patientId: string;
  /** The booking the page shows; a colleague’s newer one is not overwritten. */
  readonly seen: string | null;
  readonly desk?: Desk;
}

export const BookingForm = ({ patientId, seen, desk = 'clinician' }: BookingFormProps) => {
  const router = useRouter();
  const submit = useSubmit('', 'booking-drop');
  const book = async (booking: Record<string, unknown>) => {
    await callsOf[desk].book.mutate({ patientId, booking, seen });
    router.refresh();
  };
  return (
    <div className="stack">
      <p className="soft">{say('booking.note')}</p>
      <FormFrame
        prefix="booking-"
        fields={fields}
        clearsTo={{}}
        label={seen === null ? say('booking.book') : say('booking.change')}
        taken="Booked."
        hints={{
          time: say('booking.time-hint'),
          place: say('booking.place-hint'),
        }}
        send={(value) => book({ time: null, place: null, ...value })}
      />
      <ErrorSummary problems={submit.problems} />
      {seen === null ? null : (
        <div className="row">
          <Button
            tone="quiet"
            id="booking-drop"
            onClick={() => void submit.send([], () => book({ day: null, time: null, place: null }))}
          >
            {say('booking.cancel')}
          </Button>
        </div>
      )}
    </div>
  );
};
