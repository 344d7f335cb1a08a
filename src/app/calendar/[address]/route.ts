/** The calendar at a private address, for a program that has it. */
import { calendarFeedHandler } from '#server/http/calendar-feed-handler.ts';
import { runtime } from '#server/runtime.ts';

interface Context {
  readonly params: Promise<{ readonly address: string }>;
}

export const GET = async (request: Request, { params }: Context) =>
  calendarFeedHandler(runtime(), request, (await params).address);
