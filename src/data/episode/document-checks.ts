/** What was asked and measured up to a day, as the papers at the end of an episode name it. */
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import { personMeasured } from '#core/assessment/course/measured.ts';
import { type SideLine, sideLines } from '#core/assessment/course/side-to-side.ts';
import { measurementForms } from '#core/assessment/measurements/measurement-fields.ts';
import type { DocumentChecks } from '#core/episode/documents/document-facts.ts';
import { answerRemarks } from '#core/screening/answer-remarks.ts';
import { itemsAskedAt, screeningItem } from '#core/screening/items.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { ageYears, type Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { measurementsOf } from '../assessment/measurements.ts';
import { effusionsOf } from '../patients/effusions.ts';
import type { Patient } from '../patients/people.ts';
import { screeningsOf } from '../screening/screenings.ts';

/** "Past or present clot (which: not said; noted: “left leg”)". */
const toldInWords = (row: ScreeningItemAnswer): string => {
  const item = screeningItem(row.item);
  const remarks = answerRemarks(item?.asks ?? {}, row);
  const label = item?.clinicianLabel ?? row.item;
  return remarks.length > 0 ? `${label} (${remarks.join('; ')})` : label;
};

export const checksUpTo = async (access: Access, patient: Patient, to: Day): Promise<DocumentChecks> => {
  const screening = (await screeningsOf(access, patient.id)).find((row) => row.day <= to);
  const measured = (await measurementsOf(access, patient.id)).filter((row) => row.day <= to);
  const answered = (answer: string) =>
    (screening?.answers ?? []).filter((row) => row.answer === answer).map(toldInWords);
  const asked = new Set(screening?.answers.map((row) => row.item));
  const lastDay = (kind: string) => measured.findLast((row) => row.kind === kind)?.day;
  return {
    screening: screening
      ? {
          day: screening.day,
          yes: answered('yes'),
          notKnown: answered('not-known'),
          notAsked: itemsAskedAt(ageYears(patient.birthDay, screening.day))
            .filter(({ id }) => !asked.has(id))
            .map((item) => item.clinicianLabel),
          no: answered('no').length,
        }
      : null,
    measured: measurementForms.flatMap(({ kind, title }) => {
      const day = lastDay(kind);
      return day === undefined ? [] : [{ title, day }];
    }),
    notMeasured: measurementForms
      .filter(({ kind, isChosen }) => !isChosen && lastDay(kind) === undefined)
      .map(({ title }) => title),
  };
};

/** The course of each thing measured, up to a day. */
export const outcomesUpTo = async (
  access: Access,
  patient: Patient,
  to: Day,
): Promise<readonly OutcomeLine[]> => {
  const until = <R extends { readonly day: Day }>(rows: readonly R[]) => rows.filter(({ day }) => day <= to);
  return outcomeLines(
    until(await measurementsOf(access, patient.id)),
    until(await effusionsOf(access, patient.id)),
    personMeasured(patient),
  );
};

/** One limb against the other, as measured up to a day. */
export const sidesUpTo = async (access: Access, patientId: string, to: Day): Promise<readonly SideLine[]> =>
  sideLines((await measurementsOf(access, patientId)).filter(({ day }) => day <= to));
