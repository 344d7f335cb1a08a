/** What the procedures of care answer, by the screen that shows it. */
import type { createCaller } from '#api/root.ts';

type Api = ReturnType<typeof createCaller>;
// biome-ignore lint/suspicious/noExplicitAny: the inputs are the procedures' own; only the answer is read here.
type Answer<P extends (...input: any[]) => Promise<unknown>> = Awaited<ReturnType<P>>;

export type EpisodesAnswer = Answer<Api['clinician']['episodes']['list']>;
export type EpisodeAnswer = EpisodesAnswer['episodes'][number];
export type DistanceAnswer = Answer<Api['clinician']['distance']['guide']>;
export type VisitsAnswer = Answer<Api['clinician']['visits']['list']>;
export type HandoverAnswer = Answer<Api['clinician']['handover']['get']>;
export type Colleagues = Answer<Api['clinician']['handover']['colleagues']>;
export type PreVisitAnswer = NonNullable<Answer<Api['clinician']['preVisits']['get']>>;
export type FirstVisitPage = Answer<Api['clinician']['visits']['firstVisit']>;
export type SavedVisit = Answer<Api['clinician']['visits']['saveFirstVisit']>;
