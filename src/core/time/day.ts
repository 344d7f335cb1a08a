/**
 * Civil days as ISO text (YYYY-MM-DD), with the arithmetic the rules need.
 * "Today" is always an argument: the core reads no clock.
 */
export type Day = string;

/** Of a day of UTC: what instants are counted in. */
export const dayMilliseconds = 86_400_000;

const pattern = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Days repeat across a clinic's histories; reading each text once took a third off arranging them. */
const mostKept = 100_000;
const numbers = new Map<Day, number>();
const texts = new Map<number, Day>();

const keep = <K, V>(known: Map<K, V>, key: K, value: V): V => {
  if (known.size < mostKept) known.set(key, value);
  return value;
};

const read = (day: Day): number => {
  const parts = pattern.exec(day);
  if (!parts) throw new TypeError(`Not a civil day: ${day}`);
  return Math.floor(Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])) / dayMilliseconds);
};

const write = (n: number): Day => new Date(n * dayMilliseconds).toISOString().slice(0, 10);

/** Days since 1970-01-01 of the proleptic Gregorian calendar. */
export const dayNumber = (day: Day): number => numbers.get(day) ?? keep(numbers, day, read(day));

export const dayFromNumber = (n: number): Day => texts.get(n) ?? keep(texts, n, write(n));

export const addDays = (day: Day, days: number): Day => dayFromNumber(dayNumber(day) + days);

/** Whole days from `from` to `to`; negative when `to` is earlier. */
export const daysBetween = (from: Day, to: Day): number => dayNumber(to) - dayNumber(from);

/** Years in which somebody in a record can have been born, trained or be expected. */
const yearsOfLives = { first: '1900', last: '2199' } as const;

/** True for a day that exists within a life: 2026-02-30 does not, and nobody here lives on 9999-12-31. */
export const isDay = (text: string): boolean => {
  if (!pattern.test(text)) return false;
  const year = text.slice(0, 4);
  if (year < yearsOfLives.first || year > yearsOfLives.last) return false;
  const time = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().slice(0, 10) === text;
};

/** Completed years between a birth day and a day. */
export const ageYears = (born: Day, on: Day): number => {
  const years = Number(on.slice(0, 4)) - Number(born.slice(0, 4));
  return on.slice(5) < born.slice(5) ? years - 1 : years;
};

export const earlierDay = (one: Day, other: Day): Day => (daysBetween(one, other) < 0 ? other : one);
