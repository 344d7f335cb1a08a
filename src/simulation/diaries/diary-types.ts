/**
 * Types of invented patients and how their joint behaves. Symptoms here do not depend on the load: the
 * simulation shows what the rules do with scatter, flares and missed answers, not whether loading helps.
 * Every figure is invented and named, none is fitted to people.
 */
export interface DiaryType {
  readonly id: string;
  readonly title: string;
  /** Mean of morning pain outside a flare, 0–10. */
  readonly usualPain: number;
  /** Day-to-day deviation of it. */
  readonly scatter: number;
  /** Likeness of neighbouring days, 0–1. */
  readonly likeness: number;
  /** Flares begun a week. */
  readonly flaresPerWeek: number;
  /** Median length of a flare, days. */
  readonly flareDays: number;
  /** Points a flare adds. */
  readonly flareRise: number;
  /** Share of answers left out. */
  readonly missed: number;
  /** Points a session adds while it lasts. */
  readonly sessionRise: number;
  readonly inflammatory: boolean;
}

const calm = {
  scatter: 0.6,
  likeness: 0.4,
  flaresPerWeek: 0.06,
  flareDays: 5,
  flareRise: 3,
  missed: 0.03,
  sessionRise: 0.6,
  inflammatory: false,
} as const;

export const diaryTypes: readonly DiaryType[] = [
  { ...calm, id: 'quiet-joint', title: 'Low pain, little scatter', usualPain: 1 },
  { ...calm, id: 'moderate-pain', title: 'Moderate pain, little scatter', usualPain: 3 },
  { ...calm, id: 'moderate-scatter', title: 'Moderate pain, much scatter', usualPain: 3, scatter: 1.3 },
  { ...calm, id: 'pain-near-ceiling', title: 'Usual pain of 5, at the ceiling', usualPain: 5 },
  { ...calm, id: 'pain-over-ceiling', title: 'Usual pain of 6, over the ceiling', usualPain: 6 },
  { ...calm, id: 'flaring', title: 'Frequent flares', usualPain: 2, flaresPerWeek: 0.25 },
  {
    ...calm,
    id: 'inflammatory',
    title: 'Inflammatory, long flares',
    usualPain: 2,
    flaresPerWeek: 0.08,
    flareDays: 14,
    inflammatory: true,
  },
  { ...calm, id: 'forgetful', title: 'Many answers left out', usualPain: 2, missed: 0.2 },
];
