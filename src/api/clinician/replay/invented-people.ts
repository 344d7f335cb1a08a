/**
 * The trial on invented people, as kept with the release; and a rule of dosing by hand, or other settings of the
 * engine, run on the same people. Nothing of it is of anybody's record, and nothing is stored.
 */
import { setImmediate } from 'node:timers/promises';
import { z } from 'zod';
import { engineSettingValues } from '#core/decision/settings.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import type { KeptRow } from '#simulation/kept/kept-row.ts';
import { keptModels, keptTrial, ownRule, tryOwnRule, trySettings } from '#simulation/kept/kept-trial.ts';
import { Problem } from '../../errors.ts';
import { checked } from '../../inputs/checked.ts';
import { movedFrom } from '../../inputs/what-if.ts';
import { clinicianProcedure, router } from '../../trpc.ts';

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

const triedWith = z.object({
  moved: z.unknown(),
  /** Of each type. */
  people: z.number().int().min(1).max(keptTrial.run.people).default(keptTrial.run.people),
});

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

  /** The engine as this clinic has set it, and with other settings, on the first model of people. */
  trySettings: clinicianProcedure.input(triedWith).mutation(async ({ ctx, input }) => {
    const read = movedFrom(input.moved);
    if ('refusals' in read) throw new Problem('refused', read.refusals.join(' '));
    if (Object.keys(read.settings).length === 0)
      throw new Problem('refused', 'Choose a setting of the clinic: usual values are one person’s.');
    const now = engineSettingValues(await settingsOf(ctx.access));
    const rows = await alone(() => inSlices(trySettings(now, { ...now, ...read.settings }, input.people)));
    const { people } = input;
    return { people, weeks: keptTrial.run.weeks, now: rows.now.map(rowOf), tried: rows.tried.map(rowOf) };
  }),
});
