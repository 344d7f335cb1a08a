/** A row of the trial as a JSON line, and as a line of a table. */
import type { TrialRow } from '#simulation/trial/trial.ts';

const shareInPercent = (part: number, whole: number): number | null =>
  whole === 0 ? null : (100 * part) / whole;

/** Unrounded; rounding is for the table. */
export const jsonLine = ({ arm, type, weeks, outcomes, medianFinalDose }: TrialRow): string => {
  const { decisionsInFlare, progressInFlare, ...told } = outcomes;
  const progressInFlarePercent = shareInPercent(progressInFlare, decisionsInFlare);
  return JSON.stringify({ arm, type, weeks, ...told, medianFinalDose, progressInFlarePercent });
};

const cell = (value: number, decimals: number, width: number): string =>
  value.toFixed(decimals).padStart(width);

export const tableHead = [
  'arm              type          dose (median)  strength %  bad days  by load  flare  stopped/easier  actions (signed calls same-day usual)  cuts false  raised bad  progress in flare',
  '                               start = 1                  of days',
];

export const tableLine = ({ arm, type, outcomes, medianFinalDose }: TrialRow): string => {
  const o = outcomes;
  const inFlare = shareInPercent(o.progressInFlare, o.decisionsInFlare);
  return [
    arm.padEnd(16),
    type.padEnd(12),
    `${cell(o.finalDose, 2, 5)} (${medianFinalDose.toFixed(2)})`.padStart(13),
    cell(o.strengthPercent, 1, 11),
    cell(o.badDays, 1, 9),
    cell(o.loadCausedBadDays, 2, 8),
    cell(o.flareDays, 1, 6),
    `${cell(o.stoppedSessions, 1, 7)} / ${o.easierSessions.toFixed(1)}`.padEnd(15),
    `${cell(o.clinicianActions, 1, 8)} (${[o.signed, o.contacts, o.sameDayContacts, o.baselines].map((n) => n.toFixed(1)).join(' ')})`.padEnd(
      39,
    ),
    cell(o.cuts, 1, 4),
    cell(o.falseCuts, 1, 5),
    cell(o.raisesOnBadDays, 2, 11),
    inFlare === null ? '  –' : `${cell(inFlare, 1, 6)} %`,
  ].join(' ');
};
