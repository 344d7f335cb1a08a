/**
 * The project's own engine, run as the product runs it: after every morning check and every session the facts
 * are gathered, decided on and followed by a dose. A clinician is played by fixed habits: on Mondays signs the
 * increase that waits, calls whom the worklist names, sets usual values that are due, lets a paused plan go
 * on; on the same day calls where that is asked for, and lets the plan go on from the next day.
 */
import type { Today } from '#core/decision/answers.ts';
import { todayRank } from '#core/decision/decide.ts';
import { type EarlierWord, easedInARow } from '#core/decision/dose/eased-in-a-row.ts';
import type { DoseProposal } from '#core/decision/dose/proposal.ts';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { Moment } from '#core/decision/facts/judged-session.ts';
import { nextDoses } from '#core/decision/next-doses.ts';
import { preSessionCheck } from '#core/decision/pre-session-check.ts';
import { type Evaluation, evaluate } from '#core/decision/scope.ts';
import { type EngineSettingValues, engineVersions } from '#core/decision/settings.ts';
import { version3 } from '#core/decision/version-3-settings.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { dayFromNumber } from '#core/time/day.ts';
import type { Arm, PersonAtStart, PlannedWork, Treatment } from '../arm.ts';
import { dayMilliseconds, joint } from '../start.ts';
import { type ClinicDesk, clinicDesk } from './clinic-desk.ts';
import {
  addVersion,
  type KeptRecord,
  keep,
  keepRecord,
  plan,
  takeFromPlan,
  versionInForce,
} from './kept-record.ts';
import { type Tally, tally } from './tally.ts';
import { renewUsual, setBaselineIfDue, toldAtFirstVisit } from './usual-values.ts';

const ladder = { harder: () => null, easier: () => null };
/** Reasons of the worklist that ask for a person. */
const asksForPerson: readonly string[] = ['two-ease-backs', 'floor-reached', 'no-dose-within-limit'];

interface Case {
  readonly settings: EngineSettingValues;
  readonly kept: KeptRecord;
  readonly desk: ClinicDesk;
  readonly counts: Tally;
  /** Newest first. */
  readonly words: EarlierWord[];
  today: Today;
  waiting: DoseProposal | null;
  proposed: string;
}

const momentAt = (day: number, hour: number): Moment => ({
  instant: day * dayMilliseconds + hour * 3_600_000,
  day: dayFromNumber(day),
});

const proposalFor = ({ kept, settings, words }: Case, evaluation: Evaluation): DoseProposal => {
  const judgedSessionId = evaluation.joints[0]!.sessionId;
  const line = { record: kept.now, joints: [joint], judgedSessionId, settings };
  const easeBacksBefore = easedInARow(words, line);
  return nextDoses(kept.now, evaluation, () => ({ ladder, settings, easeBacksBefore })).get('line')!;
};

const isSameDose = (a: DoseProposal, b: DoseProposal): boolean =>
  JSON.stringify(a.dose) === JSON.stringify(b.dose);

/** A reduction acts at once; an increase waits, and falls away when a later answer no longer carries it. */
const follow = (one: Case, proposal: DoseProposal, instant: number): void => {
  if (proposal.worklist.some((reason) => asksForPerson.includes(reason))) one.desk.ask();
  if (proposal.effect === 'awaits-signature') {
    if (!one.waiting || !isSameDose(one.waiting, proposal)) one.waiting = proposal;
    return;
  }
  one.waiting = null;
  if (proposal.effect === 'repeat') return;
  const isCut = proposal.kind === 'ease-back';
  const origin = isCut ? 'ease-back' : proposal.kind === 'return' ? 'return' : 'progress';
  addVersion(one.kept, { dose: proposal.dose, badDay: proposal.badDay, origin }, instant);
  one.counts.add(isCut ? 'cuts' : 'raises');
};

