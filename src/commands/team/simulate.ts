/**
 * `npm run simulate -- [--arms a,b] [--weeks 12,26] [--people N] [--seed N]
 * [--model first|second] [--law first|second] [--slope N] [--json] [--<clinic setting> N]`: ways of dosing beside each other on invented people whose joint answers to
 * the load. With `--json` one line an arm and type, "all" for the mean of the types. `--keep`, alone or
 * with a seed, writes what the rules page shows. Exit 2 on wrong use.
 */
import { engineDefaults, engineSettings } from '#core/decision/settings.ts';
import { secondModel } from '#simulation/second-model/model.ts';
import { armsWithFrontier } from '#simulation/trial/arms.ts';
import { jointSettings } from '#simulation/trial/joint-settings.ts';
import { firstModel, type TrialSettings, trialRows } from '#simulation/trial/trial.ts';
import { keepTrial } from './simulate/keep.ts';
import { jsonLine, tableHead, tableLine } from './simulate/lines.ts';
import { readOptions, type SimulateOptions, usage } from './simulate/options.ts';

const models = { first: firstModel, second: secondModel };

const inventedOfFirst = (): string =>
  Object.entries(jointSettings)
    .filter(([, { basis }]) => basis === 'invented')
    .map(([name, { value }]) => `${name} ${value}`)
    .join(', ');

/** How a call about overdoing works, where the invented figures stand, and which model it is. */
const saidOf = {
  first: {
    call: 'halves it',
    settings: () => `invented settings: ${inventedOfFirst()}`,
    model: ({ law, slope }: TrialSettings) => `law ${law}, slope ${slope}`,
  },
  second: {
    call: 'makes it a third',
    settings: () => 'invented settings: listed in src/simulation/second-model/figures.ts',
    model: () => 'second model of people',
  },
};

const sayWhatThisIs = ({ model, trial, clinic }: SimulateOptions): void => {
  const said = saidOf[model];
  console.log(
    'Every person here is invented, and so is how their joint answers to load: these figures show what',
  );
  console.log(
    'the ways of dosing do under that model. Nothing here says that loading helps or harms anybody.',
  );
  console.log(
    'A clinician looks on Mondays and signs whatever waits; a call changes nothing, except that one',
  );
  console.log(`about overdoing ${said.call}.`);
  console.log(said.settings());
  const moved = engineSettings.filter(({ id }) => clinic[id] !== engineDefaults[id]);
  console.log(`clinic settings: ${moved.map(({ id }) => `${id} ${clinic[id]}`).join(', ') || 'defaults'}`);
  console.log(`seed ${trial.seed}, ${trial.people} people of each type, ${said.model(trial)}`);
};

export const run = async (args: string[]): Promise<number> => {
  const options = readOptions(args);
  if (!('trial' in options)) {
    for (const refusal of options) console.error(refusal);
    console.error(usage);
    return 2;
  }
  if (options.keep) {
    keepTrial(options.trial.seed);
    return 0;
  }
  if (!options.json) sayWhatThisIs(options);
  for (const arm of armsWithFrontier(options.clinic).filter(({ id }) => options.arms.includes(id))) {
    const rows = trialRows(arm, options.trial, models[options.model]);
    if (options.json) {
      for (const row of rows) console.log(jsonLine(row));
      continue;
    }
    for (const weeks of options.trial.weeks) {
      console.log(`\n${arm.title}, ${weeks} weeks`);
      for (const text of tableHead) console.log(text);
      for (const row of rows.filter((one) => one.weeks === weeks)) console.log(tableLine(row));
    }
  }
  return 0;
};
