/**
 * Rules that hold a dose because a question was left open. The facts read an open question as the answer that
 * asks for more caution; a patient is told that it was left out, and never that the thing happened.
 */
import type { Joint } from '../exercises/joints.ts';
import type { PrescriptionVersion, SessionRecord } from '../record/record.ts';
import type { RuleId } from './rules/table.ts';

interface Judged {
  readonly session: SessionRecord;
  readonly joint: Joint;
  readonly versions: readonly Pick<PrescriptionVersion, 'id' | 'dose' | 'joints'>[];
}

/** Repetitions in reserve are asked of work that has some, and never with a cuff. */
const asksReserve = ({ joint, versions }: Judged, prescriptionId: string): boolean =>
  versions.some(
    ({ id, dose, joints }) =>
      id === prescriptionId && joints.includes(joint) && dose.method !== 'occlusion' && dose.reserve >= 1,
  );

const isLeftOut = {
  D1: ({ session }: Judged) => session.extraPainRelief === null,
  D3: ({ session }: Judged) => session.didExtra === null,
  D4: ({ session, joint }: Judged) =>
    session.joints.some((row) => row.joint === joint && row.gaveWay === null),
  C3: (judged: Judged) =>
    judged.session.sets.some(
      ({ reserve, prescriptionId }) => reserve === null && asksReserve(judged, prescriptionId),
    ),
} as const satisfies Partial<Record<RuleId, (judged: Judged) => boolean>>;

export type LeftOutRule = keyof typeof isLeftOut;

/** The rule, where the judged session left its question open; null where it was answered. */
export const leftOutRule = (rule: RuleId, judged: Judged): LeftOutRule | null =>
  rule in isLeftOut && isLeftOut[rule as LeftOutRule](judged) ? (rule as LeftOutRule) : null;
