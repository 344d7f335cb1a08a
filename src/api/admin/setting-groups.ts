/** The clinic's settings by what a clinic thinks of when it looks for one; each stands in one group. */
import type { ClinicSetting } from '#core/sources/clinic-setting.ts';
import { every } from './every-setting.ts';

const idsByGroup = {
  people: [
    'care-team-restriction',
    'emergency-access-hours',
    'staff-two-factor',
    'invitation-days',
    'audit-retention-years',
    'record-retention-years',
  ],
  phone: [
    'ask-two-hours',
    'whole-sign-list',
    'late-morning-days',
    'morning-from-hour',
    'morning-to-hour',
    'old-page-days',
  ],
  calls: [
    'same-day-contact-hours',
    'routine-contact-hours',
    'contact-again-hours',
    'contact-again-most-emergency-hours',
    'contact-again-most-same-day-hours',
    'covering-clinician-after-hours',
    'worklist-missing-mornings',
    'mornings-over-top',
    'inflammatory-flare-days',
    'ease-backs-to-worklist',
  ],
  'strong-pain': [
    'severe-pain',
    'urgent-rise',
    'pause-pain',
    'pause-rise-pain',
    'pause-rise',
    'pause-morning-pain',
    'pause-repeat-rise',
  ],
  mornings: [
    'ease-back-rise',
    'later-morning-days',
    'stiffness-hold-offset',
    'stiffness-hold-factor',
    'stiffness-ease-offset',
    'stiffness-ease-factor',
    'effusion-test-days',
  ],
  usual: [
    'baseline-mornings',
    'baseline-expiry',
    'provisional-usual',
    'tighten-usual',
    'usual-rise',
    'stale-baseline-fall',
    'ceiling-over-usual',
  ],
  drift: ['signal-interval', 'signal-least-values', 'signal-inflation', 'signal-calm-mornings'],
  sessions: [
    'early-stop-percent',
    'reserve-shortfall',
    'overdone-percent',
    'overdone-repetitions',
    'missed-sessions',
    'adherence-percent',
    'gap-days',
    'gap-first-session',
    'injection-easier-days',
    'treatment-change-days',
  ],
  'steps-up': [
    'sessions-on-target',
    'repetition-step',
    'load-step-percent',
    'most-sets',
    'in-band-steps',
    'in-band-interval-days',
    'in-band-lock-days',
    'pre-approval-steps',
    'pre-approval-days',
  ],
  'steps-down': [
    'ease-volume-percent',
    'ease-floor-percent',
    'cut-interval-days',
    'after-flare-days',
    'return-within-days',
  ],
  easier: ['bad-day-sets', 'bad-day-reserve', 'variation-bad-day-sets', 'variation-bad-day-reserve'],
  'low-load': [
    'low-load-percent',
    'low-load-percent-floor',
    'low-load-percent-top',
    'low-load-sets',
    'low-load-repetitions-low',
    'low-load-repetitions-high',
    'low-load-reserve',
    'low-load-rest-seconds',
    'low-load-seconds-per-repetition',
    'low-load-sessions-per-week',
  ],
  variations: [
    'variation-sets',
    'variation-repetitions-low',
    'variation-repetitions-high',
    'variation-reserve',
    'variation-rest-seconds',
    'variation-seconds-per-repetition',
    'variation-sessions-per-week',
    'variation-largest-step-percent',
  ],
  holds: [
    'variation-holds-low',
    'variation-holds-high',
    'variation-hold-seconds',
    'variation-hold-most-seconds',
    'variation-hold-release-seconds',
    'hold-step-seconds',
  ],
  occlusion: [
    'occlusion-pressure-valid-days',
    'occlusion-readings-differ-mmhg',
    'occlusion-systolic-change-mmhg',
    'occlusion-circumference-change-cm',
    'wrap-tightness-target',
    'hold-occlusion-systolic',
    'hold-occlusion-diastolic',
  ],
  safety: ['screening-valid-days', 'blood-pressure-valid-days', 'hold-all-systolic', 'hold-all-diastolic'],
  week: ['same-muscle-rest-days', 'longest-session-minutes', 'exercise-change-seconds'],
  tests: ['rest-before-test-hours', 'older-adult-years', 'knee-hip-score-licence'],
  nutrition: [
    'lean-protein-low',
    'lean-protein-high',
    'energy-surplus-low',
    'energy-surplus-high',
    'surplus-zero-from-bmi',
    'lean-mass-bmi-min',
    'lean-mass-bmi-max',
    'lean-mass-share-min',
  ],
  charts: ['review-gap-days', 'review-trend-mornings', 'review-phase-mornings', 'review-few-pairs'],
  'rules-version': [
    'engine-version',
    'swap-rise',
    'swap-once',
    'tolerated-sessions',
    'flare-easier-days',
    'tolerated-cut-rise',
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type SettingGroupId = keyof typeof idsByGroup;

export interface SettingGroup {
  readonly id: SettingGroupId;
  readonly settings: readonly ClinicSetting[];
}

const byId = new Map(every.map((setting) => [setting.id, setting]));

export const settingGroups: readonly SettingGroup[] = Object.entries(idsByGroup).map(([id, ids]) => ({
  id: id as SettingGroupId,
  settings: ids.flatMap((one) => byId.get(one) ?? []),
}));
