/** The plan for paper: what is signed and in force, as the one plan leaves it on the day of printing. */

import { nextLimitFrom } from '#core/decision/dose/limits.ts';
import { cautionsOn } from '#core/episode/limit-cautions.ts';
import { asksNothing } from '#core/episode/suspensions.ts';
import { urgentNumberOf } from '#core/episode/urgent-number.ts';
import type { Plan } from '#core/plan/plan.ts';
import { exerciseWeekdays, type WeekdaysOn } from '#core/prescribing/programme/exercise-weekdays.ts';
import { weekdayOf } from '#core/prescribing/programme/planned-sessions.ts';
import { isWithinSigned } from '#core/prescribing/signed-within.ts';
import type { Limit } from '#core/record/limit.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import { careAroundOf } from '#data/episode/care-around.ts';
import { limitsOfPerson } from '#data/episode/limits-of-person.ts';
import { clinicOf, type Patient } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { inForce, type Prescription, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { programmesOf } from '#data/prescribing/programmes.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import { cautionText } from '#messages/cautions.ts';
import { exerciseName } from '#messages/exercises.ts';
import type { PlanPaper, PlanPaperExercise } from '#papers/plan/plan-paper.ts';
import { dangerTexts } from '../patient/today-danger.ts';
import { painLimitsOf } from './pain-limits.ts';

/** Most weeks on one print: a plan is read again before then. */
export const mostWeeks = 12;

/** A number is read in one go: it never breaks at the end of a line. */
const unbroken = (number: string): string => number.replaceAll(' ', '\u00a0');

const mondayOf = (day: Day): Day => addDays(day, 1 - weekdayOf(day));

const weeksFrom = (day: Day, count: number): readonly Day[] =>
  Array.from({ length: count }, (_, at) => addDays(mondayOf(day), 7 * at));

/** Of each day by itself: a programme may begin in the middle of a week. null where the patient chooses. */
const daysOf = (itemId: string, weekdaysOn: WeekdaysOn, weeks: readonly Day[]): readonly Day[] | null => {
  const days = weeks.flatMap((monday) => Array.from({ length: 7 }, (_, at) => addDays(monday, at)));
  const isChosen = days.every((day) => weekdaysOn(itemId, day) === null);
  return isChosen ? null : days.filter((day) => weekdaysOn(itemId, day)?.includes(weekdayOf(day)) ?? true);
};

interface Standing {
  readonly plan: Plan;
  readonly zone: string;
  readonly weekdaysOn: WeekdaysOn;
  readonly weeks: readonly Day[];
  readonly holds: (day: Day) => boolean;
  readonly isOff: boolean;
  readonly limits: readonly Limit[];
  readonly day: Day;
}

const exerciseOn = (
  row: Prescription,
  { plan, zone, weekdaysOn, weeks, holds, isOff, limits, day }: Standing,
): readonly PlanPaperExercise[] => {
  const item = plan.items.find(({ prescriptionId }) => prescriptionId === row.id);
  if (!item || row.signedAt === null) return [];
  return [
    {
      exerciseId: row.dose.exerciseId,
      title: exerciseName(row.dose.exerciseId),
      dose: item.dose ?? item.easierSession ?? row.dose,
      easierSession: item.easierSession ?? item.dose ?? row.badDay,
      today: item.today,
      days: isOff ? [] : (daysOf(row.itemId, weekdaysOn, weeks)?.filter(holds) ?? null),
      cautions: cautionsOn(row.cautions, limits, item.dose ?? item.easierSession ?? row.dose, day).map(
        ({ patient }) => cautionText(patient),
      ),
      version: row.version,
      signedName: row.signedName ?? '',
      signedOn: dayAt(row.signedAt, zone),
      isWithinSigned: isWithinSigned(row),
    },
  ];
};

export const planPaperFor = async (
  access: Access,
  patient: Patient,
  weekCount: number,
): Promise<PlanPaper> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!clinic) throw new Error('The account names a clinic that does not exist.');
  const { name, zone, emergencyNumber } = clinic;
  const phone = unbroken(clinic.phone);
  const versions = inForce(await prescriptionsOf(access, patient.id));
  const plan = await planOf(access, patient, versions);
  const care = await careAroundOf(access, patient.id, await newestScreening(access, patient.id));
  const isOff = asksNothing(care);
  const limits = await limitsOfPerson(access, patient.id);
  const changesOn = nextLimitFrom(limits, access.day);
  const until = changesOn && addDays(changesOn, -1);
  // Nothing is printed of days whose dose is not known yet.
  const holds = (day: Day): boolean => until === null || day <= until;
  const asked = weeksFrom(access.day, weekCount);
  const weeks = asked.filter(holds);
  const signed = versions.map(({ itemId, dose, signedAt, recordedAt }) => ({
    itemId,
    dose,
    signedOn: dayAt(signedAt ?? recordedAt, zone),
  }));
  const weekdaysOn = exerciseWeekdays(signed, await programmesOf(access, patient.id), access.day);
  const standing = { plan, zone, weekdaysOn, weeks, holds, isOff, limits, day: access.day };
  return {
    clinic: { name, phone, emergencyNumber, urgentNumber: unbroken(urgentNumberOf(clinic)) },
    patient: { name: `${patient.givenName} ${patient.familyName}`, birthDay: patient.birthDay },
    weeks,
    until: until !== null && asked.some((monday) => addDays(monday, 6) > until) ? until : null,
    isOff,
    danger: dangerTexts(plan, { name, phone }),
    exercises: versions.flatMap((row) => exerciseOn(row, standing)),
    joints: await painLimitsOf(access, patient),
  };
};
