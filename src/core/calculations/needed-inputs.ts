/** Optional inputs that one branch of a calculation cannot do without. Absent is refused, never read as zero. */
import { answer, type Outcome } from '../outcome.ts';

type Present<T, K extends keyof T> = T & { readonly [P in K]-?: Exclude<T[P], undefined> };

/** The same input with the named fields known to be there, or one refusal for each that is not. */
export const needed = <T extends object, K extends keyof T & string>(
  input: T,
  names: readonly K[],
  why: string,
): Outcome<Present<T, K>> => {
  const absent = names.filter((name) => input[name] === undefined);
  if (absent.length === 0) return answer(input as Present<T, K>);
  return {
    ok: false,
    refused: absent.map((name) => ({
      field: `input.${name}`,
      code: 'missing',
      reason: `Give ${name}: ${why}.`,
    })),
  };
};
