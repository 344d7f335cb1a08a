/** What may be asked of the bench on its command line. */
import type { GroupPlan } from './group/plan.ts';

export interface Options {
  readonly only: string | null;
  readonly patients: number;
  /** Over all patients. */
  readonly sessions: number;
  readonly json: string | null;
  readonly minutes: number;
}

export const usage = (parts: readonly string[]): string =>
  `Use: npm run bench -- [--only NAME] [--patients N] [--sessions N] [--minutes N] [--json FILE]
  NAME is one of ${parts.join(', ')}
`;

const defaults: Options = { only: null, patients: 5000, sessions: 1_000_000, json: null, minutes: 0 };
const texts = ['only', 'json'];
const numbers = ['patients', 'sessions', 'minutes'];

/** null for anything that is not an option. */
export const readOptions = (args: readonly string[]): Options | null => {
  const found: Record<string, string | number> = {};
  for (let place = 0; place < args.length; place += 2) {
    const name = /^--([a-z]+)$/.exec(args[place]!)?.[1] ?? '';
    const value = args[place + 1];
    if (value === undefined || (!texts.includes(name) && !numbers.includes(name))) return null;
    const number = Number(value);
    if (numbers.includes(name) && !(Number.isFinite(number) && number >= 0)) return null;
    found[name] = numbers.includes(name) ? number : value;
  }
  const options: Options = { ...defaults, ...found };
  const isWhole = Number.isInteger(options.patients) && options.patients >= 100;
  return isWhole && options.sessions >= options.patients * 8 ? options : null;
};

export const planOf = ({ patients, sessions }: Options): GroupPlan => ({
  patients,
  sessionsEach: Math.round(sessions / patients),
});

/** A patient's sessions in the growing clinics; the same in each, so that only the clinic grows. */
const growthSessions = 60;
const growthSizes = [0.02, 0.2, 2];
/** Fewer patients would not fill the page whose cost is compared. */
const fullPage = 60;

/** 100, 1,000 and 10,000 patients beside a group of 5,000; smaller in proportion. */
export const growthOf = ({ patients, sessions }: Options): readonly GroupPlan[] =>
  growthSizes.map((size) => ({
    patients: Math.max(fullPage, Math.round(patients * size)),
    sessionsEach: Math.min(growthSessions, Math.round(sessions / patients)),
  }));
