/** The clinic's own numbers, as versions. */
import { randomUUID } from 'node:crypto';
import { desc, eq } from 'drizzle-orm';
import type { ChoiceValues } from '#core/clinic-choice.ts';
import type { Access } from './access.ts';
import { sealed } from './audit.ts';
import { choiceVersion } from './schema/schema.ts';

/** Values the clinic has set; those it has not set are left out and take their defaults. */
export const choicesOf = async (access: Access): Promise<ChoiceValues> => {
  const [row] = await access.store.read
    .select({ choices: choiceVersion.choices })
    .from(choiceVersion)
    .where(eq(choiceVersion.clinicId, access.clinicId))
    .orderBy(desc(choiceVersion.version))
    .limit(1);
  return row?.choices ?? {};
};

export const saveChoices = (access: Access, choices: ChoiceValues, reason: string): Promise<number> =>
  access.store.write(async (tx) => {
    const [last] = await tx
      .select({ version: choiceVersion.version })
      .from(choiceVersion)
      .where(eq(choiceVersion.clinicId, access.clinicId))
      .orderBy(desc(choiceVersion.version))
      .limit(1);
    const version = (last?.version ?? 0) + 1;
    const id = randomUUID();
    await tx.insert(choiceVersion).values({
      id,
      clinicId: access.clinicId,
      version,
      choices,
      changedAt: access.now,
      changedBy: access.actorId,
      reason,
    });
    await sealed(tx, access, {
      act: 'write',
      subject: 'clinic-choices',
      subjectId: id,
      detail: { version, fields: Object.keys(choices) },
    });
    return version;
  });
