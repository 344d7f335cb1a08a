/**
 * Who needs a clinician, and for which fact. Each matter is one plain sentence; matters are ordered
 * by danger, then by age. Nothing here decides about a dose.
 */

import { type Day, daysBetween } from '../day.ts';
import type { WorklistReason } from '../engine/dose/proposal.ts';
import type { Joint } from '../joints.ts';
import {
  type DueAfter,
  type Matter,
  type MatterKind,
  matterKinds,
  type PatientState,
  type StandingDecision,
} from './matter.ts';

const shown = (joint: Joint): string => joint.replace('-', ' ');

const firstReason = (row: StandingDecision): string => {
  const reason = row.reasons[0];
  return reason ? ` (${reason.rule}: ${reason.threshold})` : '';
};

const sentenceOf = (kind: MatterKind, row: StandingDecision): string => {
  switch (kind) {
    case 'red-flag':
      return `Reported a warning sign; all sessions are stopped${firstReason(row)}.`;
    case 'pause':
      return `Paused for the ${shown(row.joint)}; only a clinician reopens it${firstReason(row)}.`;
    case 'same-day-contact':
      return `Needs a call today about the ${shown(row.joint)}${firstReason(row)}.`;
    case 'ease-back':
      return `Eased back for the ${shown(row.joint)}${firstReason(row)}.`;
    default:
      return `A review is due for the ${shown(row.joint)}${firstReason(row)}.`;
  }
};

const kindOf = (row: StandingDecision): MatterKind | null => {
  if (row.reasons.some((reason) => reason.rule === 'R1')) return 'red-flag';
  if (row.decision === 'pause') return 'pause';
  if (row.contact === 'emergency' || row.contact === 'same-day') return 'same-day-contact';
  if (row.decision === 'ease-back') return 'ease-back';
  return row.contact === 'routine' ? 'routine-contact' : null;
};

const decisionMatters = (state: PatientState): readonly Matter[] =>
  state.decisions.flatMap((row) => {
    const kind = row.answered ? null : kindOf(row);
    if (!kind) return [];
    return [
      { kind, sentence: sentenceOf(kind, row), since: row.evaluatedAt, joint: row.joint, decisionId: row.id },
    ];
  });

/** Only the reasons that ask for a person; what merely could not step is said in the review. */
const proposalSentences: Partial<Record<WorklistReason, readonly [MatterKind, string]>> = {
  'two-ease-backs': ['eased-twice', 'was eased back twice in a row'],
  'floor-reached': ['floor-reached', 'is at half of what was last tolerated; no further cut'],
  'no-dose-within-limit': ['floor-reached', 'has no dose within a limit that holds'],
  'limit-expired': ['routine-contact', 'had a limit that ended; ask again before anything opens'],
};

const proposalMatters = (state: PatientState): readonly Matter[] =>
  state.proposals
    .filter((row) => !row.answered)
    .flatMap((row) =>
      row.worklist.flatMap((reason) => {
        const known = proposalSentences[reason];
        if (!known) return [];
        const [kind, text] = known;
        return [
          {
            kind,
            sentence: `${row.exercise} ${text}.`,
            since: row.madeAt,
            joint: null,
            decisionId: row.decisionId,
          },
        ];
      }),
    );

const plain = (kind: MatterKind, sentence: string, since: number, joint: Joint | null = null): Matter => ({
  kind,
  sentence,
  since,
  joint,
  decisionId: null,
});

/** Noon of a day: close enough to order matters that are only known to the day. */
const noon = (day: Day): number => daysBetween('1970-01-01', day) * 86_400_000 + 43_200_000;

const overdue = (since: Day, today: Day, after: number): number => daysBetween(since, today) - after;

const dueMatters = (state: PatientState, today: Day, due: DueAfter): readonly Matter[] => {
  const found: Matter[] = [];
  const answeredOn = state.lastMorning ?? state.startedOn;
  if (state.startedOn && answeredOn && daysBetween(answeredOn, today) >= due.missingMornings) {
    found.push(
      plain(
        'missing-answers',
        `No morning answers for ${daysBetween(answeredOn, today)} days.`,
        noon(answeredOn),
      ),
    );
  }
  if (state.screenedOn && overdue(state.screenedOn, today, due.screeningDays) > 0) {
    found.push(
      plain(
        'screening-due',
        `Screening is ${daysBetween(state.screenedOn, today)} days old.`,
        noon(state.screenedOn),
      ),
    );
  }
  if (state.pressureMeasuredOn && overdue(state.pressureMeasuredOn, today, due.pressureDays) > 0) {
    const age = daysBetween(state.pressureMeasuredOn, today);
    found.push(
      plain(
        'pressure-due',
        `The measured occlusion pressure is ${age} days old.`,
        noon(state.pressureMeasuredOn),
      ),
    );
  }
  for (const { joint, frozenOn } of state.baselines) {
    if (overdue(frozenOn, today, due.baselineDays) > 0) {
      found.push(
        plain(
          'baseline-due',
          `Usual values of the ${shown(joint)} were frozen ${daysBetween(frozenOn, today)} days ago.`,
          noon(frozenOn),
          joint,
        ),
      );
    }
  }
  return found;
};

const recordMatters = (state: PatientState): readonly Matter[] => {
  const found: Matter[] = [];
  if (state.unsignedSince !== null)
    found.push(plain('awaiting-signature', 'A prescription awaits a signature.', state.unsignedSince));
  if (state.conflictSince !== null)
    found.push(
      plain('entry-conflict', 'The same entry arrived twice with different content.', state.conflictSince),
    );
  if (state.clockDoubtfulSince !== null) {
    found.push(
      plain(
        'clock-doubtful',
        'An entry came from a phone with a doubtful clock; it counts as missing until confirmed.',
        state.clockDoubtfulSince,
      ),
    );
  }
  return found;
};

export const compareMatters = (a: Matter, b: Matter): number =>
  matterKinds.indexOf(a.kind) - matterKinds.indexOf(b.kind) || a.since - b.since;

/** All matters of one patient, most pressing first. */
export const mattersOf = (state: PatientState, today: Day, due: DueAfter): readonly Matter[] =>
  [
    ...decisionMatters(state),
    ...proposalMatters(state),
    ...recordMatters(state),
    ...dueMatters(state, today, due),
  ].sort(compareMatters);
