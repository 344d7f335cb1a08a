/** The clinic's own numbers: seen by all staff, changed by those who administer it, after a look at the effect. */
import { z } from 'zod';
import { digestOfIds, noteRead } from '#data/audit/audit.ts';
import { saveSettings, settingChanges, settingsOf } from '#data/clinic/clinic-settings.ts';
import { namesOf, previewSettings } from '#data/clinic/settings-preview.ts';
import { refusedWith } from '../errors.ts';
import { administratorProcedure, freshAdministrator, router, staffProcedure } from '../trpc.ts';
import { effectiveSettings, ownSettings, refusedSettings, settingAreas } from './setting-areas.ts';

const values = z.record(z.string().max(80), z.number());

/** Most lines shown by name; the counts are of all. */
const mostLines = 200;

const checkedValues = (sent: Readonly<Record<string, number>>) => {
  const refusals = refusedSettings(sent);
  if (refusals.length > 0) throw refusedWith(refusals);
  return ownSettings(sent);
};

export const clinicSettingsRouter = router({
  list: staffProcedure.query(async ({ ctx }) => {
    const own = await settingsOf(ctx.access);
    const effective = effectiveSettings(own);
    const changes = await settingChanges(ctx.access);
    return {
      mayChange: ctx.person.administers,
      areas: settingAreas.map((area) => ({
        ...area,
        settings: area.settings.map((setting) => ({ ...setting, value: effective[setting.id]! })),
      })),
      changes: changes.map(({ version, changedAt, reason }) => ({ version, changedAt, reason })),
    };
  }),

  /** Whose stored decisions would differ. Who only administers gets the counts and no names. */
  preview: administratorProcedure.input(z.object({ values })).mutation(async ({ ctx, input }) => {
    const preview = await previewSettings(ctx.access, checkedValues(input.values));
    const { changes, ...counts } = preview;
    if (ctx.person.role !== 'clinician') return { ...counts, lines: [] };
    const shown = changes.slice(-mostLines);
    const names = await namesOf(ctx.access);
    const ids = shown.map((change) => change.patientId);
    noteRead(ctx.access, {
      subject: 'clinic-settings-preview',
      detail: { count: ids.length, ids: digestOfIds(ids) },
    });
    return {
      ...counts,
      lines: shown.map((change) => ({ ...change, name: names.get(change.patientId) ?? '' })),
    };
  }),

  save: freshAdministrator
    .input(z.object({ values, reason: z.string().trim().min(3).max(500) }))
    .mutation(({ ctx, input }) => saveSettings(ctx.access, checkedValues(input.values), input.reason)),
});
