/**
 * A form sent by the browser itself, before the page’s scripts have come or where there are none: what the
 * route that takes it and the page that shows it again have in common.
 */
import type { Text } from '#messages/text.ts';

/** By the names the page puts it back by. */
export type PostedTexts = Readonly<Record<string, string>>;

export interface PostedProblem {
  /** id of the control it is about. */
  readonly field: string;
  readonly text: Text | string;
}

/** What is shown with the page that follows. */
export interface PostedAnswer {
  readonly form: string;
  /** What the form is about, such as whose record. */
  readonly about: PostedTexts;
  /** What was typed; of a passphrase, PIN or code nothing. */
  readonly typed: PostedTexts;
  readonly problems: readonly PostedProblem[];
  /** Unlikely values to confirm. */
  readonly questions: readonly string[];
  readonly needsProof: boolean;
  /** Said once it was taken; null while it was not. */
  readonly done: Text | string | null;
  /** What the page asks next, where that is not the beginning. */
  readonly step: string | null;
}

/** The part of an answer that a form has to say. */
export type PostedOutcome = Partial<Pick<PostedAnswer, 'problems' | 'questions' | 'needsProof' | 'step'>> & {
  readonly done?: Text | string;
  /** Another page than the form’s own, written in the code. */
  readonly page?: string;
};

export interface DoorAnswer {
  readonly status: number;
  readonly json: Readonly<Record<string, unknown>>;
  /** Seconds to wait after too many tries. */
  readonly waitSeconds: number;
}

/** What a form may reach: the same as a page in a browser, and as the same person. */
export interface Reached {
  /** The client of the procedures, shaped as in a browser. */
  readonly client: unknown;
  /** An endpoint of the sign-in door. */
  readonly door: (path: string, fields: PostedTexts) => Promise<DoorAnswer>;
}

export interface Posted {
  readonly about: PostedTexts;
  readonly typed: PostedTexts;
  /** All that came, what is never shown again as well. */
  readonly sent: URLSearchParams;
  readonly isConfirmed: boolean;
}

export interface PostedForm {
  /** Opens a sign-in: the only forms taken of somebody nobody knows. */
  readonly isOfStrangers?: true;
  /** Names of what the form is about, each needed. */
  readonly about: readonly string[];
  readonly page: (about: PostedTexts) => string;
  readonly typedIn: (sent: URLSearchParams, about: PostedTexts) => PostedTexts;
  readonly send: (to: Reached, posted: Posted) => Promise<PostedOutcome>;
}

/** Names of controls that every form has; a dot keeps them apart from the names of fields. */
export const aboutName = (name: string): string => `about.${name}`;
/** The one thing a form may be about that is no id: words somebody typed. Never part of an address. */
export const wordsName = 'words';
export const confirmedName = 'is.confirmed';
export const proofName = 'fresh-passphrase';

/** Whether two are the same form about the same thing. */
export const isSameForm = (
  one: Pick<PostedAnswer, 'form' | 'about'>,
  other: Pick<PostedAnswer, 'form' | 'about'>,
): boolean =>
  one.form === other.form &&
  Object.keys(one.about).length === Object.keys(other.about).length &&
  Object.entries(one.about).every(([name, value]) => other.about[name] === value);
