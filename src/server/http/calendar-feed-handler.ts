/**
 * The days ahead at a private address. Nobody signs in here: whoever has the address reads what the calendar file
 * has, and nothing else. An address that was taken back, one that never was and any other text are answered alike.
 */
import { createHash } from 'node:crypto';
import type { Access } from '#data/access.ts';
import { isAuditFailing } from '#data/audit/audit.ts';
import { dayAt } from '#data/civil-time.ts';
import { type FeedRow, feedActor, feedWithToken, noteFeedRead } from '#data/exchange/calendar-feeds.ts';
import { type Calendar, calendarFile } from '#exchange/calendar/calendar.ts';
import { personCalendarOf } from '#exchange/calendar/person-calendar.ts';
import { languages } from '#messages/languages.ts';
import { refusalText } from '#messages/refusals.ts';
import { inventedClinics } from '../demo-file.ts';
import { type Runtime, zoneOf } from '../runtime.ts';
import { feedHeaders } from './fixed-headers.mjs';
import { networkOf } from './network.ts';
import { askedTooOften, countMinutes } from './rate.ts';
import { answered, refusal, tooOften } from './requests.ts';
import { inTurnOf } from './turns.ts';

/** A program needs one in some minutes. */
const mostInAMinute = 6;
const feeds = countMinutes(mostInAMinute);

const ending = '.ics';

const languageOf = ({ language }: FeedRow) =>
  (languages.find(({ tag }) => tag === language) ?? languages[0]).tag;

const tooMany = (wait: number): Response => tooOften(wait, `Too many requests. Wait ${wait} seconds.`);

const nothingThere = (): Response => refusal(404, 'not-found', refusalText('request-unread'));

const accessOf = (at: Runtime, { clinicId }: FeedRow, zone: string): Access => {
  const now = at.clock.now();
  const who = { actorId: feedActor, actorName: 'Calendar address' };
  return { store: at.store, auditKey: at.keys.audit, clinicId, ...who, now, day: dayAt(now, zone) };
};

/** The same for the same days ahead, whenever they are asked for. */
const markOf = (calendar: Calendar): string => {
  const text = calendarFile({ ...calendar, madeAt: 0 });
  return `W/"${createHash('sha256').update(text).digest('hex').slice(0, 32)}"`;
};

const answerWith = (calendar: Calendar, known: string | null): Response => {
  const headers = new Headers(feedHeaders.map(({ key, value }): [string, string] => [key, value]));
  const mark = markOf(calendar);
  headers.set('ETag', mark);
  if (known === mark) return new Response(null, { status: 304, headers });
  headers.set('Content-Type', 'text/calendar; charset=utf-8');
  headers.set('Content-Disposition', 'inline; filename="plan.ics"');
  return new Response(calendarFile(calendar), { headers });
};

export const calendarFeedHandler = (at: Runtime, request: Request, address: string): Promise<Response> =>
  answered('calendar-feed', async () => {
    const now = Date.now();
    const ofNetwork = askedTooOften(null, networkOf(request.headers), now);
    if (ofNetwork > 0) return tooMany(ofNetwork);
    const token = address.endsWith(ending) ? address.slice(0, -ending.length) : '';
    const feed = await feedWithToken(at.store, token);
    // One of the demo opens nothing outside it.
    if (!feed || (!at.settings.DEMO && inventedClinics.includes(feed.clinicId))) return nothingThere();
    const wait = feeds.wait(feed.id, now);
    if (wait > 0) return tooMany(wait);
    feeds.add(feed.id, now);
    const zone = await zoneOf(at, feed.clinicId);
    const access = accessOf(at, feed, zone);
    if (isAuditFailing(at.store)) return refusal(503, 'not-recorded', refusalText('not-recorded'));
    // One at a time, and a turn for everybody else between two of them.
    return inTurnOf('calendar-feed')(async () => {
      const calendar = await personCalendarOf(access, feed.patientId, languageOf(feed));
      if (!calendar) return nothingThere();
      await noteFeedRead(access, feed, zone);
      return answerWith(calendar, request.headers.get('if-none-match'));
    });
  });
