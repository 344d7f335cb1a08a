'use client';
/** Who looks at what a patient sends, when, and that nobody does at other times. */
import type { ReactNode } from 'react';
import type { Text } from '#messages/text.ts';
import { t, translate } from '#ui/language/words.ts';

export interface MonitoringHoursProps {
  readonly clinic: {
    readonly name: string;
    readonly phone: string;
    readonly emergencyNumber: string;
    readonly urgentNumber: string;
    readonly monitoringHours: Text;
  };
  /** What else is offered there. */
  readonly children?: ReactNode;
}

export const MonitoringHours = ({ clinic, children }: MonitoringHoursProps) => {
  const { name, phone, emergencyNumber, urgentNumber, monitoringHours } = clinic;
  return (
    <section className="monitoring-hours stack-close">
      <h2>{t('hours.title')}</h2>
      <p>{t('hours.who', { clinic: name })}</p>
      <p>{translate(monitoringHours)}</p>
      {children}
      <p>{t('hours.outside', { emergency: emergencyNumber })}</p>
      <p>{t('hours.nobody-answers', { clinic: name, urgent: urgentNumber })}</p>
      <p>{t('hours.phone', { phone })}</p>
    </section>
  );
};
