/**
 * Before a session: what the answers given now, together with the morning's, leave of today. Only the
 * rules that speak of the state of the joint are read; nothing here changes the prescription.
 */
import type { ChoiceValues } from '../clinic-choice.ts';
import type { Joint } from '../joints.ts';
import type { PrescriptionVersion } from '../model/record.ts';
import type { Contact, Reason, Today } from './answers.ts';
import { engineChoiceValues } from './choices.ts';
import { mostCautious, reasonsFor, todayRank } from './decide.ts';
import type { Facts } from './facts.ts';
import type { RuleId } from './rules/table.ts';

export const gateRules: ReadonlySet<string> = new Set<RuleId>([
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

export interface BeforeGate {
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
  morningPainMean7: null,
  previousMorningOverTop: false,
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

export const beforeGate = (before: BeforeFacts, choiceValues?: ChoiceValues): BeforeGate => {
  const choices = engineChoiceValues(choiceValues);
  // The untouched facts go last: a caller may hand over whole facts, and the last session must not speak here.
  const reasons = reasonsFor({ ...before, ...untouched }, choices, (rule) => gateRules.has(rule.id));
  const { today, contact } = mostCautious(reasons.map((reason) => reason.effect));
  const unanswered: ('redFlags' | 'painBefore')[] = [];
  if (before.redFlags === null) unanswered.push('redFlags');
  if (before.painBefore === null) unanswered.push('painBefore');
  return { today: boundedByUnknown(today, unanswered), contact, reasons, unanswered };
};

/** Without the red flag answers nothing starts; with pain unknown only the easier session does. */
const boundedByUnknown = (today: Today, unanswered: BeforeGate['unanswered']): Today => {
  const bound: Today = unanswered.includes('redFlags')
    ? 'none'
    : unanswered.includes('painBefore')
      ? 'bad-day'
      : 'as-planned';
  return todayRank[bound] < todayRank[today] ? bound : today;
};

export type Offer = 'dose' | 'bad-day' | 'leave-out';

export interface LineOffer {
  readonly itemId: string;
  readonly offer: Offer;
}

const offerOf: Readonly<Record<Today, Offer>> = {
  none: 'leave-out',
  'rest-this-joint': 'leave-out',
  'bad-day': 'bad-day',
  'as-planned': 'dose',
};

const offerRank: Readonly<Record<Offer, number>> = { 'leave-out': 0, 'bad-day': 1, dose: 2 };

/** What is offered of each line, by the most cautious of its joints. A red flag leaves nothing. */
export const offeredSession = (
  versions: readonly Pick<PrescriptionVersion, 'itemId' | 'joints'>[],
  gates: ReadonlyMap<Joint, BeforeGate>,
): readonly LineOffer[] => {
  const stopped = [...gates.values()].some(
    (gate) => gate.unanswered.includes('redFlags') || gate.reasons.some((reason) => reason.rule === 'R1'),
  );
  return versions.map(({ itemId, joints }) => {
    let offer: Offer = stopped ? 'leave-out' : 'dose';
    for (const joint of joints) {
      const gate = gates.get(joint);
      if (gate && offerRank[offerOf[gate.today]] < offerRank[offer]) offer = offerOf[gate.today];
    }
    return { itemId, offer };
  });
};

/**
 * What is left of a session that was stopped under way. For a red flag: nothing. For the joint: the
 * lines that do not load it, as they were offered; the stopped one is not taken up again that day.
 */
export const afterStop = (
  offers: readonly LineOffer[],
  versions: readonly Pick<PrescriptionVersion, 'itemId' | 'joints'>[],
  stop: { readonly because: 'red-flag' } | { readonly because: 'joint'; readonly joints: readonly Joint[] },
): readonly LineOffer[] => {
  if (stop.because === 'red-flag') return offers.map(({ itemId }) => ({ itemId, offer: 'leave-out' }));
  const loads = new Map(versions.map(({ itemId, joints }) => [itemId, joints]));
  return offers.map((one) =>
    loads.get(one.itemId)?.some((joint) => stop.joints.includes(joint)) === false
      ? one
      : { itemId: one.itemId, offer: 'leave-out' },
  );
};