const decideOn = (one: Case, evaluation: Evaluation): void => {
  const item = evaluation.items[0]!;
  const { state, sessionId } = evaluation.joints[0]!;
  const isStopped = item.decision === 'pause' || item.decision === 'ease-back';
  if (!isStopped && state !== 'complete') return;
  // What holds or pauses leaves the dose as it is; working out the tolerated doses for it would cost the most.
  const isMoving = item.decision === 'ease-back' || item.decision === 'progress';
  if (isMoving) {
    const proposal = proposalFor(one, evaluation);
    const { decision, dose, worklist } = proposal;
    const proposed = JSON.stringify([sessionId, item.version.id, decision, dose, worklist]);
    if (proposed !== one.proposed) follow(one, proposal, evaluation.at.instant);
    one.proposed = proposed;
  } else {
    one.waiting = null;
    one.proposed = '';
  }
  one.words.unshift({ sessionId, decision: item.decision, madeAt: evaluation.at.instant });
};

const lookAt = (one: Case, day: number, at: Moment): Evaluation => {
  renewUsual(one.kept, at, one.settings);
  const evaluation = evaluate(one.kept.now, at, one.settings);
  one.today = evaluation.items[0]!.today;
  one.desk.hear(day, evaluation);
  decideOn(one, evaluation);
  return evaluation;
};

const countDecision = ({ kept, counts }: Case, day: number, evaluation: Evaluation): void => {
  if (kept.now.sessions.at(-1)?.day !== dayFromNumber(day - 1)) return;
  counts.add('decisions');
  if (evaluation.items[0]!.decision === 'progress') counts.add('progress');
};

const stopsToday = (today: Today): boolean => today === 'none' || today === 'rest-this-joint';

const workOn = (one: Case, day: number, painBefore: number | null): PlannedWork | null => {
  const { kept, desk, settings } = one;
  const known = factsFor(kept.now, joint, momentAt(day, 16), settings);
  const check = preSessionCheck({ ...known, painBefore, redFlags: [] }, settings);
  if (check.contact === 'same-day') desk.callSameDay(day, `session-${day}`);
  const decided = desk.isOverruled() ? 'as-planned' : one.today;
  const today = todayRank[decided] < todayRank[check.today] ? decided : check.today;
  if (desk.isPaused(day) || stopsToday(today)) {
    takeFromPlan(kept, day);
    return null;
  }
  const { id, dose, badDay } = versionInForce(kept);
  return {
    kind: today === 'bad-day' ? 'bad-day' : 'full',
    prescriptionId: id,
    dose: dose as LowLoadDose,
    easier: badDay as LowLoadDose,
  };
};

const lookOnMonday = (one: Case, day: number): void => {
  const { kept, desk, counts } = one;
  const at = momentAt(day, 9);
  desk.look();
  if (setBaselineIfDue(kept, at, one.settings)) {
    counts.add('baselines');
    counts.add('clinicianActions');
  }
  if (!one.waiting) return;
  const { dose, badDay, kind } = one.waiting;
  addVersion(kept, { dose, badDay, origin: kind === 'return' ? 'return' : 'progress' }, at.instant);
  one.waiting = null;
  counts.add('signed');
  counts.add('clinicianActions');
  counts.add('raises');
};

const treat = (person: PersonAtStart, settings: EngineSettingValues): Treatment => {
  const counts = tally();
  const one: Case = {
    settings,
    kept: keepRecord(person.inflammatory, toldAtFirstVisit(person.usualPain, settings)),
    desk: clinicDesk(counts),
    counts,
    words: [],
    today: 'as-planned',
    waiting: null,
    proposed: '',
  };
  const { kept, desk } = one;
  return {
    morning: (day, entry) => {
      if (!entry) return;
      keep(kept, 'mornings', entry);
      countDecision(one, day, lookAt(one, day, momentAt(day, 8)));
    },
    look: (day) => lookOnMonday(one, day),
    planned: (day) => {
      if (!desk.isPaused(day)) plan(kept, day);
    },
    work: (day, painBefore) => workOn(one, day, painBefore),
    session: (day, entry) => {
      keep(kept, 'sessions', entry);
      lookAt(one, day, momentAt(day, 18));
    },
    dose: () => versionInForce(kept).dose as LowLoadDose,
    acts: counts.take,
  };
};

/** One arm for each version of the rules, whatever version the settings name, and one for the choices called version 3. */
export const engineArms = (settings: EngineSettingValues): readonly Arm[] =>
  [...engineVersions.map((version) => ({ 'engine-version': version })), version3].map((chosen, place) => ({
    id: `version-${place + 1}`,
    title: `Engine, version ${place + 1}`,
    treat: (person) => treat(person, { ...settings, ...chosen }),
  }));
