/** Reads the version ranges that packages declare in `engines`: comparators, ^, ~, x, and ||. */
type Version = readonly [number, number, number];

const order = (a: Version, b: Version): number => a[0] - b[0] || a[1] - b[1] || a[2] - b[2];

interface Part {
  readonly operator: string;
  /** As written, up to the first x, * or missing number. */
  readonly given: readonly number[];
}

const partOf = (text: string): Part => {
  const match = /^(>=|<=|>|<|\^|~|=)?v?([\dx*.]*)/i.exec(text);
  const given: number[] = [];
  for (const number of (match?.[2] ?? '').split('.')) {
    if (!/^\d+$/.test(number)) break;
    given.push(Number(number));
  }
  return { operator: match?.[1] ?? '=', given };
};

const lowest = ([major = 0, minor = 0, patch = 0]: readonly number[]): Version => [major, minor, patch];

/** The first version after everything that starts with the given numbers. */
const after = (given: readonly number[]): Version =>
  lowest(given.map((number, at) => (at === given.length - 1 ? number + 1 : number)));

const partAllows = ({ operator, given }: Part, version: Version): boolean => {
  if (given.length === 0) return true;
  const low = lowest(given);
  switch (operator) {
    case '>=':
      return order(version, low) >= 0;
    case '>':
      return order(version, after(given)) >= 0;
    case '<':
      return order(version, low) < 0;
    case '<=':
      return order(version, after(given)) < 0;
    case '^':
      return order(version, low) >= 0 && order(version, after(given.slice(0, 1))) < 0;
    case '~':
      return order(version, low) >= 0 && order(version, after(given.slice(0, 2))) < 0;
    default:
      return order(version, low) >= 0 && order(version, after(given)) < 0;
  }
};

/** True when the range lets the version in. */
export const allows = (range: string, version: Version): boolean =>
  range.split('||').some((alternative) =>
    alternative
      .trim()
      .replace(/(>=|<=|>|<|\^|~|=)\s+/g, '$1')
      .split(/\s+/)
      .every((part) => partAllows(partOf(part), version)),
  );
