/**
 * Works the plan out from the record. Pure; what lapses by time is found at each reading, what was recorded is
 * looked at again inside its own transaction. Every cause takes away and none gives back (`tests/core/plan`).
 */

import { testFrom } from '../assessment/strength/test-to-failure.ts';
import {
  holdsBack,
  type PauseState,
  pausesAt,
  type SignState,
  signStatesAt,
} from '../danger/danger-state.ts';
import type { Contact } from '../decision/answers.ts';
import { contactRank, mostCautious, todayRank } from '../decision/decide.ts';
import { type DecisionInForce, decisionsInForce } from '../decision/decisions-in-force.ts';
import { endedByOwn } from '../decision/dose/limits.ts';
import type { Effect } from '../decision/rules/rule.ts';
import { suspensionOn } from '../episode/suspensions.ts';
import type { Joint } from '../exercises/joints.ts';
import type { PrescriptionVersion } from '../record/record.ts';
import { injectionReasons } from './after-injection.ts';
import { asksOf, isReached } from './asks.ts';
import { closedByFindings } from './findings.ts';
import { gapReason } from './gap.ts';
import { machineReason } from './machine-gone.ts';
import type { Plan, PlanItem, PlanReason } from './plan.ts';
import type { PlanInputs } from './plan-inputs.ts';
import { comingStops, loweredByLimits, type WithinLimits, withinLimits } from './within-limits.ts';

export type { PlanInputs } from './plan-inputs.ts';

interface Cause {
  readonly reason: PlanReason;
  readonly effect: Effect;
}

const stop = { decision: 'pause', today: 'none' } as const;
const rest = { decision: 'hold', today: 'rest-this-joint' } as const;

interface Standing {
  readonly open: readonly SignState[];
  readonly pauses: readonly PauseState[];
  readonly joints: ReadonlyMap<Joint, DecisionInForce>;
  /** The same of each of the person's other records. */
  readonly jointsBeside: readonly ReadonlyMap<Joint, DecisionInForce>[];
}

const signCauses = ({ open }: Standing): readonly Cause[] =>
  open.map(({ sign }) => ({
    reason: { code: 'warning-sign', today: 'none', signId: sign.id },
    effect: { ...stop, contact: sign.urgency },
  }));

const pauseCauses = ({ pauses }: Standing, version: PrescriptionVersion): readonly Cause[] =>
  pauses
    .filter((one) => holdsBack(one, version))
    .map(({ pause }) => ({ reason: { code: 'paused', today: 'none', pauseId: pause.id }, effect: stop }));

const decisionCauses = ({ joints, jointsBeside }: Standing, version: PrescriptionVersion): readonly Cause[] =>
  version.joints.flatMap((joint) =>
    [joints, ...jointsBeside].flatMap((each): readonly Cause[] => {
      const found = each.get(joint);
      if (!found) return [];
      const { decision, largestStep, today, contact, decisionId } = found;
      const effect = { decision, today, contact, ...(largestStep ? { largestStep } : {}) };
      return [{ reason: { code: 'decision', today, decisionId, joint }, effect }];
    }),
  );

const careCauses = (inputs: PlanInputs, version: PrescriptionVersion): readonly Cause[] =>
  [inputs.care, ...(inputs.beside ?? []).map(({ care }) => care)].flatMap((care) => {
    const suspension = suspensionOn(care, version.dose);
    return suspension ? [{ reason: { code: suspension.code, today: suspension.today }, effect: rest }] : [];
  });

const findingCauses = (inputs: PlanInputs, version: PrescriptionVersion): readonly Cause[] =>
  [inputs.screened, ...(inputs.beside ?? []).map(({ screened }) => screened)].flatMap((screened) => {
    const found = closedByFindings(screened, version);
    return found ? [{ reason: found, effect: rest }] : [];
  });

const limitCauses = ({ reasons }: WithinLimits): readonly Cause[] =>
  reasons.map((reason) => ({ reason, effect: { decision: 'hold', today: reason.today } }));

const newsCauses = ({ newsToday, beside }: PlanInputs, { dose }: PrescriptionVersion): readonly Cause[] =>
  (newsToday || beside?.some((one) => one.newsToday)) && dose.method === 'occlusion'
    ? [{ reason: { code: 'news-today', today: 'none' }, effect: { today: 'none' } }]
    : [];

