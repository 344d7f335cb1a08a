/**
 * Values for an input as its schema describes it: mostly what it asks for, at its bounds and between, now and then
 * something it does not. Ids are drawn from those there are, so that calls reach further than their first check.
 */
import type { Seeded } from '#simulation/raises/seeded.ts';

export interface Described {
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Described[];
  readonly oneOf?: readonly Described[];
  readonly allOf?: readonly Described[];
  readonly properties?: Readonly<Record<string, Described>>;
  readonly required?: readonly string[];
  readonly items?: Described | false;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly additionalProperties?: Described | boolean;
}

export interface Drawing {
  readonly random: Seeded;
  /** Ids that stand in the file. */
  readonly ids: readonly string[];
  /** One value in so many is not what was asked for. */
  readonly oddOneIn: number;
}

const days = ['2026-04-20', '2026-04-19', '2026-02-29', '1958-06-01', '2199-12-31', '0001-01-01'];
const texts = [
  '',
  'a',
  'Walks with a stick',
  'é ß 膝 😀',
  "'; DROP TABLE patient; --",
  '<b>x</b>',
  '__proto__',
];
const odd: readonly unknown[] = [
  ...[null, true, -1, 0, 1.5, Number.MAX_SAFE_INTEGER, 1e308, '', 'constructor', '\u0000', '\ud800'],
  ...[[], {}, [[]], { length: -1 }, 'x'.repeat(5000), { toString: 1 }, '2026-02-30'],
];

const oneOf = <T>({ random }: Drawing, all: readonly T[]): T => all[random.below(all.length)]!;

const number = (at: Drawing, { minimum = 0, maximum = 300, type }: Described): number => {
  const [low, high] = [Math.max(minimum, -1e6), Math.min(maximum, 1e6)];
  const between = low + (high - low) * (at.random.below(1001) / 1000);
  const value = oneOf(at, [low, high, between, between]);
  return type === 'integer' ? Math.round(value) : value;
};

const text = (at: Drawing, name: string, { minLength = 0, maxLength = 200 }: Described): string => {
  if (/day$|Day$|^(from|to|on|until|since)$/.test(name)) return oneOf(at, days);
  if (/id$/i.test(name) && at.random.below(10) > 0) return oneOf(at, at.ids);
  return oneOf(at, [...texts, ...at.ids.slice(0, 3), ...days.slice(0, 1)])
    .padEnd(Math.min(minLength, 1000), 'x')
    .slice(0, maxLength);
};

const record = (at: Drawing, described: Described, depth: number): unknown => {
  const required = new Set(described.required ?? []);
  const fields = Object.entries(described.properties ?? {}).filter(
    ([name]) => required.has(name) || at.random.below(2) === 0,
  );
  return Object.fromEntries(fields.map(([name, one]) => [name, drawn(at, one, name, depth + 1)]));
};

const list = (at: Drawing, { items, minItems = 0, maxItems = 3 }: Described, name: string, depth: number) => {
  const most = Math.min(maxItems, minItems + 3);
  const length = minItems + at.random.below(most - minItems + 1);
  return Array.from({ length }, () => drawn(at, items || {}, name, depth + 1));
};

/** A value for what is described; `name` is the field it stands in. */
export const drawn = (at: Drawing, described: Described, name = '', depth = 0): unknown => {
  if (at.random.below(at.oddOneIn) === 0) return oneOf(at, odd);
  if (depth > 12) return null;
  if ('const' in described) return described.const;
  if (described.enum) return oneOf(at, described.enum);
  const either = described.anyOf ?? described.oneOf;
  if (either) return drawn(at, oneOf(at, either), name, depth + 1);
  if (described.allOf)
    return Object.assign({}, ...described.allOf.map((one) => drawn(at, one, name, depth + 1)));
  const type = Array.isArray(described.type) ? oneOf(at, described.type) : described.type;
  if (type === 'object') return record(at, described, depth);
  if (type === 'array') return list(at, described, name, depth);
  if (type === 'number' || type === 'integer') return number(at, described);
  if (type === 'boolean') return at.random.below(2) === 0;
  if (type === 'string') return text(at, name, described);
  return type === 'null' ? null : oneOf(at, odd);
};
