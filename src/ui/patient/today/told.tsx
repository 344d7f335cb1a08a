/** What the clinic tells: changes with their reasons, and messages. */
import type { TodayView } from '#api/patient/today-view.ts';
import { instantDayText } from '#ui/language/text-of-time.ts';
import { t, translate } from '../words.ts';

export const Told = ({ view }: { readonly view: TodayView }) => (
  <>
    {view.changes.length > 0 ? (
      <section className="stack-close">
        <h2>{t('today.changes')}</h2>
        {view.changes.map((text) => (
          <p key={text.en}>{translate(text)}</p>
        ))}
      </section>
    ) : null}
    {view.messages.length > 0 ? (
      <section className="stack-close">
        <h2>{t('today.messages')}</h2>
        {view.messages.map((message) => (
          <blockquote className="message" key={message.sentAt}>
            <p>{translate(message.text)}</p>
            <footer className="soft" suppressHydrationWarning>
              {t('today.message-from', { name: message.sentName, date: instantDayText(message.sentAt) })}
            </footer>
          </blockquote>
        ))}
      </section>
    ) : null}
  </>
);
