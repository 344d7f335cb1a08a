/** One invented person under one arm, day by day. */
import { shareOf } from '#core/decision/dose/volume.ts';
import type { Acts, Arm, PlannedWork, Treatment } from './arm.ts';
import type { DrawnDay, DrawnPerson } from './drawn-days.ts';
import { morningEntry, painBefore, sessionEntry } from './entries.ts';
import { type InventedJoint, inventedJoint, type JointSettings } from './invented-joint.ts';
import { figures } from './joint-settings.ts';
import { firstDay, isLookDay, isTrainingDay, startDose } from './start.ts';
import { repetitionsToFailure, stimulusOf, type WorkDone, workOf } from './work.ts';

export interface DayOfCourse {
  /** Pain of the day above the usual pain of the start, scatter in it. */
  readonly rise: number;
  /** The same without the scatter of the day. */
  readonly level: number;
  /** Points of it that overload brought. */
  readonly irritation: number;
  readonly isFlare: boolean;
  /** null = no session stood in the plan, or the person did not come. */
  readonly session: 'full' | 'easier' | 'stopped' | null;
  /** The dose in force in the evening, as a share of the first. */
  readonly doseShare: number;
  /** In the evening; 1 at the start. */
  readonly strength: number;
  readonly acts: Acts;
}

const overdoneWork = (work: WorkDone, strength: number, how: number): WorkDone => {
  const first = work.sets[0] ?? 0;
  if (how < figures.overdoneByASet) return { ...work, sets: [...work.sets, first] };
  const most = Math.max(first, Math.floor(repetitionsToFailure(strength, work.loadKg)));
  return { ...work, sets: work.sets.map(() => most) };
};

interface Person {
  readonly drawn: DrawnPerson;
  readonly joint: InventedJoint;
  readonly treatment: Treatment;
  overdoes: number;
}

const asksForEasier = ({ joint }: Person, planned: PlannedWork, today: DrawnDay): boolean =>
  planned.kind === 'bad-day' || (joint.isFlare() && today.easier < figures.easierInFlare);

const train = (person: Person, day: number, today: DrawnDay): DayOfCourse['session'] => {
  const { drawn, joint, treatment } = person;
  treatment.planned(day);
  if (!today.comesToSession) return null;
  const pain = drawn.usualPain + joint.level() + today.drift;
  const before = painBefore(today, pain);
  const outlook: Parameters<Treatment['work']>[2]['outlook'] = (dose) => {
    const work = workOf(dose, joint.strength());
    return { stimulus: stimulusOf(work, joint.strength()), overload: joint.overload(work) };
  };
  const planned = treatment.work(day, before, { outlook });
  if (!planned) return 'stopped';
  const isEasier = asksForEasier(person, planned, today);
  const strength = joint.strength();
  const asked = workOf(isEasier ? planned.easier : planned.dose, strength);
  const isOverdone = !isEasier && today.overdoes < person.overdoes;
  const work = isOverdone ? overdoneWork(asked, strength, today.overdoesHow) : asked;
  const felt = joint.felt(work);
  const entry = sessionEntry(day, today, {
    planned,
    isEasier,
    work,
    strength,
    pain: { before, during: pain + felt.during, after: pain + felt.after },
  });
  joint.load(work);
  treatment.session(day, entry);
  return isEasier ? 'easier' : 'full';
};

export const followCourse = (
  drawn: DrawnPerson,
  arm: Arm,
  settings: JointSettings,
): readonly DayOfCourse[] => {
  const joint = inventedJoint(drawn, settings);
  const { inflammatory, overdone } = drawn.type;
  const treatment = arm.treat({ usualPain: Math.round(drawn.usualPain), inflammatory });
  const person: Person = { drawn, joint, treatment, overdoes: overdone };
  return drawn.days.map((today, daysIn) => {
    const day = firstDay + daysIn;
    joint.wake(today, daysIn);
    const level = joint.level();
    const rise = level + today.drift;
    const irritation = joint.irritation();
    const isFlare = joint.isFlare();
    treatment.morning(
      day,
      today.answersMorning ? morningEntry(day, today, drawn.usualPain + rise, isFlare) : null,
    );
    if (isLookDay(day)) treatment.look(day);
    const session = isTrainingDay(day) ? train(person, day, today) : null;
    const acts = treatment.acts();
    // Told once; a second talk changes nothing more.
    if (acts.talkedAboutOverdoing) person.overdoes = overdone * figures.overdoneAfterTalk;
    const doseShare = shareOf(treatment.dose(), startDose) ?? Number.NaN;
    return { rise, level, irritation, isFlare, session, doseShare, strength: joint.strength(), acts };
  });
};
