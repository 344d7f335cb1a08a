'use client';
/** Who looks at what a patient sends, when, and that nobody does at other times. */
import type { ReactNode } from 'react';
import { t } from '#ui/language/words.ts';

export interface MonitoringHoursProps {
  readonly clinic: {
    readonly name: string;
    readonly phone: string;
    readonly emergencyNumber: string;
    /** As the clinic wrote them. */
    readonly monitoringHours: string;
  };
  /** What else is offered there. */
  readonly children?: ReactNode;
}

export const MonitoringHours = ({ clinic, children }: MonitoringHoursProps) => {
  const { name, phone, emergencyNumber, monitoringHours } = clinic;
  return (
    <section className="monitoring-hours stack-close">
      <h2>{t('hours.title')}</h2>
      <p>{t('hours.who', { clinic: name })}</p>
      <p>{monitoringHours}</p>
      {children}
      <p>{t('hours.outside', { emergency: emergencyNumber })}</p>
      <p>{t('hours.phone', { phone })}</p>
    </section>
  );
};
