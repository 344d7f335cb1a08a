/** What the procedures behind a patient's own pages of care answer, by the page that shows it. */
import type { createCaller } from '#api/root.ts';

type Mine = ReturnType<typeof createCaller>['patient'];
// biome-ignore lint/suspicious/noExplicitAny: the inputs are the procedures' own; only the answer is read here.
type Answer<P extends (...input: any[]) => Promise<unknown>> = Awaited<ReturnType<P>>;

export type QuestionsAnswer = Answer<Mine['preVisit']['questions']>;
export type MyMessages = Answer<Mine['messages']['get']>;
export type MyConsents = Answer<Mine['consents']['get']>;