const gapCauses = (inputs: PlanInputs, version: PrescriptionVersion): readonly Cause[] => {
  const days = [inputs, ...(inputs.beside ?? [])].flatMap(({ lastSessionOn }) => lastSessionOn ?? []);
  const reason = gapReason({ ...inputs, lastSessionOn: days.sort().at(-1) ?? null }, version);
  return reason ? [{ reason, effect: { decision: 'hold', today: reason.today } }] : [];
};

const injectionCauses = (inputs: PlanInputs, version: PrescriptionVersion): readonly Cause[] =>
  [inputs.care, ...(inputs.beside ?? []).map(({ care }) => care)]
    .flatMap((care) => injectionReasons({ ...inputs, care }, version))
    .map((reason) => ({ reason, effect: { decision: 'hold', today: reason.today } }));

/** The latest of all records of the person. */
const lastLoaded = ({ lastLoadedAt, beside = [] }: PlanInputs, joints: readonly Joint[]): number | null =>
  [lastLoadedAt, ...beside.map((one) => one.lastLoadedAt)]
    .flatMap((each) => joints.flatMap((joint) => each.get(joint) ?? []))
    .reduce<number | null>((a, b) => (a === null || b > a ? b : a), null);

const itemFor = (inputs: PlanInputs, standing: Standing, version: PrescriptionVersion): PlanItem => {
  const within = withinLimits(version, inputs.limits, inputs, inputs.at.day);
  const gone = machineReason(inputs, version);
  const causes: readonly Cause[] = [
    ...signCauses(standing),
    ...pauseCauses(standing, version),
    ...decisionCauses(standing, version),
    ...careCauses(inputs, version),
    ...findingCauses(inputs, version),
    ...limitCauses(within),
    ...(gone ? [{ reason: gone, effect: rest }] : []),
    ...newsCauses(inputs, version),
    ...gapCauses(inputs, version),
    ...injectionCauses(inputs, version),
  ];
  return {
    itemId: version.itemId,
    prescriptionId: version.id,
    exerciseId: version.dose.exerciseId,
    joints: version.joints,
    dose: gone ? null : within.dose,
    easierSession: gone ? null : within.easierSession,
    testFrom: testFrom(lastLoaded(inputs, version.joints), inputs.settings),
    ...mostCautious(causes.map(({ effect }) => effect)),
    reasons: causes
      .map(({ reason }) => reason)
      .filter(({ today }) => today !== 'as-planned')
      .toSorted((a, b) => todayRank[a.today] - todayRank[b.today]),
  };
};

const mostUrgent = (all: readonly Contact[]): Contact =>
  all.reduce<Contact>((a, b) => (contactRank[b] < contactRank[a] ? b : a), 'none');

/** Danger and limits of all records of the person together. */
const together = (inputs: PlanInputs): Pick<PlanInputs, 'danger' | 'limits'> => {
  const all = [inputs, ...(inputs.beside ?? [])];
  return {
    danger: {
      signs: all.flatMap(({ danger }) => danger.signs),
      acknowledgements: all.flatMap(({ danger }) => danger.acknowledgements),
      contacts: all.flatMap(({ danger }) => danger.contacts),
      pauses: all.flatMap(({ danger }) => danger.pauses),
      resumptions: all.flatMap(({ danger }) => danger.resumptions),
    },
    limits: all.length === 1 ? inputs.limits : all.flatMap(({ limits }) => endedByOwn(limits)),
  };
};

export const planFor = (own: PlanInputs): Plan => {
  const inputs = { ...own, ...together(own) };
  const { danger, at, settings } = inputs;
  const signs = signStatesAt(danger, at.instant, settings);
  const standing: Standing = {
    open: signs.filter(({ endedBy }) => endedBy === null),
    pauses: pausesAt(danger, signs, at.instant),
    joints: decisionsInForce(inputs.decisions, inputs.answers, at.day),
    jointsBeside: (inputs.beside ?? []).map((one) => decisionsInForce(one.decisions, one.answers, at.day)),
  };
  const items = inputs.versions.map((version) => itemFor(inputs, standing, version));
  return {
    items,
    coming: comingStops(inputs),
    lowered: loweredByLimits(items, inputs),
    joints: standing.joints,
    asks: asksOf(inputs.decisions, inputs.answers, danger.contacts, standing.joints),
    signs,
    pauses: standing.pauses,
    contact: mostUrgent([
      ...standing.open.map(({ sign }) => sign.urgency),
      ...[...standing.joints.values()]
        .filter(({ decisionId }) => !isReached(danger.contacts, decisionId))
        .map(({ contact }) => contact),
    ]),
  };
};
