/**
 * Who needs a clinician, and for which fact. Items are kept as facts with the day from which they
 * show, so that nothing goes stale at midnight. Nothing here decides about a dose.
 */

import { baselineWindowDays } from '../decision/baseline/propose-baseline.ts';
import type { WorklistReason } from '../decision/dose/proposal.ts';
import type { Ask } from '../plan/asks.ts';
import type { Plan } from '../plan/plan.ts';
import { addDays, type Day } from '../time/day.ts';
import { afterCare, careItems } from './care-items.ts';
import {
  always,
  type DueAfter,
  type DueItem,
  dangers,
  type PatientState,
  type WorklistItemKind,
  worklistItemKinds,
} from './item.ts';
import { noon } from './noon.ts';
import { keyOfSign, planItems } from './plan-items.ts';

const kindOf = (row: Pick<Ask, 'decision' | 'contact'>): WorklistItemKind | null => {
  if (row.decision === 'pause') return 'pause';
  if (row.contact === 'emergency' || row.contact === 'same-day') return 'same-day-contact';
  if (row.decision === 'ease-back') return 'ease-back';
  return row.contact === 'routine' ? 'routine-contact' : null;
};

const keyOfAsk = ({ joint }: Pick<Ask, 'joint'>): string => `decision ${joint}`;
/** Items nobody may snooze, as they stand: open signs, and decisions that pause or ask for a call today. */
export const urgentItems = ({ asks, signs }: Pick<Plan, 'asks' | 'signs'>) => [
  ...asks
    .filter((row) => row.settled === null && dangers.some((kind) => kind === kindOf(row)))
    .map((row) => ({ key: keyOfAsk(row), joint: row.joint, decisionId: row.id, since: row.evaluatedAt })),
  ...signs
    .filter(({ endedBy }) => endedBy === null)
    .map(({ sign }) => ({
      key: keyOfSign(sign.id),
      joint: sign.joint,
      decisionId: null,
      since: sign.reportedAt,
    })),
];

const decisionItem = (row: Ask): DueItem | null => {
  const kind = kindOf(row);
  if (!kind || row.settled === 'for-good') return null;
  const [reason] = row.reasons;
  const facts = { rule: reason?.rule ?? '', threshold: reason?.threshold ?? '' };
  const base = { key: keyOfAsk(row), since: row.evaluatedAt, joint: row.joint, decisionId: row.id };
  if (row.settled === null) return { ...base, kind, showsFrom: always, facts };
  return {
    ...base,
    kind: 'override-ended',
    showsFrom: addDays(row.settled, 1),
    facts: { ...facts, until: row.settled },
  };
};

/** Only the reasons that ask for a person; what merely could not step is said in the review. */
const proposalKinds: Partial<Record<WorklistReason, WorklistItemKind>> = {
  'two-ease-backs': 'eased-twice',
  'floor-reached': 'floor-reached',
  'no-dose-within-limit': 'floor-reached',
  'limit-expired': 'routine-contact',
};

const proposalItems = (state: PatientState): readonly DueItem[] =>
  state.proposals
    .filter((row) => !row.answered)
    .flatMap((row) =>
      row.worklist.flatMap((reason) => {
        const kind = proposalKinds[reason];
        if (!kind) return [];
        const facts = { exercise: row.exercise, reason };
        return [
          {
            key: `${reason} ${row.itemId}`,
            kind,
            since: row.madeAt,
            showsFrom: always,
            joint: null,
            decisionId: row.decisionId,
            facts,
          },
        ];
      }),
    );

const recorded = (kind: WorklistItemKind, since: number | null): readonly DueItem[] =>
  since === null
    ? []
    : [{ key: kind, kind, since, showsFrom: always, joint: null, decisionId: null, facts: {} }];

/** Shows from the first day on which it is older than allowed. */
const overdue = (kind: WorklistItemKind, from: Day | null, after: number): readonly DueItem[] =>
  from === null
    ? []
    : [
        {
          key: kind,
          kind,
          since: noon(from),
          showsFrom: addDays(from, after + 1),
          joint: null,
          decisionId: null,
          facts: { from },
        },
      ];

const missing = (state: PatientState, due: DueAfter): readonly DueItem[] => {
  if (state.startedOn === null) return [];
  const known = state.lastMorning ?? state.startedOn;
  // A break is no silence: the days are counted from the return.
  const from = [known, state.care.episodeStatus.returned?.on ?? known].toSorted().at(-1)!;
  return overdue('missing-answers', from, due.missingMornings - 1);
};

/** What was told at a first visit is due once its mornings can take its place. */
const baselines = (state: PatientState, due: DueAfter): readonly DueItem[] =>
  state.baselines.flatMap(({ joint, setOn, provisional }) =>
    overdue('baseline-due', setOn, provisional ? baselineWindowDays : due.baselineDays).map((item) => ({
      ...item,
      key: `baseline-due ${joint}`,
      joint,
    })),
  );

/** A dose is in force and no screening stands, as after the only one was struck out. */
const neverScreened = ({ screenedOn, startedOn }: PatientState): readonly DueItem[] =>
  screenedOn === null && startedOn !== null ? recorded('screening-due', noon(startedOn)) : [];

/** What a patient said was new: looked at by a clinician, whatever the engine decided. */
const reportedNew = ({ reportedNew: told }: PatientState): readonly DueItem[] =>
  told === null
    ? []
    : recorded('reported-new', told.at).map((item) => ({
        ...item,
        untilAcknowledged: true,
        facts: { news: told.news.join(', '), otherJoint: told.otherJointWorse ? 'worse' : '' },
      }));

/** A message waits until it is written back to or marked as seen. */
const messages = ({ messageSince }: PatientState): readonly DueItem[] =>
  recorded('message', messageSince).map((item) => ({ ...item, untilAcknowledged: true }));

/** A booked review shows on its day, and until it is marked as seen or the next one is booked. */
const reviewDay = ({ reviewOn }: PatientState): readonly DueItem[] =>
  overdue('review-day', reviewOn, -1).map((item) => ({
    ...item,
    key: `review-day ${reviewOn}`,
    untilAcknowledged: true,
  }));

/** A measure is due until it is taken, or its plan is changed or stopped. */
const retests = (state: PatientState): readonly DueItem[] =>
  state.retests.flatMap(({ measure, title, on }) =>
    overdue('retest-due', on, -1).map((item) => ({
      ...item,
      key: `retest-due ${measure}`,
      facts: { ...item.facts, measure, title },
    })),
  );

/** Every item of a patient, those included that will show only later. */
export const dueItems = (state: PatientState, due: DueAfter): readonly DueItem[] => {
  const all = [
    ...planItems(state.plan),
    ...state.plan.asks.map(decisionItem).filter((item) => item !== null),
    ...proposalItems(state),
    ...recorded('awaiting-signature', state.unsignedSince),
    ...recorded('entry-conflict', state.conflictSince),
    ...recorded('clock-doubtful', state.clockDoubtfulSince),
    ...reportedNew(state),
    ...messages(state),
    ...reviewDay(state),
    ...missing(state, due),
    ...overdue('screening-due', state.screenedOn, due.screeningDays),
    ...neverScreened(state),
    ...overdue('pressure-due', state.pressureMeasuredOn, due.pressureDays),
    ...retests(state),
    ...baselines(state, due),
    ...careItems(state),
  ];
  return [...afterCare(all, state.care)].sort((a, b) => (a.key < b.key ? -1 : 1));
};

/** Place of a kind from most pressing; stored with the item so that the file can order by it. */
export const rankOf = (kind: WorklistItemKind): number => worklistItemKinds.indexOf(kind);
