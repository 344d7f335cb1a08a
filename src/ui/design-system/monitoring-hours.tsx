'use client';
/** Who looks at what a patient sends, when, and that nobody does at other times. */
import type { ReactNode } from 'react';
import type { Text } from '#messages/text.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { t, translate } from '#ui/language/words.ts';

export interface MonitoringHoursProps {
  readonly clinic: {
    readonly name: string;
    readonly phone: string;
    readonly emergencyNumber: string;
    readonly urgentNumber: string;
    readonly monitoringHours: Text;
  };
  /** With the least one has to know, and the rest on a press. */
  readonly isFolded?: boolean;
  /** What else is offered there. */
  readonly children?: ReactNode;
}

const Hours = ({ clinic, children }: MonitoringHoursProps) => {
  const { name, phone, emergencyNumber, urgentNumber, monitoringHours } = clinic;
  const lines = [
    t('hours.outside', { emergency: emergencyNumber }),
    t('hours.nobody-answers', { clinic: name, urgent: urgentNumber }),
    t('hours.phone', { phone }),
  ];
  return (
    <>
      <p>{t('hours.who', { clinic: name })}</p>
      <p>{translate(monitoringHours)}</p>
      {children}
      {lines.map((text) => (
        <p key={text}>
          <RingText text={text} clinic={clinic} />
        </p>
      ))}
    </>
  );
};

export const MonitoringHours = (props: MonitoringHoursProps) =>
  props.isFolded ? (
    <section className="stack-close">
      <Disclosure summary={t('hours.not-at-once')}>
        <Hours {...props} />
      </Disclosure>
      <p>
        <RingText
          text={t('hours.emergency', { emergency: props.clinic.emergencyNumber })}
          clinic={props.clinic}
        />
      </p>
    </section>
  ) : (
    <section className="monitoring-hours stack-close">
      <h2>{t('hours.title')}</h2>
      <Hours {...props} />
    </section>
  );
