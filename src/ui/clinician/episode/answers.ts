/** What the procedures of care answer, by the screen that shows it. */
import type { createCaller } from '#api/root.ts';

type Api = ReturnType<typeof createCaller>;
// biome-ignore lint/suspicious/noExplicitAny: the inputs are the procedures' own; only the answer is read here.
type Answer<P extends (...input: any[]) => Promise<unknown>> = Awaited<ReturnType<P>>;

export type EpisodesAnswer = Answer<Api['staff']['episodes']['list']>;
export type EpisodeAnswer = EpisodesAnswer['episodes'][number];
export type VisitsAnswer = Answer<Api['staff']['visits']['list']>;
export type HandoverAnswer = Answer<Api['staff']['handover']['get']>;
export type Colleagues = Answer<Api['staff']['handover']['colleagues']>;
export type PreVisitAnswer = NonNullable<Answer<Api['staff']['preVisits']['get']>>;
export type FirstVisitPage = Answer<Api['staff']['visits']['firstVisit']>;
export type SavedVisit = Answer<Api['staff']['visits']['saveFirstVisit']>;
