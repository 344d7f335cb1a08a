/**
 * Nine types of invented people. What a type shares with the others stands in `joint-settings.ts`. Figures on
 * record: flares of osteoarthritis 0.06 to 0.08 a week, median 5 to 8 days (Thomas 2021, Parry 2020); of
 * rheumatoid arthritis 0.12 a week, median 7 days, many far longer (Bykerk 2014, a flare register of 2016);
 * answers left out 15 % (Ono 2019), sessions 10 to 35 % (home quadriceps work, hidden counter). Scatter and
 * likeness are from memory of diary studies. Everything else about a type is invented.
 */
export interface PersonType {
  readonly id: string;
  readonly title: string;
  /** Usual pain at the start lies between these, 0–10. Invented. */
  readonly usualPain: readonly [number, number];
  /** Day-to-day deviation of pain. Memory. */
  readonly scatter: number;
  /** Likeness of neighbouring days, 0–1. Memory. */
  readonly likeness: number;
  /** Flares begun a week, by themselves. */
  readonly flaresPerWeek: number;
  /** Median length of a flare, days. */
  readonly flareDays: number;
  /** Spread of flare lengths on the log scale. */
  readonly flareSpread: number;
  /** Points a flare adds. */
  readonly flareRise: number;
  readonly inflammatory: boolean;
  /** Middle of the tolerances people start with, as a share of the first dose. Invented. */
  readonly tolerance: number;
  /** Spread of tolerances between people on the log scale. Invented. */
  readonly toleranceSpread: number;
  /** Points for 100 % over tolerance, against the usual joint's. Invented. */
  readonly overload: number;
  readonly morningsLeftOut: number;
  readonly sessionsLeftOut: number;
  /** Share of sessions in which more is done than planned. Invented. */
  readonly overdone: number;
  /** Points a week by which the disease raises usual pain; tolerance falls with it. Invented. */
  readonly creep: number;
}

const steady: PersonType = {
  id: 'steady',
  title: 'Osteoarthritis, steady',
  usualPain: [1.5, 3.5],
  scatter: 0.8,
  likeness: 0.4,
  flaresPerWeek: 0.07,
  flareDays: 6,
  flareSpread: 0.7,
  flareRise: 3,
  inflammatory: false,
  tolerance: 1.3,
  toleranceSpread: 0.2,
  overload: 1,
  morningsLeftOut: 0.1,
  sessionsLeftOut: 0.1,
  overdone: 0,
  creep: 0,
};

export const personTypes: readonly PersonType[] = [
  steady,
  { ...steady, id: 'scatter', title: 'Much scatter', scatter: 1.4, likeness: 0.3 },
  { ...steady, id: 'high', title: 'Usual pain 5 to 6.5', usualPain: [5, 6.5], tolerance: 1.25 },
  { ...steady, id: 'flaring', title: 'Frequent flares', flaresPerWeek: 0.28 },
  {
    ...steady,
    id: 'inflammatory',
    title: 'Inflammatory arthritis',
    flaresPerWeek: 0.12,
    flareDays: 7,
    flareSpread: 1.1,
    flareRise: 3.5,
    inflammatory: true,
  },
  {
    ...steady,
    id: 'fragile',
    title: 'Joint that answers early to load',
    tolerance: 0.9,
    toleranceSpread: 0.1,
    overload: 1.6,
  },
  { ...steady, id: 'forgetful', title: 'Many answers left out', morningsLeftOut: 0.35, sessionsLeftOut: 0.2 },
  { ...steady, id: 'eager', title: 'Does more than planned', overdone: 0.4, tolerance: 1 },
  { ...steady, id: 'creeping', title: 'Disease that creeps', creep: 0.25 },
];
