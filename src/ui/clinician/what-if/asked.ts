/** What is typed into a look back, and what it asks of the procedure. */
import { readNumber } from '#ui/design-system/read-number.ts';

const typedNames = ['joint', 'limit', 'usual', 'band', 'setting', 'value', 'weeks'] as const;
export type Typed = Readonly<Partial<Record<(typeof typedNames)[number], string>>>;

/** As the address holds it; what was given twice is taken once. */
export const typedIn = (query: Readonly<Record<string, string | readonly string[] | undefined>>): Typed =>
  Object.fromEntries(
    typedNames.flatMap((name) => {
      const value = [query[name]].flat()[0]?.trim();
      return value ? [[name, value]] : [];
    }),
  );

/** What is no number is sent as it was typed, so that the refusal says what is wrong with it. */
const numberOr = (text: string): number | string => {
  const value = readNumber(text);
  return value === null || Number.isNaN(value) ? text : value;
};

const usualValues = ({ limit, usual, band }: Typed) =>
  Object.fromEntries(
    Object.entries({ acceptablePainLimit: limit, usualPain: usual, bandOver: band }).flatMap(
      ([name, text]) => (text === undefined ? [] : [[name, numberOr(text)]]),
    ),
  );

/** Null where nothing is asked yet: neither a value of a joint nor one of a setting. */
export const movedBy = (typed: Typed): Readonly<Record<string, unknown>> | null => {
  const { joint, setting, value } = typed;
  const values = usualValues(typed);
  // Values of no joint are asked as well, so that it is said what they lack.
  const ofJoint = Object.keys(values).length > 0 ? { joints: { [joint ?? '']: values } } : {};
  const ofClinic = setting && value ? { [setting]: numberOr(value) } : {};
  const moved = { ...ofJoint, ...ofClinic };
  return Object.keys(moved).length > 0 ? moved : null;
};

/** Weeks that are no whole number within bounds are asked as 12. */
export const weeksBy = ({ weeks }: Typed): number => {
  const read = Number(weeks ?? 12);
  return Number.isInteger(read) && read >= 1 && read <= 52 ? read : 12;
};
