/** One invented person of the second model through one arm, day by day. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { Arm, PlannedWork, Treatment, TrueJoint } from '../trial/arm.ts';
import type { DayOfCourse } from '../trial/course.ts';
import { firstDay, isLookDay, isTrainingDay } from '../trial/start.ts';
import { beforeOf, morningOf, sessionOf } from './answers.ts';
import type { SecondDay, SecondPerson } from './drawn.ts';
import { conduct, tissue as figures } from './figures.ts';
import { type Muscle, newMuscle, volumeOf } from './muscle.ts';
import { type Extra, loadOf, workOf } from './session.ts';
import { newTissue, type Tissue } from './tissue.ts';

interface Body {
  readonly treatment: Treatment;
  readonly tissue: Tissue;
  readonly muscle: Muscle;
  readonly first: LowLoadDose;
  overdoes: number;
}

const onScale = (pain: number): number => Math.max(0, Math.min(10, pain));

/** What an arm that claims to see the joint is told: of a dose done as planned, the points that could be told from none. */
const trueJoint = ({ tissue, muscle, first }: Body, today: SecondDay): TrueJoint => ({
  outlook: (dose) => {
    const work = workOf(dose, muscle, 'none');
    const brought = tissue.adds(tissue.share(loadOf(work, first), today.flarePoints));
    return { stimulus: muscle.stimulus(work), overload: Math.max(0, brought - figures.discernible) };
  },
});

const extraOf = ({ at }: SecondDay, overdoes: number, isEasier: boolean): Extra => {
  if (isEasier || at.overdoes >= overdoes) return 'none';
  return at.how < 0.5 ? 'repetitions' : 'set';
};

const takesEasier = ({ kind }: PlannedWork, today: SecondDay, over: number): boolean =>
  kind === 'bad-day' || (over >= conduct.ownEasierFrom && today.at.ownEasier < conduct.ownEasier);

const doSession = (
  body: Body,
  day: number,
  today: SecondDay,
  pain: number,
  usualPain: number,
): DayOfCourse['session'] => {
  const { treatment, tissue, muscle, first } = body;
  const evening = onScale(pain + today.evening);
  const before = beforeOf(today, evening);
  const planned = treatment.work(day, before, trueJoint(body, today));
  if (!planned) return 'stopped';
  const isEasier = takesEasier(planned, today, evening - usualPain);
  const extra = extraOf(today, body.overdoes, isEasier);
  const work = workOf(isEasier ? planned.easier : planned.dose, muscle, extra);
  const share = tissue.share(loadOf(work, first), today.flarePoints);
  const during = evening + figures.during * share;
  const after = evening + figures.after + figures.sameEvening * tissue.adds(share);
  const done = { planned, isEasier, extra, work, pain: { before, during, after } };
  treatment.session(day, sessionOf(day, today, done, muscle));
  tissue.bear(share);
  muscle.train(work);
  return isEasier ? 'easier' : 'full';
};

const liveDay = (body: Body, person: SecondPerson, today: SecondDay, daysIn: number): DayOfCourse => {
  const { treatment, tissue, muscle, first } = body;
  const day = firstDay + daysIn;
  if (daysIn > 0) {
    tissue.night(today.byLoad, today.byLoadAt);
    muscle.night();
  }
  const irritation = tissue.points();
  const level = today.level + irritation - tissue.relief();
  const pain = onScale(person.usualPain + level + today.scatter);
  treatment.morning(day, morningOf(day, today, pain, today.isFlare || tissue.isLoadFlare()));
  if (isLookDay(day)) treatment.look(day);
  let session: DayOfCourse['session'] = null;
  if (isTrainingDay(day)) {
    treatment.planned(day);
    if (today.comes) session = doSession(body, day, today, pain, person.usualPain);
  }
  const acts = treatment.acts();
  if (acts.talkedAboutOverdoing) body.overdoes = person.type.overdoes * conduct.afterTalk;
  return {
    rise: pain - person.usualPain,
    level,
    irritation,
    // A flare that load set off is counted with what load brought, not with the flares by themselves.
    isFlare: today.isFlare,
    session,
    doseShare: volumeOf(treatment.dose()) / volumeOf(first),
    strength: muscle.strength(),
    acts,
  };
};

export const followSecond = (person: SecondPerson, arm: Arm): readonly DayOfCourse[] => {
  const { usualPain, type, capacity, trainability, firstReserve } = person;
  const treatment = arm.treat({ usualPain: Math.round(usualPain), inflammatory: type.inflammatory });
  const first = treatment.dose();
  const body: Body = {
    treatment,
    first,
    tissue: newTissue(capacity, type.stays),
    muscle: newMuscle(first, trainability, firstReserve),
    overdoes: type.overdoes,
  };
  return person.days.map((today, daysIn) => liveDay(body, person, today, daysIn));
};
