/**
 * Follows one invented person through a year in the core alone: each answer is looked at as it comes,
 * reductions act at once, increases wait for the clinician’s Monday, and the patient does what is
 * offered that day.
 */
import type { Answers, Today } from '#core/decision/answers.ts';
import { renewedBaseline } from '#core/decision/baseline/renew.ts';
import { type EarlierWord, easedInARow } from '#core/decision/dose/eased-in-a-row.ts';
import type { DoseProposal } from '#core/decision/dose/proposal.ts';
import { nextDoses } from '#core/decision/next-doses.ts';
import { type Evaluation, evaluate } from '#core/decision/scope.ts';
import { jointsLoaded } from '#core/exercises/catalogue.ts';
import { householdEquipment } from '#core/exercises/equipment.ts';
import { ladderAtHome } from '#core/exercises/ladder/ladder-at-home.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type {
  Baseline,
  MorningRecord,
  PatientRecord,
  PrescriptionVersion,
  SessionRecord,
} from '#core/record/record.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { morningRecord, sessionRecord } from './entries-of-a-year.ts';
import type { LongStory } from './long-story.ts';
import { easierOf, firstDay, recordAt, setOn } from './record-of-a-year.ts';

const dayMs = 86_400_000;
const hourMs = 3_600_000;
const times = { morning: 7.5, visit: 10, session: 18 } as const;

export interface LookOfDay {
  readonly day: number;
  readonly at: keyof typeof times;
  readonly answers: Answers;
  readonly inForce: Dose;
  readonly waits: Dose | null;
}

export class Year {
  readonly looks: LookOfDay[] = [];
  private readonly sessions: SessionRecord[] = [];
  private readonly mornings: MorningRecord[] = [];
  private readonly baselines: Baseline[] = [];
  private readonly versions: PrescriptionVersion[] = [];
  private readonly planned: { day: string }[] = [];
  /** Newest first. */
  private readonly words: EarlierWord[] = [];
  private waiting: Pick<PrescriptionVersion, 'dose' | 'badDay' | 'origin'> | null = null;
  private told: string | null = null;

  constructor(private readonly story: LongStory) {
    this.sign({ dose: story.dose, badDay: easierOf(story.dose), origin: 'clinician' }, this.instant(0, 9));
  }

  private instant(day: number, hour: number): number {
    return (dayNumber(firstDay) + day) * dayMs + hour * hourMs;
  }

  get present(): PrescriptionVersion {
    return this.versions.at(-1)!;
  }

  private sign(row: Pick<PrescriptionVersion, 'dose' | 'badDay' | 'origin'>, signedAt: number): void {
    const version = this.versions.length + 1;
    const joints = jointsLoaded(row.dose.exerciseId, row.dose.side);
    this.versions.push({
      id: `v${version}`,
      itemId: 'line',
      version,
      joints,
      signedAt,
      endedAt: null,
      ...row,
    });
    this.waiting = null;
  }

  private record(day: number): PatientRecord {
    const { sessions, mornings, baselines, versions, planned } = this;
    return recordAt(this.story, { sessions, mornings, baselines, versions, planned }, day);
  }

  private renewed(day: number, at: { instant: number; day: string }): PatientRecord {
    const record = this.record(day);
    const baseline = renewedBaseline(record, this.story.joint, at);
    if (!baseline) return record;
    this.baselines.push(baseline);
    return this.record(day);
  }

  /** Looks at the record after something arrived, as the product does. */
  private look(day: number, at: 'morning' | 'session'): void {
    const moment = { instant: this.instant(day, times[at]), day: addDays(firstDay, day) };
    const record = this.renewed(day, moment);
    const evaluation = evaluate(record, moment);
    const joint = evaluation.joints.find((one) => one.joint === this.story.joint)!;
    this.follow(record, evaluation, joint.sessionId, joint.state === 'complete');
    this.looks.push({
      day,
      at,
      answers: joint.answers,
      inForce: this.present.dose,
      waits: this.waiting?.dose ?? null,
    });
  }

  private follow(
    record: PatientRecord,
    evaluation: Evaluation,
    sessionId: string | null,
    isComplete: boolean,
  ): void {
    const item = evaluation.items[0]!;
    if (!isComplete && item.decision !== 'pause' && item.decision !== 'ease-back') return;
    const home = { equipment: householdEquipment, loadsKg: this.story.ownedLoadsKg };
    const proposal = nextDoses(record, evaluation, () => ({
      ladder: ladderAtHome(null, home),
      easeBacksBefore: easedInARow(this.words, {
        record,
        joints: item.limitingJoints,
        judgedSessionId: sessionId,
      }),
    })).get('line')!;
    this.words.unshift({ sessionId, decision: proposal.decision, madeAt: evaluation.at.instant });
    this.act(proposal, evaluation.at.instant);
  }

  /** Said once for a version, a word and a dose, as the product stores it. */
  private act(proposal: DoseProposal, instant: number): void {
    const said = `${this.present.id} ${proposal.decision} ${JSON.stringify(proposal.dose)}`;
    if (said === this.told) return;
    this.told = said;
    this.waiting = null;
    if (proposal.effect === 'repeat') return;
    const origin =
      proposal.kind === 'return' ? 'return' : proposal.kind === 'ease-back' ? 'ease-back' : 'progress';
    const row = { dose: proposal.dose, badDay: proposal.badDay, origin } as const;
    if (proposal.effect === 'acts-at-once') this.sign(row, instant);
    else this.waiting = row;
  }

  private visit(day: number): void {
    this.baselines.push(...setOn(this.story, day));
    if (day % 7 === 0 && this.waiting) this.sign(this.waiting, this.instant(day, times.visit));
  }

  /** What the last look leaves of the day; a clinician who reopened a pause since offers the easier session. */
  private offeredOn(day: number): Today {
    const today = this.looks.at(-1)?.answers.today ?? 'as-planned';
    const paused = this.looks.findLast((look) => look.answers.decision !== 'pause')?.day ?? 0;
    const isResumed = (this.story.resumes ?? []).some((one) => one > paused && one <= day);
    return today === 'none' && isResumed ? 'bad-day' : today;
  }

  private evening(day: number): void {
    const { story } = this;
    const isBreak = (story.breaks ?? []).some(([from, to]) => day >= from && day <= to);
    const today = this.offeredOn(day);
    if (!story.weekdays.includes(day % 7) || isBreak || today === 'none' || today === 'rest-this-joint')
      return;
    this.planned.push({ day: addDays(firstDay, day) });
    const said = story.session(day);
    if (!said) return;
    const instant = this.instant(day, times.session);
    const isEasierSession = today === 'bad-day';
    this.sessions.push(
      sessionRecord(story.joint, this.present, said, isEasierSession, addDays(firstDay, day), instant),
    );
    this.look(day, 'session');
  }

  through(days: number): this {
    for (let day = 0; day <= days; day++) {
      const said = day === 0 ? null : this.story.morning(day);
      if (said) {
        const instant = this.instant(day, times.morning);
        const { joint, stiffness } = this.story;
        this.mornings.push(morningRecord(joint, stiffness, said, addDays(firstDay, day), instant));
        this.look(day, 'morning');
      }
      this.visit(day);
      if (day < days) this.evening(day);
    }
    return this;
  }
}

export const followAYear = (story: LongStory): Year => new Year(story).through(364);
