/** What of a form differs from how it started; of a field that was left alone nothing. */
import type { Typed } from './typed.ts';

export const changedFrom = (start: Typed, typed: Typed): Typed =>
  Object.fromEntries(Object.entries(typed).filter(([name, text]) => text !== (start[name] ?? '')));
