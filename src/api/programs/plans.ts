/** The plan as it stands today: what is signed and in force, with what takes something away and every caution. */
import { z } from 'zod';
import { contacts, todays } from '#core/decision/answers.ts';
import { cautionsOn } from '#core/episode/limit-cautions.ts';
import type { Plan } from '#core/plan/plan.ts';
import type { Limit } from '#core/record/limit.ts';
import type { Day } from '#core/time/day.ts';
import { limitsOfPerson } from '#data/episode/limits-of-person.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { inForce, type Prescription, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { doseOutput } from './outputs/dose.ts';
import { civilDay, instant, instantText, jointName } from './outputs/words.ts';
import { scopedRecordProcedure } from './program-procedure.ts';

const exercise = z.object({
  prescriptionId: z.string(),
  itemId: z.string().describe('Stays the same from version to version.'),
  version: z.number(),
  signedAt: instant,
  signedName: z.string(),
  joints: z.array(jointName).readonly(),
  today: z.enum(todays).describe('What may be done today; ask again each day.'),
  dose: doseOutput.nullable().describe('As it stands within every limit; null = none may be done.'),
  easierSession: doseOutput.nullable(),
  reasons: z.array(z.string()).describe('Codes of what takes something away today, most cautious first.'),
  cautions: z
    .array(z.object({ id: z.string(), text: z.string(), support: z.string() }))
    .min(1)
    .describe('Belong to the dose and are shown wherever it is.'),
});

const plan = z.object({
  day: civilDay,
  readAt: instant,
  contact: z.enum(contacts).describe('The most urgent contact that anything in force asks for.'),
  openWarningSigns: z.number(),
  exercises: z.array(exercise),
});

interface Standing {
  readonly plan: Plan;
  readonly limits: readonly Limit[];
  readonly day: Day;
}

const exerciseOf = (
  row: Prescription,
  { plan: { items }, limits, day }: Standing,
): z.infer<typeof exercise>[] => {
  const item = items.find(({ prescriptionId }) => prescriptionId === row.id);
  if (!item || row.signedAt === null) return [];
  return [
    {
      ...{ prescriptionId: row.id, itemId: row.itemId, version: row.version, joints: item.joints },
      signedAt: instantText(row.signedAt),
      signedName: row.signedName ?? '',
      ...{ today: item.today, dose: item.dose, easierSession: item.easierSession },
      reasons: item.reasons.map(({ code }) => code),
      cautions: cautionsOn(row.cautions, limits, item.dose ?? item.easierSession ?? row.dose, day).map(
        ({ id, text, support }) => ({ id, text, support }),
      ),
    },
  ];
};

export const planInForce = scopedRecordProcedure('plans')
  .output(plan)
  .query(async ({ ctx: { access, patient } }) => {
    const found = await planOf(access, patient);
    const standing = { plan: found, limits: await limitsOfPerson(access, patient.id), day: access.day };
    const rows = inForce(await prescriptionsOf(access, patient.id));
    return {
      day: access.day,
      readAt: instantText(access.now),
      contact: found.contact,
      openWarningSigns: found.signs.filter(({ endedBy }) => endedBy === null).length,
      exercises: rows.flatMap((row) => exerciseOf(row, standing)),
    };
  });
