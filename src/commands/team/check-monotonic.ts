/**
 * `npm run check-monotonic -- [--facts N] [--histories N] [--minutes N] [--seed N]`: raises symptoms in random facts
 * and in random histories and looks for an answer that became bolder. At least as many of each as named (a
 * million together where nothing is), longer when minutes are given. Exit 1 on a violation, 2 on wrong use.
 */
import { seeded } from '#simulation/raises/seeded.ts';
import { type RaiseCount, tryFactRaises, tryHistoryRaises } from '#simulation/raises/try-raises.ts';

const leastFacts = 975_000;
const leastHistories = 25_000;
/** Raises between two looks at the clock. */
const factRaises = 19_500;
const historyRaises = 500;
const shownViolations = 5;
const usage = 'Use: npm run check-monotonic -- [--facts N] [--histories N] [--minutes N] [--seed N]';

/** A whole or decimal number after a named argument; null for anything else on the line. */
export const readNumbers = <N extends string>(
  args: readonly string[],
  defaults: Readonly<Record<N, number>>,
): Record<N, number> | null => {
  const values: Record<string, number> = { ...defaults };
  for (let place = 0; place < args.length; place += 2) {
    const name = args[place]?.replace(/^--/, '') ?? '';
    const value = Number(args[place + 1]);
    if (!args[place]?.startsWith('--') || !(name in defaults)) return null;
    if (args[place + 1] === undefined || !Number.isFinite(value) || value < 0) return null;
    values[name] = value;
  }
  return values as Record<N, number>;
};

const added = (a: RaiseCount, b: RaiseCount): RaiseCount => ({
  raises: a.raises + b.raises,
  comparisons: a.comparisons + b.comparisons,
  fromProgress: a.fromProgress + b.fromProgress,
  violations: [...a.violations, ...b.violations].slice(0, shownViolations),
});

const nothing: RaiseCount = { raises: 0, comparisons: 0, fromProgress: 0, violations: [] };

const line = (name: string, count: RaiseCount): string =>
  `${name}: ${count.raises} raises, ${count.comparisons} comparisons, ${count.fromProgress} from progress, ${count.violations.length} bolder`;

export const run = async (args: string[]): Promise<number> => {
  const options = readNumbers(args, {
    minutes: 0,
    seed: 20_260_131,
    facts: leastFacts,
    histories: leastHistories,
  });
  if (!options) {
    console.error(usage);
    return 2;
  }
  console.log(`seed ${options.seed}`);
  const random = seeded(options.seed);
  const until = Date.now() + options.minutes * 60_000;
  let facts = nothing;
  let histories = nothing;
  let shown = Date.now();
  const lack = (done: number, least: number): boolean => done < least || Date.now() < until;
  while (lack(facts.raises, options.facts) || lack(histories.raises, options.histories)) {
    if (lack(facts.raises, options.facts)) facts = added(facts, tryFactRaises(random, factRaises));
    if (lack(histories.raises, options.histories))
      histories = added(histories, tryHistoryRaises(random, historyRaises));
    if (facts.violations.length + histories.violations.length > 0) break;
    if (Date.now() - shown < 10_000) continue;
    shown = Date.now();
    console.log(`${facts.raises + histories.raises} raises, none bolder so far`);
  }
  console.log(line('facts', facts));
  console.log(line('histories', histories));
  for (const violation of [...facts.violations, ...histories.violations])
    console.error(`BOLDER ${violation}`);
  const raises = facts.raises + histories.raises;
  const bolder = facts.violations.length + histories.violations.length;
  console.log(`${raises} raises, ${bolder} bolder answers`);
  return bolder > 0 ? 1 : 0;
};
