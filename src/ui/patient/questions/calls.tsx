/** Whom to ring about a warning sign, each number one touch away. */
import type { TodayView } from '#api/patient/today-view.ts';
import { LinkButton } from '#ui/design-system/button.tsx';
import { RingText, telephone } from '#ui/language/ring-text.tsx';
import { t } from '#ui/language/words.ts';
import type { FlagClass } from './flag-list.ts';

const Calls = ({ clinic, isEmergency }: { clinic: TodayView['clinic']; isEmergency: boolean }) => {
  const call = (number: string, text: string, isFirst: boolean) => (
    <LinkButton key={text} href={telephone(number)} tone={isFirst ? 'stop' : 'plain'} isLarge isWide>
      {text}
    </LinkButton>
  );
  const emergency = call(
    clinic.emergencyNumber,
    t('care.call-emergency', { emergency: clinic.emergencyNumber }),
    isEmergency,
  );
  const own = call(
    clinic.phone,
    t('care.call-clinic', { clinic: clinic.name, phone: clinic.phone }),
    !isEmergency,
  );
  const urgent = call(clinic.urgentNumber, t('care.call-urgent', { urgent: clinic.urgentNumber }), false);
  const isSame = clinic.urgentNumber === clinic.emergencyNumber;
  if (isEmergency) return <div className="actions">{[emergency, own]}</div>;
  return <div className="actions">{isSame ? [own, emergency] : [own, urgent, emergency]}</div>;
};

/** What to do at once, without a network, by the most urgent class told. */
export const Advice = ({
  level,
  clinic,
}: {
  readonly level: FlagClass;
  readonly clinic: TodayView['clinic'];
}) => (
  <>
    <p className="large">
      <RingText
        text={t(`care.${level}`, { phone: clinic.phone, emergency: clinic.emergencyNumber })}
        clinic={clinic}
      />
    </p>
    {level === 'emergency' ? null : (
      <p className="large">
        <RingText
          text={t('hours.nobody-answers', { clinic: clinic.name, urgent: clinic.urgentNumber })}
          clinic={clinic}
        />
      </p>
    )}
    <Calls clinic={clinic} isEmergency={level === 'emergency'} />
  </>
);
