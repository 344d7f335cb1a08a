/** What every page of a session is given. */
import type { TodayView } from '#api/patient/today-view.ts';
import type { SessionDraft } from '../draft.ts';
import type { SessionEvent } from '../events.ts';

export interface PageProps {
  readonly draft: SessionDraft;
  readonly clinic: TodayView['clinic'];
  /** A cuff is prescribed: its sign is asked about. */
  readonly hasCuff: boolean;
  /** Pregnancy is among what may be new. */
  readonly asksPregnancy: boolean;
  /** Joint, exercise and set the step speaks of. */
  readonly joint: SessionDraft['joints'][number];
  readonly item: number;
  readonly set: number;
  readonly send: (event: SessionEvent) => void;
  readonly clock: () => number;
}
