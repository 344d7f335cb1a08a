/** What a new clinic has to settle before its first patient: each job open or done as the record says now. */
import type { MonitoringHours } from '../episode/monitoring-hours.ts';

export interface ClinicStart {
  readonly name: string;
  readonly phone: string;
  /** Null until it is entered. */
  readonly urgentNumber: string | null;
  readonly monitoringHours: MonitoringHours;
  /** Whoever is named, and whether that person still works here. */
  readonly coveringClinician: { readonly name: string; readonly isActive: boolean } | null;
  /** Clinicians who can sign in. */
  readonly clinicians: number;
  /** Consents whose wording the clinic wrote or took over, of all. */
  readonly ownWordings: number;
  readonly wordings: number;
}

type ClinicNumber = 'name' | 'phone' | 'urgent-number';

export type FirstDayJob =
  | { readonly job: 'second-clinician'; readonly isDone: boolean; readonly clinicians: number }
  | {
      readonly job: 'covering-clinician';
      readonly isDone: boolean;
      readonly state: 'nobody' | 'left' | 'named';
      readonly name: string | null;
    }
  | { readonly job: 'clinic-numbers'; readonly isDone: boolean; readonly missing: readonly ClinicNumber[] }
  | { readonly job: 'monitoring-hours'; readonly isDone: boolean }
  | {
      readonly job: 'consent-wording';
      readonly isDone: boolean;
      readonly own: number;
      readonly all: number;
    };

const covering = ({ coveringClinician: named }: ClinicStart) =>
  named === null ? 'nobody' : named.isActive ? 'named' : 'left';

const missingIn = (start: ClinicStart): readonly ClinicNumber[] => [
  ...(start.name.trim() === '' ? (['name'] as const) : []),
  ...(start.phone.trim() === '' ? (['phone'] as const) : []),
  ...((start.urgentNumber ?? '').trim() === '' ? (['urgent-number'] as const) : []),
];

/** In the order in which one leads to the next. */
export const firstDayList = (start: ClinicStart): readonly FirstDayJob[] => {
  const missing = missingIn(start);
  const state = covering(start);
  const { clinicians, ownWordings: own, wordings: all } = start;
  return [
    { job: 'clinic-numbers', isDone: missing.length === 0, missing },
    { job: 'monitoring-hours', isDone: start.monitoringHours.length > 0 },
    { job: 'second-clinician', isDone: clinicians >= 2, clinicians },
    {
      job: 'covering-clinician',
      isDone: state === 'named',
      state,
      name: start.coveringClinician?.name ?? null,
    },
    { job: 'consent-wording', isDone: own >= all, own, all },
  ];
};
