/**
 * The engine's table for clinicians: every rule with the figures in force here, and how often it was overruled.
 * Beside it the trial on invented people, as kept with the release, and a clinic's own rule of dosing by hand run
 * on the same people. Nothing of that is of anybody's record, and nothing is stored.
 */
import { setImmediate } from 'node:timers/promises';
import { z } from 'zod';

import { fewestPeople, ruleBoard } from '#core/decision/followed/rule-board.ts';
import { sentencesOf } from '#core/decision/patient-sentence.ts';
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
import type { KeptRow } from '#simulation/kept/kept-row.ts';
import { keptModels, keptTrial, ownRule, tryOwnRule } from '#simulation/kept/kept-trial.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
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
        patientReads: sentencesOf(rule.id as RuleId).map((one) => ruleText(one).en),
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

const sliceMs = 8;
const mostMs = 60_000;

const rowOf = ([arm, type, strengthPercent, badDays, loadCausedBadDays, actions, finalDose]: KeptRow) => ({
  arm,
  title: keptTrial.titles.get(arm) ?? null,
  onFrontier: keptTrial.frontier.includes(arm),
  type,
  strengthPercent,
  badDays,
  loadCausedBadDays,
  clinicianActions: actions,
  finalDose,
});

/** Works on for a few milliseconds at a time; in between the server answers others. */
const inSlices = async <T>(steps: Generator<void, T>): Promise<T> => {
  const began = performance.now();
  for (;;) {
    const slice = performance.now();
    do {
      const step = steps.next();
      if (step.done) return step.value;
    } while (performance.now() - slice < sliceMs);
    if (performance.now() - began > mostMs)
      throw new Problem('too-often', 'The server is busy, so the rule was not run to its end. Try it again.');
    await setImmediate();
  }
};

let isRunning = false;

/** One at a time: a second one would only make both slower. */
const alone = async <T>(run: () => Promise<T>): Promise<T> => {
  if (isRunning) throw new Problem('too-often', 'Another rule is being run. Try again in a few seconds.');
  isRunning = true;
  try {
    return await run();
  } finally {
    isRunning = false;
  }
};

export const inventedPeopleRouter = router({
  get: clinicianProcedure.query(() => ({
    ...keptTrial.run,
    models: keptModels.map((id) => ({ id, rows: keptTrial.rows[id].map(rowOf) })),
    fields: ownRule.fields,
    usual: ownRule.usual,
  })),

  tryOwnRule: clinicianProcedure
    .input(z.object({ model: z.enum(keptModels), rule: z.unknown() }))
    .mutation(async ({ input }) => {
      const rule = checked(ownRule.fields, input.rule);
      const rows = await alone(() => inSlices(tryOwnRule(rule, input.model)));
      return rows.map(rowOf);
    }),
});
