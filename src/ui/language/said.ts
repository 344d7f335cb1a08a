/** What is wrong with a field, to be said in the language of whoever reads it: in a browser or, for a page to come, on the server. */
import { t } from './words.ts';

export interface Said {
  readonly field: string;
  readonly text: (say: typeof t) => string;
}

/** In the language spoken in this browser. */
export const spokenOf = ({ field, text }: Said) => ({ field, text: text(t) });
