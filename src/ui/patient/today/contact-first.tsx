/** What is said before anything that can be begun: how warning signs and pauses stand, and whom to ring. */
import type { TodayView } from '#api/patient/today-view.ts';
import { Notice } from '#ui/design-system/notice.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { t, translate } from '../words.ts';

interface OfView {
  readonly view: Pick<TodayView, 'clinic' | 'contact' | 'danger'>;
}

const Danger = ({ view: { danger, clinic } }: OfView) =>
  danger
    .map(translate)
    .map((text) => <Notice key={text} tone="danger" title={<RingText text={text} clinic={clinic} />} />);

/** Whom to ring, and what to do when nobody answers there. */
export const RingNotice = ({
  clinic,
  text,
  isUrgent = true,
}: Pick<OfView['view'], 'clinic'> & { readonly text: string; readonly isUrgent?: boolean }) => (
  <Notice tone={isUrgent ? 'danger' : 'care'} title={<RingText text={text} clinic={clinic} />}>
    <p>
      <RingText
        text={t('hours.nobody-answers', { clinic: clinic.name, urgent: clinic.urgentNumber })}
        clinic={clinic}
      />
    </p>
  </Notice>
);

const Contact = ({ view: { contact, clinic } }: OfView) => {
  if (contact === 'none') return null;
  const { name, phone, emergencyNumber } = clinic;
  const text = t(`today.contact-${contact}`, { clinic: name, phone, emergency: emergencyNumber });
  return contact === 'same-day' ? (
    <RingNotice clinic={clinic} text={text} />
  ) : (
    // Nothing is to be rung in its place where the clinic will ring, nor where an ambulance is called.
    <Notice
      tone={contact === 'routine' ? 'care' : 'danger'}
      title={<RingText text={text} clinic={clinic} />}
    />
  );
};

export const ContactFirst = (props: OfView) => (
  <>
    <Danger {...props} />
    <Contact {...props} />
  </>
);
