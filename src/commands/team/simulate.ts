/**
 * `npm run simulate -- [--patients N] [--weeks N] [--seed N] [--widened N]
 * [--<clinic choice> N]`: invented diaries by type through the engine and the dose rules. Prints what the rules did; symptoms are independent of load, so nothing
 * here says that loading helps or harms. Exit 2 on wrong use.
 */

import { decisions } from '#core/decision/answers.ts';
import { type EngineSettingValues, engineDefaults, engineSettings } from '#core/decision/settings.ts';
import { checkSettings } from '#core/sources/clinic-setting.ts';
import { diaryTypes } from '#simulation/diaries/diary-types.ts';
import { summarise, type TypeSummary } from '#simulation/diaries/summary.ts';
import { readNumbers } from './check-monotonic.ts';

const usage =
  'Use: npm run simulate -- [--patients N] [--weeks N] [--seed N] [--widened 0|1|2] [--<clinic choice> N]';
const shownRules = 6;

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;

const shares = (of: TypeSummary['shares']): string =>
  decisions.map((word) => `${word} ${percent(of[word])}`).join(', ');

const describeType = (summary: TypeSummary): readonly string[] => {
  const { type, sessions } = summary;
  return [
    `${type.id}: ${type.title}`,
    `  settings: usual ${type.usualPain}, scatter ${type.scatter}, likeness ${type.likeness}, flares a week ${type.flaresPerWeek}, flare days ${type.flareDays}, flare rise ${type.flareRise}, missed ${type.missed}`,
    `  decisions (${summary.decisions}): ${shares(summary.shares)}`,
    `  on flare days (${summary.flareDecisions}): ${shares(summary.flareShares)}`,
    `  deciding rules: ${summary.rules
      .slice(0, shownRules)
      .map(([rule, share]) => `${rule} ${percent(share)}`)
      .join(', ')}`,
    `  dose against the start: median ${percent(summary.dose[1])} (quartiles ${percent(summary.dose[0])} to ${percent(summary.dose[2])})`,
    `  planned days: full ${sessions.full}, easier ${sessions.easier}, none ${sessions.none}`,
  ];
};

/** The clinic choices among the options; anything out of its bounds is refused in words. */
const settingsFrom = (options: Readonly<Record<string, number>>): EngineSettingValues | null => {
  const chosen = Object.fromEntries(engineSettings.map(({ id }) => [id, options[id] ?? engineDefaults[id]]));
  const refused = checkSettings(engineSettings, chosen);
  for (const refusal of refused) console.error(refusal.reason);
  return refused.length > 0 ? null : (chosen as EngineSettingValues);
};

export const run = async (args: string[]): Promise<number> => {
  const options = readNumbers(args, {
    patients: 100,
    weeks: 26,
    seed: 20_260_131,
    widened: 0,
    ...engineDefaults,
  });
  const settings = options && settingsFrom(options);
  if (!settings || options.patients < 1 || options.weeks < 1) {
    console.error(usage);
    return 2;
  }
  console.log('Invented diaries. Symptoms do not depend on the load here: this shows what the rules do');
  console.log('with scatter, flares and missed answers, not whether loading helps or harms.');
  console.log('The clinician signs every increase at once and sees a paused plan after 3 days.');
  console.log(
    `seed ${options.seed}, ${options.patients} patients a type, ${options.weeks} weeks, usual band widened by up to ${options.widened}`,
  );
  const moved = engineSettings.filter(({ id }) => settings[id] !== engineDefaults[id]);
  const movedText = moved.map(({ id }) => `${id} ${settings[id]}`).join(', ');
  console.log(`clinic choices: ${movedText === '' ? 'defaults' : movedText}`);
  const simulation = {
    weeks: options.weeks,
    settings,
    widenedBy: options.widened,
    pauseDays: 3,
  };
  for (const type of diaryTypes) {
    const summary = summarise(type, simulation, Math.floor(options.patients), options.seed);
    for (const text of describeType(summary)) console.log(text);
  }
  return 0;
};
