/** One symptom made worse at one time in a history; prescriptions, work done and baseline values held fixed. */
import { redFlags } from '#core/decision/facts/facts.ts';
import {
  effusions,
  type JointMorningAnswers,
  type JointSessionAnswers,
  type MorningRecord,
  type PatientRecord,
  type SessionRecord,
  swellings,
} from '#core/record/record.ts';
import { dayNumber } from '#core/time/day.ts';
import type { Seeded } from './seeded.ts';

export interface RaisedHistory {
  readonly record: PatientRecord;
  /** Day number from which answers may differ. */
  readonly day: number;
}

const replaced = <T>(list: readonly T[], place: number, one: T): readonly T[] =>
  list.map((kept, at) => (at === place ? one : kept));

const higher = (score: number, random: Seeded): number => score + 1 + random.below(10 - score);

const sessionScores = ['painBefore', 'painDuring', 'painAfter', 'painTwoHours'] as const;

const worseInSession = (answers: JointSessionAnswers, random: Seeded): JointSessionAnswers | null => {
  if (random.chance(0.05)) return answers.gaveWay ? null : { ...answers, gaveWay: true };
  const name = random.pick(sessionScores);
  const score = answers[name];
  if (typeof score !== 'number' || score >= 10) return null;
  return { ...answers, [name]: higher(score, random) };
};

const worseSwelling = (answers: JointMorningAnswers, random: Seeded): JointMorningAnswers | null => {
  const place = swellings.indexOf(answers.swelling as never);
  if (place < 0 || place === swellings.length - 1) return null;
  return { ...answers, swelling: random.pick(swellings.slice(place + 1)) };
};

const worseMorning = (answers: JointMorningAnswers, random: Seeded): JointMorningAnswers | null => {
  const which = random.below(4);
  if (which === 0) return worseSwelling(answers, random);
  if (which === 1) return answers.flare === false ? { ...answers, flare: true } : null;
  if (which === 2) {
    const minutes = answers.stiffnessMinutes;
    return typeof minutes === 'number'
      ? { ...answers, stiffnessMinutes: minutes + 1 + random.below(90) }
      : null;
  }
  if (answers.pain === null || answers.pain >= 10) return null;
  return { ...answers, pain: higher(answers.pain, random) };
};

const withFlag = <T extends SessionRecord | MorningRecord>(one: T, random: Seeded): T => ({
  ...one,
  redFlags: [...(one.redFlags ?? []), random.pick(redFlags)],
});

const raiseSession = (record: PatientRecord, random: Seeded): RaisedHistory | null => {
  const place = random.below(record.sessions.length);
  const session = record.sessions[place];
  if (!session) return null;
  const raised = ((): SessionRecord | null => {
    if (random.chance(0.05)) return withFlag(session, random);
    if (random.chance(0.05) && session.sets.length > 0) {
      const set = random.below(session.sets.length);
      return {
        ...session,
        sets: replaced(session.sets, set, { ...session.sets[set]!, stopReason: 'joint-pain' }),
      };
    }
    const joint = random.below(session.joints.length);
    const answers = worseInSession(session.joints[joint]!, random);
    return answers && { ...session, joints: replaced(session.joints, joint, answers) };
  })();
  return (
    raised && {
      record: { ...record, sessions: replaced(record.sessions, place, raised) },
      day: dayNumber(session.day),
    }
  );
};

const raiseMorning = (record: PatientRecord, random: Seeded): RaisedHistory | null => {
  const place = random.below(record.mornings.length);
  const morning = record.mornings[place];
  if (!morning) return null;
  const raised = ((): MorningRecord | null => {
    if (random.chance(0.05)) return withFlag(morning, random);
    if (random.chance(0.05)) {
      return typeof morning.fatigue === 'number'
        ? { ...morning, fatigue: Math.min(10, morning.fatigue + 3) }
        : null;
    }
    const joint = random.below(morning.joints.length);
    const answers = worseMorning(morning.joints[joint]!, random);
    return answers && { ...morning, joints: replaced(morning.joints, joint, answers) };
  })();
  return (
    raised && {
      record: { ...record, mornings: replaced(record.mornings, place, raised) },
      day: dayNumber(morning.day),
    }
  );
};

const raiseEffusion = (record: PatientRecord, random: Seeded): RaisedHistory | null => {
  const place = random.below(record.effusions.length);
  const effusion = record.effusions[place];
  if (!effusion) return null;
  const grade = effusions.indexOf(effusion.grade);
  if (grade === effusions.length - 1) return null;
  const raised = { ...effusion, grade: random.pick(effusions.slice(grade + 1)) };
  return {
    record: { ...record, effusions: replaced(record.effusions, place, raised) },
    day: dayNumber(effusion.day),
  };
};

/** Tries until a raise applies; null for a history with nothing to raise. */
export const raiseHistory = (record: PatientRecord, random: Seeded): RaisedHistory | null => {
  for (let tries = 0; tries < 50; tries++) {
    const which = random.next();
    const raised =
      which < 0.45
        ? raiseSession(record, random)
        : which < 0.97
          ? raiseMorning(record, random)
          : raiseEffusion(record, random);
    if (raised) return raised;
  }
  return null;
};
