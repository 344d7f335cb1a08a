/** `npm run simulate`: what it prints, and that a wrong option says how to put it right. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { run } from '#commands/team/simulate.ts';

const printed = async (args: readonly string[]) => {
  const out: string[] = [];
  const err: string[] = [];
  vi.spyOn(console, 'log').mockImplementation((text: string) => void out.push(text));
  vi.spyOn(console, 'error').mockImplementation((text: string) => void err.push(text));
  const code = await run([...args]);
  return { code, out, err };
};

afterEach(() => vi.restoreAllMocks());

const small = ['--people', '1', '--weeks', '2', '--arms', 'same-dose,by-hand-hold'];
const numbers = [
  'weeks',
  'strengthPercent',
  'badDays',
  'loadCausedBadDays',
  'flareDays',
  'cuts',
  'falseCuts',
  'raises',
  'raisesOnBadDays',
  'clinicianActions',
  'signed',
  'contacts',
  'sameDayContacts',
  'baselines',
  'sessions',
  'easierSessions',
  'stoppedSessions',
  'finalDose',
  'medianFinalDose',
];

describe('simulate', () => {
  it('with --json prints one line an arm and type and nothing else, each with every figure', async () => {
    const { code, out, err } = await printed([...small, '--json']);
    const rows = out.map((line) => JSON.parse(line) as Record<string, unknown>);
    expect([code, err, rows.length]).toEqual([0, [], 20]);
    expect([...new Set(rows.map(({ arm }) => arm))]).toEqual(['by-hand-hold', 'same-dose']);
    const types = 'steady scatter high flaring inflammatory fragile forgetful eager creeping all'.split(' ');
    expect(rows.slice(0, 10).map(({ type }) => type)).toEqual(types);
    for (const row of rows) {
      expect(Object.keys(row).sort()).toEqual(['arm', 'type', 'progressInFlarePercent', ...numbers].sort());
      for (const name of numbers) expect([name, Number.isFinite(row[name])]).toEqual([name, true]);
      // Arms without an engine decide nothing: left open, never 0.
      expect(row.progressInFlarePercent).toBeNull();
    }
  });

  it('prints the same bytes for the same options', async () => {
    expect((await printed([...small, '--json'])).out).toEqual((await printed([...small, '--json'])).out);
  });

  it('as a table says first that everybody is invented', async () => {
    const { out } = await printed(small);
    expect(out[0]).toMatch(/every person here is invented/i);
    expect(out.join('\n')).toMatch(/nothing here says that loading helps or harms anybody/i);
    // No published dose-response was found, so the pain of overload must stand among the invented settings.
    expect(out.join('\n')).toMatch(/invented settings: .*overloadPain 5, sameEvening 0.35, nextMorning 0.65/);
    expect(out.filter((line) => /^(same-dose|by-hand-hold) +all /.test(line))).toHaveLength(2);
  });

  it('takes the first model unless told, and says which figures are invented in the second', async () => {
    expect((await printed([...small, '--model', 'first'])).out).toEqual((await printed(small)).out);
    const { out } = await printed([...small, '--model', 'second']);
    expect(out[0]).toMatch(/every person here is invented/i);
    expect(out.join('\n')).toMatch(/second model of people/);
    expect(out.join('\n')).toMatch(/src\/simulation\/second-model\/figures\.ts/);
    expect(out).not.toEqual((await printed(small)).out);
  });

  it('prints each number of weeks asked for', async () => {
    const { out } = await printed(['--people', '1', '--weeks', '1,3', '--arms', 'fixed-rise', '--json']);
    expect(out.map((line) => (JSON.parse(line) as { weeks: number }).weeks)).toEqual([
      ...Array(10).fill(1),
      ...Array(10).fill(3),
    ]);
  });

  it.each([
    [['--arms', 'version-9'], /no arm "version-9": choose among version-1, .*oracle/],
    [['--arms', ''], /no arm ""/],
    [['--weeks', '0'], /--weeks is a whole number from 1 to 104/],
    [['--weeks', '12,x'], /--weeks .* not "x"/],
    [['--people', '1.5'], /--people is a whole number from 1/],
    [['--people', '-1'], /--people is a whole number from 1/],
    [['--seed', ''], /--seed is a whole number from 0/],
    [['--model', 'third'], /--model is first or second, not "third"/],
    [['--model', 'second', '--law', 'first'], /--law belongs to the first model/],
    [['--model', 'second', '--slope', '1'], /--slope belongs to the first model/],
    [['--keep', '--people', '5'], /--people does not go with --keep/],
    [['--keep', '--json'], /--json does not go with --keep/],
    [['--law', 'third'], /--law is first or second/],
    [['--slope', '-0.1'], /--slope is a number from 0 to 10/],
    [['--slope', 'NaN'], /--slope is a number/],
    [['--patients', '3'], /no option "--patients"/],
    [['--engine-version', '1'], /no option "--engine-version"/],
    [['people', '3'], /no option "people"/],
    [['--people'], /--people needs a value/],
    [['--people', '--json'], /--people needs a value/],
    [['--seed', '1', '--seed', '2'], /--seed is given twice/],
    [['--ease-volume-percent', '31'], /--ease-volume-percent: .*at most 30/],
  ])('refuses %j in words, shows its use and ends with 2', async (args, words) => {
    const { code, out, err } = await printed(args);
    expect([code, out]).toEqual([2, []]);
    expect(err.join('\n')).toMatch(words);
    expect(err.at(-1)).toMatch(/^Use: npm run simulate/);
  });
});
