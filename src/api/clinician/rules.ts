/** The engine's table for clinicians: every rule with the figures in force here, and how often it was overruled. */

import { rulesOf } from '#core/decision/rules/table.ts';
import {
  type EngineSettingId,
  engineSettings,
  engineSettingValues,
  engineVersionOf,
} from '#core/decision/settings.ts';
import { version3 } from '#core/decision/version-3-settings.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { overrideCounts } from '#data/decision/overrides.ts';
import { clinicianProcedure, router } from '../trpc.ts';

export const rulesRouter = router({
  list: clinicianProcedure.query(async ({ ctx }) => {
    const defaults = defaultsOf(engineSettings);
    const own = await settingsOf(ctx.access);
    const counts = await overrideCounts(ctx.access);
    const values = engineSettingValues(own);
    return {
      version: String(engineVersionOf(values)),
      isVersion3: Object.entries(version3).every(([id, value]) => values[id as EngineSettingId] === value),
      rules: rulesOf(engineVersionOf(values)).map((rule) => ({
        id: rule.id,
        title: rule.title,
        effect: rule.effect,
        threshold: rule.threshold(values),
        restsOn: rule.restsOn,
        citations: rule.citations,
        settings: rule.settings.flatMap((id) => {
          const choice = engineSettings.find((one) => one.id === id);
          const value = own[id] ?? defaults[id];
          return choice && value !== undefined
            ? [
                {
                  id,
                  title: choice.title,
                  unit: choice.unit,
                  value,
                  isDefault: value === choice.default,
                  min: choice.min,
                  max: choice.max,
                  why: choice.why,
                },
              ]
            : [];
        }),
        overruled: counts.get(rule.id) ?? 0,
      })),
    };
  }),
});
