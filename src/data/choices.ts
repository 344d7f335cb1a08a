/** The clinic's own numbers, as versions. */
import { randomUUID } from 'node:crypto';
import { desc, eq } from 'drizzle-orm';
import type { ChoiceValues, ClinicChoice } from '#core/clinic-choice.ts';
import type { Access } from './access.ts';
import { sealed } from './audit.ts';
import { clinicChanged } from './changed.ts';
import { clinicSettingsVersion } from './schema/schema.ts';
import { ofClinic, prepared } from './store/prepared.ts';

const newestChoices = prepared((db) =>
  db
    .select({ choices: clinicSettingsVersion.settings })
    .from(clinicSettingsVersion)
    .where(ofClinic(clinicSettingsVersion))
    .orderBy(desc(clinicSettingsVersion.version))
    .limit(1),
);

/** Values the clinic has set; those it has not set are left out and take their defaults. */
export const choicesOf = async (access: Pick<Access, 'store' | 'clinicId'>): Promise<ChoiceValues> => {
  const [row] = await newestChoices(access.store.read, { clinicId: access.clinicId });
  return row?.choices ?? {};
};

/** One number as it holds now: the clinic's own, or the default of the list it stands in. */
export const choiceValue = async (
  access: Pick<Access, 'store' | 'clinicId'>,
  list: readonly ClinicChoice[],
  id: string,
): Promise<number> => {
  const choice = list.find((one) => one.id === id);
  if (!choice) throw new RangeError(`There is no clinic choice named ${id}.`);
  return (await choicesOf(access))[id] ?? choice.default;
};

export interface ChoiceChange {
  readonly version: number;
  readonly choices: ChoiceValues;
  readonly changedAt: number;
  readonly changedBy: string;
  readonly reason: string;
}

/** Every version, newest first. */
export const choiceChanges = async (access: Access): Promise<readonly ChoiceChange[]> =>
  access.store.read
    .select({
      version: clinicSettingsVersion.version,
      choices: clinicSettingsVersion.settings,
      changedAt: clinicSettingsVersion.changedAt,
      changedBy: clinicSettingsVersion.changedBy,
      reason: clinicSettingsVersion.reason,
    })
    .from(clinicSettingsVersion)
    .where(eq(clinicSettingsVersion.clinicId, access.clinicId))
    .orderBy(desc(clinicSettingsVersion.version));

export const saveChoices = (access: Access, choices: ChoiceValues, reason: string): Promise<number> =>
  access.store.write(async (tx) => {
    const [last] = await tx
      .select({ version: clinicSettingsVersion.version })
      .from(clinicSettingsVersion)
      .where(eq(clinicSettingsVersion.clinicId, access.clinicId))
      .orderBy(desc(clinicSettingsVersion.version))
      .limit(1);
    const version = (last?.version ?? 0) + 1;
    const id = randomUUID();
    await tx.insert(clinicSettingsVersion).values({
      id,
      clinicId: access.clinicId,
      version,
      settings: choices,
      changedAt: access.now,
      changedBy: access.actorId,
      reason,
    });
    // Due dates rest on these numbers.
    clinicChanged(access);
    await sealed(tx, access, {
      act: 'write',
      subject: 'clinic-settings',
      subjectId: id,
      detail: { version, fields: Object.keys(choices) },
    });
    return version;
  });
