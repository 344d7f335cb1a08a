/** What `npm run simulate` was asked for; anything it cannot be asked for is said with how to put it right. */
import { type EngineSettingValues, engineDefaults, engineSettings } from '#core/decision/settings.ts';
import { checkSettings } from '#core/sources/clinic-setting.ts';
import { armIds, armsWithFrontier } from '#simulation/trial/arms.ts';
import type { TrialSettings } from '#simulation/trial/trial.ts';
import { type Law, laws } from '#simulation/trial/work.ts';

export const usage =
  'Use: npm run simulate -- [--arms NAME,NAME] [--weeks N,N] [--people N of each type] [--seed N] [--model first|second] [--law first|second] [--slope N] [--json] [--<clinic setting> N], or --keep [--seed N]';

const models = ['first', 'second'] as const;
type Model = (typeof models)[number];

export interface SimulateOptions {
  readonly arms: readonly string[];
  readonly model: Model;
  readonly trial: TrialSettings;
  readonly clinic: EngineSettingValues;
  readonly json: boolean;
  /** Every arm on both models, written where the rules page reads it. */
  readonly keep: boolean;
}

const most = { weeks: 104, people: 10_000, seed: 0xffff_ffff, slope: 10 } as const;

/** The version of the rules is what the arm is. */
const settingIds: readonly string[] = engineSettings
  .map(({ id }) => id)
  .filter((id) => id !== 'engine-version');
const known: readonly string[] = ['arms', 'weeks', 'people', 'seed', 'model', 'law', 'slope'];

/** Options without a value. */
const alone: readonly string[] = ['json', 'keep'];
/** Kept rows are of one size and of the settings every clinic starts with. */
const besideKeep: readonly string[] = ['keep', 'seed'];
const knownArms: readonly string[] = armsWithFrontier(engineDefaults).map(({ id }) => id);

/** Values by name; a name nobody knows, one without a value and one given twice are refused. */
const readPairs = (args: readonly string[], refused: string[]): ReadonlyMap<string, string> => {
  const values = new Map<string, string>();
  for (let place = 0; place < args.length; place++) {
    const arg = args[place]!;
    const name = arg.replace(/^--/, '');
    if (
      !arg.startsWith('--') ||
      !(alone.includes(name) || known.includes(name) || settingIds.includes(name))
    ) {
      refused.push(`There is no option "${arg}".`);
      return values;
    }
    if (values.has(name)) refused.push(`--${name} is given twice: give it once.`);
    if (alone.includes(name)) {
      values.set(name, '');
      continue;
    }
    const value = args[++place];
    if (value === undefined || value.startsWith('--')) {
      refused.push(`--${name} needs a value after it.`);
      return values;
    }
    values.set(name, value);
  }
  return values;
};

const wholeNumber = (
  text: string,
  name: string,
  least: number,
  highest: number,
  refused: string[],
): number => {
  const value = Number(text);
  if (text.trim() === '' || !Number.isInteger(value) || value < least || value > highest)
    refused.push(`--${name} is a whole number from ${least} to ${highest}, not "${text}".`);
  return value;
};

const readArms = (text: string | undefined, refused: string[]): readonly string[] => {
  if (text === undefined) return armIds;
  const asked = [...new Set(text.split(',').map((name) => name.trim()))];
  for (const name of asked.filter((one) => !knownArms.includes(one)))
    refused.push(`There is no arm "${name}": choose among ${knownArms.join(', ')}.`);
  return asked;
};

/** Law and slope are settings of the first model; the second would pass over them without a word. */
const readModel = (values: ReadonlyMap<string, string>, refused: string[]): Model => {
  const text = values.get('model') ?? 'first';
  const model = models.find((one) => one === text);
  if (!model) refused.push(`--model is ${models.join(' or ')}, not "${text}".`);
  for (const name of ['law', 'slope'])
    if (model === 'second' && values.has(name))
      refused.push(`--${name} belongs to the first model: leave it out, or take --model first.`);
  return model ?? models[0];
};

const readLaw = (text: string, refused: string[]): Law => {
  const law = laws.find((one, place) => one === text || String(place + 1) === text);
  if (!law) refused.push(`--law is ${laws.join(' or ')}, not "${text}".`);
  return law ?? laws[0];
};

const readSlope = (text: string, refused: string[]): number => {
  const slope = Number(text);
  if (text.trim() === '' || !(slope >= 0 && slope <= most.slope))
    refused.push(`--slope is a number from 0 to ${most.slope}, not "${text}".`);
  return slope;
};

const readClinic = (values: ReadonlyMap<string, string>, refused: string[]): EngineSettingValues => {
  const chosen: Record<string, number> = { ...engineDefaults };
  for (const id of settingIds) if (values.has(id)) chosen[id] = Number(values.get(id));
  for (const { field, reason } of checkSettings(engineSettings, chosen))
    refused.push(`--${field.replace(/^choices\./, '')}: ${reason}`);
  return chosen as EngineSettingValues;
};

/** The options, or in words everything that is wrong with them. */
export const readOptions = (args: readonly string[]): SimulateOptions | readonly string[] => {
  const refused: string[] = [];
  const values = readPairs(args, refused);
  for (const name of values.keys())
    if (values.has('keep') && !besideKeep.includes(name))
      refused.push(`--${name} does not go with --keep, which takes a seed and nothing else.`);
  const weeks = (values.get('weeks') ?? '12')
    .split(',')
    .map((text) => wholeNumber(text, 'weeks', 1, most.weeks, refused));
  const options = {
    arms: readArms(values.get('arms'), refused),
    model: readModel(values, refused),
    trial: {
      weeks: [...new Set(weeks)],
      people: wholeNumber(values.get('people') ?? '20', 'people', 1, most.people, refused),
      seed: wholeNumber(values.get('seed') ?? '20260131', 'seed', 0, most.seed, refused),
      law: readLaw(values.get('law') ?? 'first', refused),
      slope: readSlope(values.get('slope') ?? '1', refused),
    },
    clinic: readClinic(values, refused),
    json: values.has('json'),
    keep: values.has('keep'),
  };
  return refused.length > 0 ? refused : options;
};
