/**
 * Before a session: what the answers given now, together with the morning's, leave of today. Only the
 * rules that speak of the state of the joint are read; nothing here changes the prescription.
 */
import type { SettingValues } from '../sources/clinic-setting.ts';
import type { Contact, Reason, Today } from './answers.ts';
import { mostCautious, reasonsFor, todayRank } from './decide.ts';
import type { Facts } from './facts/facts.ts';
import type { RuleId } from './rules/table.ts';
import { engineSettingValues } from './settings.ts';

const preSessionRules: ReadonlySet<string> = new Set<RuleId>([
  'R1',
  'P1',
  'P1x',
  'P2',
  'P3',
  'P3b',
  'W3',
  'W2',
  'W1s',
  'S1',
  'S2',
  'S2f',
  'S3',
  'T1',
  'T2',
  'F1',
  'F1i',
  'F2',
]);

/** Facts the gate reads; everything of the last session is left out. */
export type BeforeFacts = Pick<
  Facts,
  | 'painBefore'
  | 'usualPain'
  | 'usualPainTop'
  | 'painCeiling'
  | 'previousPeakEight'
  | 'swelling'
  | 'usualSwelling'
  | 'effusion'
  | 'effusionRun'
  | 'usualEffusion'
  | 'stiffnessMinutes'
  | 'usualStiffnessMinutes'
  | 'flareDays'
  | 'inflammatoryArthritis'
  | 'redFlags'
>;

export interface PreSessionCheck {
  readonly today: Today;
  readonly contact: Contact;
  readonly reasons: readonly Reason[];
  /** Questions to put before anything starts: the red flag questions always, pain where it is open. */
  readonly unanswered: readonly ('redFlags' | 'painBefore')[];
}

/** What the last session and the weeks before it said is not asked again at the door. */
const untouched: Omit<Facts, keyof BeforeFacts> = {
  painDuring: null,
  painAfter: null,
  painTwoHours: 'not-applicable',
  painNextMorning: null,
  painLaterMorning: 'not-applicable',
  morningPainMean7: null,
  previousMorningOverTop: false,
  twoOverBefore: false,
  morningsOverTop: 0,
  usualPainProvisional: false,
  usualPainRise: null,
  otherJointsFlared: 0,
  fatigueRise: null,
  repetitionsDonePercent: null,
  stopReason: 'none',
  reserveShortfall: 0,
  prescribedReserve: 0,
  sessionsOnTarget: 0,
  missedSessions14: 0,
  plannedSessions14: 0,
  gapDays: 0,
  extraPainRelief: false,
  treatmentChangeDays: null,
  overdone: false,
  gaveWay: false,
  baselineAgeDays: 0,
  baselineLatched: false,
  symptomSignal: false,
};

export const preSessionCheck = (before: BeforeFacts, settingValues?: SettingValues): PreSessionCheck => {
  const settings = engineSettingValues(settingValues);
  // The untouched facts go last: a caller may hand over whole facts, and the last session must not speak here.
  const reasons = reasonsFor({ ...before, ...untouched }, settings, (rule) => preSessionRules.has(rule.id));
  const { today, contact } = mostCautious(reasons.map((reason) => reason.effect));
  const unanswered: ('redFlags' | 'painBefore')[] = [];
  if (before.redFlags === null) unanswered.push('redFlags');
  if (before.painBefore === null) unanswered.push('painBefore');
  return { today: boundedByUnknown(today, unanswered), contact, reasons, unanswered };
};

/** Without the red flag answers nothing starts; with pain unknown only the easier session does. */
const boundedByUnknown = (today: Today, unanswered: PreSessionCheck['unanswered']): Today => {
  const bound: Today = unanswered.includes('redFlags')
    ? 'none'
    : unanswered.includes('painBefore')
      ? 'bad-day'
      : 'as-planned';
  return todayRank[bound] < todayRank[today] ? bound : today;
};
