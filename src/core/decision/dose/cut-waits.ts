/**
 * Where a clinic lets it, a cut that only pain asks for waits: in a young flare, where the easier session stands in for
 * it, and at a dose the joint has borne lately, until two of the last three mornings after a session were well over
 * usual. Severe pain, swelling, effusion, stiffness, a broken-off session, a gap and a long flare never wait. A worse
 * morning can only end the waiting. Off as delivered.
 */
import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { dayNumber } from '#core/time/day.ts';
import { evaluationContext } from '../facts/evaluation-context.ts';
import { baselineFacts } from '../facts/joint-facts.ts';
import { type Moment, morningScoreOn, mornings } from '../facts/judged-session.ts';
import type { RuleId } from '../rules/table.ts';
import type { ItemEvaluation } from '../scope.ts';
import type { EngineSettingValues } from '../settings.ts';
import type { CutWithheld } from './proposal.ts';
import { shareOf } from './volume.ts';
import type { ToleratedDose } from './way-back.ts';

/** Rules that ask for less because of pain that is not severe, or of a flare that is young. */
const ofPain: ReadonlySet<string> = new Set<RuleId>(['P2', 'P5', 'P6', 'P7', 'F2']);

/** A dose at most this share above a tolerated one counts as borne: one small step. */
const nearlyAsMuch = 0.9;

/** Sessions whose next mornings are looked at, how many must be over, and the days they may lie back. */
const lookedAt = { sessions: 3, over: 2, days: 14 } as const;

interface CutQuestion {
  readonly record: PatientRecord;
  readonly item: ItemEvaluation;
  readonly at: Moment;
  readonly flareDays: number;
  readonly tolerated: readonly ToleratedDose[];
  readonly settings: EngineSettingValues;
}

const isForPainAlone = ({ reasons }: ItemEvaluation): boolean =>
  reasons.every(({ rule, effect }) => effect.decision !== 'ease-back' || ofPain.has(rule));

/** Whether the mornings after the last sessions say that the joint minds; without a usual pain nothing says it does not. */
const isConfirmed = ({ record, at, settings }: CutQuestion, joint: Joint): boolean => {
  const context = evaluationContext(record, joint, at, settings);
  const { usualPainTop } = baselineFacts(context);
  if (usualPainTop === null) return true;
  const { index, day, instant } = context;
  const after: boolean[] = [];
  for (const one of (index.sessionsOf.get(joint) ?? []).toReversed()) {
    if (one.session.recordedAt > instant) continue;
    if (after.length === lookedAt.sessions || day - one.day > lookedAt.days) break;
    const answers = morningScoreOn(mornings(index, joint), one.day + 1, instant, settings)?.answers;
    // A morning in a flare speaks of the flare.
    if (!answers || answers.pain === null || answers.flare === true) continue;
    after.push(answers.pain >= usualPainTop + settings['tolerated-cut-rise']);
  }
  return after.filter((isOver) => isOver).length >= lookedAt.over;
};

const isBorne = ({ item, at, tolerated, settings }: CutQuestion): boolean =>
  tolerated.some(({ dose, day }) => {
    const share = shareOf(dose, item.version.dose);
    const isLately = dayNumber(at.day) - day <= settings['return-within-days'];
    return isLately && share !== null && share >= nearlyAsMuch - 1e-9;
  });

export const cutWaits = (question: CutQuestion): CutWithheld | null => {
  const { item, flareDays, settings } = question;
  if (!isForPainAlone(item)) return null;
  if (flareDays >= 1 && flareDays <= settings['flare-easier-days']) return 'easier-in-flare';
  if (settings['tolerated-cut-rise'] === 0 || !isBorne(question)) return null;
  return item.limitingJoints.some((joint) => isConfirmed(question, joint)) ? null : 'tolerated-lately';
};
