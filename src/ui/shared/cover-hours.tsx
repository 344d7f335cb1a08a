'use client';
/** Who looks at what a patient sends, when, and that nobody does at other times. */
import type { ReactNode } from 'react';
import { say } from '#ui/words.ts';

export interface CoverHoursProps {
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

export const CoverHours = ({ clinic, children }: CoverHoursProps) => {
  const { name, phone, emergencyNumber, monitoringHours } = clinic;
  return (
    <section className="cover stack-close">
      <h2>{say('today.cover-title')}</h2>
      <p>{say('today.cover', { clinic: name })}</p>
      <p>{monitoringHours}</p>
      {children}
      <p>{say('today.cover-else', { emergency: emergencyNumber })}</p>
      <p>{say('today.cover-phone', { phone })}</p>
    </section>
  );
};
