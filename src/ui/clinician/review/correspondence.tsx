/** What was written each way, and when the next review is. */
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { type ClinicClock, momentInWords } from '../when.ts';
import { BookingForm } from './booking-form.tsx';
import { MessageForm } from './message-form.tsx';
import type { ReviewProps } from './review-props.ts';

interface Written {
  readonly id: string;
  readonly text: string;
  readonly at: number;
  readonly by: string;
}

/** Both ways in one list, newest first. */
const lettersOf = ({ messages, patientMessages }: ReviewProps['review']): readonly Written[] =>
  [
    ...messages.map(({ id, text, sentAt, sentName }) => ({ id, text, at: sentAt, by: sentName })),
    ...patientMessages.map(({ id, text, recordedAt, byName }) => ({
      id,
      text,
      at: recordedAt,
      by: say('message.from-patient', { name: byName }),
    })),
  ].sort((a, b) => b.at - a.at);

const Letter = ({ letter, clock }: { readonly letter: Written; readonly clock: ClinicClock }) => (
  <li>
    {letter.text}{' '}
    <span className="soft">
      {letter.by}, {momentInWords(letter.at, clock)}
    </span>
  </li>
);

export const Correspondence = ({ patient, review, clock }: ReviewProps) => (
  <section className="stack-close screen-only" id="messages">
    <h2>Messages</h2>
    <Disclosure summary={say('message.write')}>
      <MessageForm patientId={patient.id} ready={review.ready} />
    </Disclosure>
    <ul className="plain-list stack-close">
      {lettersOf(review).map((letter) => (
        <Letter key={letter.id} letter={letter} clock={clock} />
      ))}
    </ul>
  </section>
);

export const NextReview = ({ patient, review, day }: ReviewProps) => {
  const { booking } = review;
  return (
    <section className="stack-close screen-only" id="next-review">
      <h2>{say('next')}</h2>
      <p>
        {booking
          ? say('next.booked', {
              when: [dayInWords(booking.day, day), booking.time, booking.place].filter(Boolean).join(', '),
              name: booking.byName,
            })
          : say('next.none')}
      </p>
      <Disclosure summary={booking ? say('next.change') : say('next.book')}>
        <BookingForm patientId={patient.id} seen={booking?.id ?? null} />
      </Disclosure>
    </section>
  );
};
