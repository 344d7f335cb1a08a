'use client';
/** Booking the next review, or taking the booking back. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/review.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../client.ts';
import { callsFor, type Desk } from '../desk-calls.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { bookReview } from '../forms/sent/review.ts';
import { orNone } from '../forms/sent/sent-form.ts';
import { useSubmit } from '../forms/use-submit.ts';

export interface BookingFormProps {
  readonly patientId: string;
  /** The booking the page shows; a colleague’s newer one is not overwritten. */
  readonly seen: string | null;
  readonly desk?: Desk;
}

export const BookingForm = ({ patientId, seen, desk = 'clinician' }: BookingFormProps) => {
  const router = useRouter();
  const submit = useSubmit('', 'booking-drop');
  const takeBack = async () => {
    const booking = { when: null, place: null };
    await callsFor(client)[desk].book.mutate({ patientId, booking, seen });
    router.refresh();
  };
  return (
    <div className="stack">
      <p className="soft">{say('booking.note')}</p>
      <SentFrame
        sent={bookReview}
        about={{ patientId, desk, seen: orNone(seen) }}
        clearsTo={{}}
        label={seen === null ? say('booking.book') : say('booking.change')}
        hints={{
          place: say('booking.place-hint'),
        }}
        onTaken={router.refresh}
      />
      <ErrorSummary problems={submit.problems} />
      {seen === null ? null : (
        <div className="row">
          <Button tone="quiet" id="booking-drop" onClick={() => void submit.send([], takeBack)}>
            {say('booking.cancel')}
          </Button>
        </div>
      )}
    </div>
  );
};
