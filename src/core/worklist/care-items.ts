/**
 * Items of the care around the dose: what waits for a person, and what a break or the end of care
 * takes off the list. Danger is never taken off by a break; after the end of care only what arrived
 * later is listed, so that a session sent late is seen.
 */
import { addDays } from '../time/day.ts';
import { always, type CareState, type DueItem, dangers, type PatientState } from './item.ts';
import { noon } from './noon.ts';

const blank = { showsFrom: always, joint: null, decisionId: null, facts: {} } as const;

/** Two people may set the same limit to the same day; that is one item, in both names. */
const limitsEnded = ({ limits }: CareState): readonly DueItem[] => {
  const keyOf = ({ joint, kind, to }: CareState['limits'][number]) => `limit-ended ${joint} ${kind} ${to}`;
  return [...new Map(limits.map((limit) => [keyOf(limit), limit]))].map(([key, { joint, kind, to }]) => ({
    key,
    kind: 'limit-ended',
    since: noon(to),
    showsFrom: addDays(to, 1),
    joint,
    decisionId: null,
    facts: {
      limit: kind,
      to,
      author: [...new Set(limits.filter((one) => keyOf(one) === key).map((one) => one.author))]
        .sort()
        .join(' and '),
    },
  }));
};

const phasesDue = ({ phases }: CareState): readonly DueItem[] =>
  phases.map(({ protocolId, joint, place, name, from }) => ({
    key: `phase-due ${protocolId} ${place} ${from}`,
    kind: 'phase-due',
    since: noon(from),
    showsFrom: from,
    joint,
    decisionId: null,
    facts: { place, from, ...(name === null ? {} : { name }) },
  }));

const eventReviews = ({ events }: CareState): readonly DueItem[] =>
  events.map((event) => ({
    ...blank,
    key: `event-review ${event.id}`,
    kind: 'event-review',
    since: event.at,
    facts: {
      event: event.kind,
      day: event.day,
      ...(event.toAsk === null ? {} : { toAsk: event.toAsk }),
    },
  }));

const breakOver = ({ episodeStatus }: CareState): readonly DueItem[] => {
  const back = episodeStatus.state === 'on-break' ? episodeStatus.change?.expectedBack : null;
  return back
    ? [
        {
          ...blank,
          key: 'break-over',
          kind: 'break-over',
          since: noon(back),
          showsFrom: back,
          facts: { from: back },
        },
      ]
    : [];
};

const passed = ({ care }: PatientState): readonly DueItem[] =>
  care.passes.map(({ key, joint, decisionId, since, on, at, to }) => ({
    key: `danger-passed ${key}`,
    kind: 'danger-passed',
    since,
    showsFrom: on,
    showsAt: at,
    joint,
    decisionId,
    facts: { at, coveringClinician: to?.name ?? '' },
    unlessHandled: key,
    passesTo: to,
  }));

export const careItems = (state: PatientState): readonly DueItem[] => [
  ...limitsEnded(state.care),
  ...phasesDue(state.care),
  ...eventReviews(state.care),
  ...breakOver(state.care),
  ...passed(state),
  ...(state.care.answeredAt === null
    ? []
    : [
        {
          ...blank,
          key: 'pre-visit-answers',
          kind: 'pre-visit-answers' as const,
          since: state.care.answeredAt,
        },
      ]),
];

/** What only time brings up, as long as the patient is in care. */
const remindedBy: readonly DueItem['kind'][] = [
  'missing-answers',
  'screening-due',
  'pressure-due',
  'retest-due',
  'baseline-due',
  'phase-due',
  'limit-ended',
  'break-over',
  'review-day',
  'override-ended',
];

export const afterCare = (worklistItems: readonly DueItem[], care: CareState): readonly DueItem[] => {
  const { closedAt } = care;
  if (closedAt !== null)
    return worklistItems.filter((item) => !remindedBy.includes(item.kind) && item.since > closedAt);
  if (care.episodeStatus.state !== 'on-break') return worklistItems;
  return worklistItems.filter((item) => dangers.includes(item.kind) || item.kind !== 'missing-answers');
};
