/** Templates of a clinic. Append-only: another name, a withdrawal and its undoing are rows of their own. */
import { sql } from 'drizzle-orm';
import type { TemplateDose } from '#core/prescribing/clinic-template.ts';
import { kit, words } from './kit.ts';
import { clinic } from './people.ts';

export const doseTemplate = kit.appendOnly('dose_template', {
  id: kit.id('id').primaryKey(),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  name: kit.text('name'),
  doses: kit.json<readonly TemplateDose[]>('doses'),
  recordedAt: kit.instant('recorded_at'),
  recordedBy: kit.id('recorded_by'),
  byName: kit.text('by_name'),
});

export const templateChanges = ['renamed', 'withdrawn', 'brought-back'] as const;

export const doseTemplateChange = kit.appendOnly(
  'dose_template_change',
  {
    id: kit.id('id').primaryKey(),
    templateId: kit.id('template_id').references(() => doseTemplate.id),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    change: kit.word('change', templateChanges),
    /** The new name; null where it keeps its own. */
    name: kit.textOrNull('name'),
    changedAt: kit.instant('changed_at'),
    changedBy: kit.id('changed_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.index('dose_template_change_by_template').on(t.templateId, t.changedAt),
    kit.check('dose_template_change_word', sql`${t.change} IN (${words(templateChanges)})`),
    kit.check('dose_template_change_name', sql`(${t.change} = 'renamed') = (${t.name} IS NOT NULL)`),
  ],
);
