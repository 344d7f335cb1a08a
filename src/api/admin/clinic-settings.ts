/** The clinic's own numbers: seen by all staff, changed one by one by those who administer it, after a look at the effect. */
import { z } from 'zod';
import type { ClinicSetting, SettingValues } from '#core/sources/clinic-setting.ts';
import type { Access } from '#data/access.ts';
import {
  type SettingChange,
  saveSettings,
  settingChanges,
  settingsOf,
} from '#data/clinic/clinic-settings.ts';
import { usualWeeks } from '#data/replay/what-if.ts';
import { jobName, whatIfOfEverybody } from '../clinician/replay/everybody.ts';
import { Problem, refusedWith } from '../errors.ts';
import { requireNoted } from '../require-noted.ts';
import { administratorProcedure, freshAdministrator, router, staffProcedure } from '../trpc.ts';
import { asEntries, effectiveSettings, isOfDecisions, refusedSettings, titleOf } from './every-setting.ts';
import { lookedAt, requireLookedAt } from './looked-at.ts';
import { settingGroups } from './setting-groups.ts';

const values = z.record(z.string().max(80), z.number());

const checked = async (access: Access, sent: SettingValues): Promise<SettingValues> => {
  const refusals = refusedSettings(sent, await settingsOf(access));
  if (refusals.length > 0) throw refusedWith(refusals);
  return sent;
};

const ownOfDecisions = (values: SettingValues): SettingValues =>
  Object.fromEntries(Object.entries(values).filter(([id]) => isOfDecisions(id)));

/** Who changed one setting, when, from what to what and why; newest first. */
const historyOf = ({ id, default: usual }: ClinicSetting, newestFirst: readonly SettingChange[]) =>
  newestFirst.flatMap(({ settings, changedAt, byName, reason }, place) => {
    const before = newestFirst[place + 1]?.settings[id] ?? usual;
    const after = settings[id] ?? usual;
    return before === after ? [] : [{ before, after, at: changedAt, by: byName, reason }];
  });

const conflict = (ids: readonly string[], now: SettingValues, changes: readonly SettingChange[]): Problem => {
  const refusals = ids.map((id) => {
    const setting = settingGroups.flatMap((group) => group.settings).find((one) => one.id === id);
    const by = setting && historyOf(setting, changes)[0]?.by;
    return {
      field: `input.choices.${id}`,
      code: 'inconsistent' as const,
      reason: `${by ?? 'A colleague'} has changed “${titleOf(id)}” to ${now[id]} meanwhile. Nothing was saved: look at it, then save yours or leave it.`,
    };
  });
  return new Problem('conflict', refusals.map(({ reason }) => reason).join(' '), { refusals });
};

export const clinicSettingsRouter = router({
  list: staffProcedure.query(async ({ ctx }) => {
    const changes = await settingChanges(ctx.access);
    const effective = effectiveSettings(changes[0]?.settings ?? {});
    return {
      mayChange: ctx.person.administers,
      groups: settingGroups.map((group) => ({
        ...group,
        settings: group.settings.map((setting) => ({
          ...setting,
          value: effective[setting.id]!,
          isOfDecisions: isOfDecisions(setting.id),
          history: historyOf(setting, changes),
        })),
      })),
    };
  }),

  /**
   * Whose days would have been others by these settings alone; `job` names it for whoever waits. Who only
   * administers gets the counts and no names.
   */
  preview: administratorProcedure
    .input(z.object({ values, job: jobName.optional() }))
    .mutation(async ({ ctx, input }) => {
      requireNoted(ctx.access);
      const settings = ownOfDecisions(await checked(ctx.access, input.values));
      const looked = lookedAt(ctx.access, input.values, await settingsOf(ctx.access));
      const moved = { settings, joints: {} };
      const found = await whatIfOfEverybody(ctx, moved, usualWeeks, input.job ?? looked);
      return { ...found, lookedAt: looked };
    }),

  /**
   * Changes those named and leaves every other as it is; `seen` is what stood on the page, `lookedAt` the preview’s
   * own, without which no number that decides is changed.
   */
  save: freshAdministrator
    .input(
      z.object({
        values,
        seen: values,
        reason: z.string().trim().min(3).max(500),
        lookedAt: z.string().max(64).optional(),
      }),
    )
    .output(z.number())
    .mutation(async ({ ctx, input }) => {
      const { values: sent, seen, reason } = input;
      const entries = asEntries(await checked(ctx.access, sent));
      const own = await settingsOf(ctx.access);
      const asSeen = Object.entries(asEntries(seen)).every(([id, value]) => (own[id] ?? null) === value);
      // What a colleague changed meanwhile is said by name below, and nothing is saved then either.
      if (asSeen) requireLookedAt(ctx.access, sent, own, input.lookedAt);
      const saved = await saveSettings(ctx.access, entries, reason, asEntries(seen));
      if ('version' in saved) return saved.version;
      const now = effectiveSettings(await settingsOf(ctx.access));
      throw conflict(saved.changedMeanwhile, now, await settingChanges(ctx.access));
    }),
});
