/** The engine's table for clinicians: every rule with the figures in force here, and how often it was overruled. */

import { fewestPeople, ruleBoard } from '#core/decision/followed/rule-board.ts';
import { sentencesOf } from '#core/decision/patient-sentence.ts';
import { notProvenOf, restsOnWhat } from '#core/decision/rules/how-proven.ts';
import { type RuleId, rulesOf } from '#core/decision/rules/table.ts';
import {
  type EngineSettingId,
  engineSettings,
  engineSettingValues,
  engineVersionOf,
} from '#core/decision/settings.ts';
import { version3 } from '#core/decision/version-3-settings.ts';
import { defaultsOf, isSwitch } from '#core/sources/clinic-setting.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { boardDays, followedDecisions } from '#data/decision/followed-decisions.ts';
import { overrideCounts } from '#data/decision/overrides.ts';
import { ruleText } from '#messages/decisions.ts';
import { proofRun, ruleProofs } from '#simulation/kept/kept-proof.ts';
import { clinicianProcedure, router } from '../trpc.ts';

/** Of the rule in its newest form, as the last run of its tests left it. */
const proofOf = (rule: string) => ruleProofs.find((row) => row.rule === rule)!;

export const rulesRouter = router({
  list: clinicianProcedure.query(async ({ ctx }) => {
    const defaults = defaultsOf(engineSettings);
    const own = await settingsOf(ctx.access);
    const counts = await overrideCounts(ctx.access);
    const values = engineSettingValues(own);
    return {
      version: String(engineVersionOf(values)),
      proofRun,
      isVersion3: Object.entries(version3).every(([id, value]) => values[id as EngineSettingId] === value),
      rules: rulesOf(engineVersionOf(values)).map((rule) => ({
        id: rule.id,
        title: rule.title,
        effect: rule.effect,
        threshold: rule.threshold(values),
        patientReads: sentencesOf(rule.id as RuleId).map((one) => ruleText(one).en),
        restsOn: rule.restsOn,
        restsOnWhat: restsOnWhat(rule),
        notProven: notProvenOf(rule),
        proof: proofOf(rule.id),
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
                  isSwitch: isSwitch(choice),
                },
              ]
            : [];
        }),
        overruled: counts.get(rule.id) ?? 0,
      })),
    };
  }),

  /** What each rule did here and what followed: figures of groups, none of a person. */
  followed: clinicianProcedure.query(async ({ ctx }) => {
    const rules = rulesOf(engineVersionOf(engineSettingValues(await settingsOf(ctx.access))));
    const rows = ruleBoard(
      rules.map(({ id }) => id),
      await followedDecisions(ctx.access),
    );
    return {
      weeks: boardDays / 7,
      people: fewestPeople,
      rows: rows.map((row, place) => ({ ...row, title: rules[place]!.title })),
    };
  }),
});
