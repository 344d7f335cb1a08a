/**
 * What today's answers leave of each exercise, by the engine's own gate. It is fetched only when it
 * is needed and only when the page was given the usual values of the joints; without those the phone
 * judges nothing, and what the standing decisions leave is all that holds.
 */
import type { TodayView } from '#api/patient/today-view.ts';
import type { BeforeFacts } from '#core/engine/before-gate.ts';
import type { Joint } from '#core/joints.ts';
import type { SessionDraft } from './draft.ts';
import { scoreKey } from './draft.ts';
import { known } from './entry.ts';
import type { LineOffers } from './events.ts';

/** What the gate needs beside the answers given now. */
export type UsualFacts = Omit<BeforeFacts, 'painBefore' | 'redFlags'>;

export type TodayWithUsual = TodayView & {
  readonly usual?: Readonly<Partial<Record<Joint, UsualFacts>>>;
};

export const offersFor = async (draft: SessionDraft, view: TodayWithUsual): Promise<LineOffers> => {
  const { usual } = view;
  if (!usual || Object.keys(usual).length === 0) return {};
  const { beforeGate, offeredSession } = await import('#core/engine/before-gate.ts');
  const gates = new Map(
    draft.joints.flatMap((joint) => {
      const facts = usual[joint];
      if (!facts) return [];
      const painBefore = known(draft.scores[scoreKey('before', joint)]);
      return [[joint, beforeGate({ ...facts, painBefore, redFlags: draft.flagsBefore })] as const];
    }),
  );
  return Object.fromEntries(offeredSession(draft.lines, gates).map(({ lineId, offer }) => [lineId, offer]));
};
