/** Templates of the clinic with what became of each: who saved, renamed or withdrew it. */
import { randomUUID } from 'node:crypto';
import { asc, eq } from 'drizzle-orm';
import type { TemplateDose } from '#core/prescribing/clinic-template.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { doseTemplate, doseTemplateChange, type templateChanges } from '../schema/schema.ts';

type Change = (typeof templateChanges)[number];

export interface DoseTemplate {
  readonly id: string;
  readonly name: string;
  readonly doses: readonly TemplateDose[];
  readonly savedAt: number;
  readonly savedBy: string;
  /** Other names it had, oldest first, each with who gave the next. */
  readonly earlierNames: readonly {
    readonly name: string;
    readonly until: number;
    readonly byName: string;
  }[];
  /** null = offered. */
  readonly withdrawn: { readonly at: number; readonly byName: string } | null;
}

type TemplateRow = typeof doseTemplate.$inferSelect;
type ChangeRow = typeof doseTemplateChange.$inferSelect;

const templateFrom = (row: TemplateRow, changes: readonly ChangeRow[]): DoseTemplate => {
  const renamed = changes.filter(({ change }) => change === 'renamed');
  const names = [row.name, ...renamed.map(({ name }) => name ?? row.name)];
  const standing = changes.filter(({ change }) => change !== 'renamed').at(-1);
  return {
    id: row.id,
    name: names.at(-1) ?? row.name,
    doses: row.doses,
    savedAt: row.recordedAt,
    savedBy: row.byName,
    earlierNames: renamed.map(({ changedAt, byName }, place) => ({
      name: names[place] ?? row.name,
      until: changedAt,
      byName,
    })),
    withdrawn: standing?.change === 'withdrawn' ? { at: standing.changedAt, byName: standing.byName } : null,
  };
};

/** All of the clinic, by name, those withdrawn as well. */
export const templatesOf = async ({ store, clinicId }: Access): Promise<readonly DoseTemplate[]> => {
  const rows = await store.read
    .select()
    .from(doseTemplate)
    .where(eq(doseTemplate.clinicId, clinicId))
    .orderBy(asc(doseTemplate.recordedAt));
  const changes = await store.read
    .select()
    .from(doseTemplateChange)
    .where(eq(doseTemplateChange.clinicId, clinicId))
    .orderBy(asc(doseTemplateChange.changedAt));
  return rows
    .map((row) =>
      templateFrom(
        row,
        changes.filter(({ templateId }) => templateId === row.id),
      ),
    )
    .toSorted((a, b) => a.name.localeCompare(b.name));
};

export const addTemplate = (
  access: Access,
  patientId: string,
  { name, doses }: { readonly name: string; readonly doses: readonly TemplateDose[] },
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    const { clinicId, now: recordedAt, actorId: recordedBy, actorName: byName } = access;
    await tx.insert(doseTemplate).values({ id, clinicId, name, doses, recordedAt, recordedBy, byName });
    await auditWrite(tx, access, 'dose-template', {
      subjectId: id,
      patientId,
      detail: { doses: doses.length },
    });
    return id;
  });

export const changeTemplate = (
  access: Access,
  templateId: string,
  change: Change,
  name: string | null = null,
): Promise<void> =>
  access.store.write(async (tx) => {
    const { clinicId, now: changedAt, actorId: changedBy, actorName: byName } = access;
    await tx
      .insert(doseTemplateChange)
      .values({ id: randomUUID(), templateId, clinicId, change, name, changedAt, changedBy, byName });
    await auditWrite(tx, access, 'dose-template-change', { subjectId: templateId, detail: { change } });
  });
