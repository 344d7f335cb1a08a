/** Where marks of the summary's picture stand. */
import { type Day, daysBetween } from '#core/time/day.ts';
import type { SummaryAnswer } from '../answers.ts';
import { type StepName, stepNames } from '../step-names.ts';

export type Picture = NonNullable<SummaryAnswer['picture']>;

export const left = 44;
export const width = 620;
export const plotEnd = 520;
const doseTop = 22;
const doseFoot = 92;
export const painTop = 124;
export const perPoint = 11;

const round = (value: number): number => Math.round(value * 10) / 10;

export const scales = ({ since, today, steps, waitingShare }: Picture) => {
  const span = Math.max(1, daysBetween(since, today));
  const shares = [
    ...steps.flatMap(({ share }) => share ?? []),
    ...(waitingShare === null ? [] : [waitingShare]),
  ];
  const low = Math.min(1, ...shares);
  const high = Math.max(1, ...shares);
  const range = Math.max(0.2, high - low);
  return {
    x: (day: Day) => round(left + (daysBetween(since, day) / span) * (plotEnd - left)),
    dose: (share: number) => round(doseFoot - ((share - low) / range) * (doseFoot - doseTop)),
    pain: (value: number) => painTop + value * perPoint,
  };
};

export type Scales = ReturnType<typeof scales>;

const perLetter = 6;

/** A name that would stand on another is left out; the review names every step. */
export const namedSteps = ({ steps }: Picture, { x, dose }: Scales): readonly StepName[] =>
  stepNames({ steps, x: ({ from }) => x(from), y: dose, from: left, to: plotEnd, perLetter });
