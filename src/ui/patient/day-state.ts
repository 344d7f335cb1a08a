/** What today's page says of the day, from the clinic's view and from what this phone keeps. Pure. */
import type { TodayView } from '#api/patient/today-view.ts';
import type { Kept } from './outbox/outbox.ts';

export const twoHoursMs = 2 * 60 * 60 * 1000;

export interface DayState {
  readonly session: 'open' | 'kept-here' | 'sent';
  /** A warning sign was told from this phone today: nothing is begun after it. */
  readonly hasToldFlag: boolean;
  readonly isMorningDue: boolean;
  readonly isMorningAnswered: boolean;
  /** Entry id of the session the two-hours question speaks of, once it is due. */
  readonly twoHoursOf: string | null;
}

type Asked = Pick<TodayView, 'day' | 'sessionSent' | 'morning' | 'asksTwoHours'>;

export const dayState = (view: Asked, entries: readonly Kept[], now: number): DayState => {
  const ofToday = (kind: Kept['kind']) =>
    entries.filter((kept) => kept.kind === kind && kept.day === view.day);
  const sessions = ofToday('session');
  const isSent = view.sessionSent || sessions.some((kept) => kept.status === 'stored');
  const isMorningAnswered = view.morning.answered || ofToday('morning').length > 0;
  const asksTwoHours = view.asksTwoHours && ofToday('two-hours').length === 0;
  const spokenOf = sessions.find((kept) => now - kept.savedAt >= twoHoursMs);
  return {
    session: isSent ? 'sent' : sessions.length > 0 ? 'kept-here' : 'open',
    hasToldFlag: entries.some((kept) => kept.day === view.day && kept.isUrgent),
    isMorningDue: view.morning.due && !isMorningAnswered,
    isMorningAnswered,
    twoHoursOf: asksTwoHours ? (spokenOf?.entryId ?? null) : null,
  };
};

export const hasArrived = (entries: readonly Kept[], entryId: string): boolean =>
  entries.some((kept) => kept.entryId === entryId && kept.status === 'stored');
