/** What the clinic tells: changes with their reasons, and messages; what is not new is a closed line. */
import type { TodayView } from '#api/patient/today-view.ts';
import type { Text } from '#messages/text.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { clockTimeText, dayText, instantDayText } from '#ui/language/text-of-time.ts';
import type { DayView } from '../view-on-day.ts';
import { t, translate } from '../words.ts';

const Changes = ({ title, changes = [] }: { readonly title: string; readonly changes?: readonly Text[] }) =>
  changes.length === 0 ? null : (
    <section className="stack-close">
      <h2>{title}</h2>
      {changes.map((text) => (
        <p key={text.en}>{translate(text)}</p>
      ))}
    </section>
  );

const MessageList = ({ messages, clinic }: Pick<TodayView, 'messages' | 'clinic'>) =>
  messages.map((message) => (
    <blockquote className="message" key={message.sentAt}>
      <p>
        <RingText text={translate(message.text)} clinic={clinic} />
      </p>
      <footer className="soft" suppressHydrationWarning>
        {t('today.message-from', { name: message.sentName, date: instantDayText(message.sentAt) })}
      </footer>
    </blockquote>
  ));

/** As booked: what was not said of it is left out. On a page kept from before it, an old one is not shown. */
const Appointment = ({ view: { appointment, clinic, clinicDay } }: { readonly view: DayView }) => {
  if (!appointment || appointment.day < clinicDay) return null;
  const { day, time, place } = appointment;
  const when = [dayText(day), time && clockTimeText(time), place].filter(Boolean).join(', ');
  return (
    <p>
      <RingText text={t('today.appointment', { when })} clinic={clinic} />
    </p>
  );
};

export const Told = ({ view }: { readonly view: DayView }) => {
  const present = view.messages.filter(({ isOfEarlierPlan }) => !isOfEarlierPlan);
  return (
    <>
      <Appointment view={view} />
      <Changes title={t('today.changes')} changes={view.changes} />
      <Changes title={t('today.changes-only')} changes={view.changesWithoutWhy} />
      {present.length > 0 ? (
        <section className="stack-close">
          <h2>{t('today.messages')}</h2>
          <MessageList messages={present} clinic={view.clinic} />
        </section>
      ) : null}
    </>
  );
};

export const ToldBefore = ({ view }: { readonly view: DayView }) => {
  const earlier = view.messages.filter(({ isOfEarlierPlan }) => isOfEarlierPlan);
  return (
    <>
      {view.exercises.length > 0 && view.unchanged && view.unchanged.length > 0 ? (
        <Disclosure summary={t('today.unchanged')}>
          {view.unchanged.map((text) => (
            <p key={text.en}>{translate(text)}</p>
          ))}
        </Disclosure>
      ) : null}
      {earlier.length > 0 ? (
        <Disclosure summary={t('today.messages-earlier')}>
          <MessageList messages={earlier} clinic={view.clinic} />
        </Disclosure>
      ) : null}
    </>
  );
};
