/**
 * A calendar file of one person: each event for itself with an instant of UTC, so that no reader has to know a zone
 * or when its clocks change; a day without a time is a day.
 */
import { createHash } from 'node:crypto';
import type { LanguageTag } from '#messages/languages.ts';
import { dayValue, folded, instantValue, textValue } from './lines.ts';

export interface CalendarEvent {
  /** What tells it from the others of the same day; the same each time the file is made. */
  readonly kind: 'session' | 'morning' | 'review' | 'retest';
  readonly day: string;
  /** Epoch milliseconds; null = the whole day. */
  readonly at: number | null;
  readonly title: string;
  readonly note: string;
  readonly place: string | null;
  /** Such as "-PT15H": before the event. */
  readonly alarm: string;
}

export interface Calendar {
  readonly name: string;
  /** Of its words. */
  readonly language: LanguageTag;
  /** Whose it is; never written, only what is made of it. */
  readonly personId: string;
  readonly madeAt: number;
  readonly events: readonly CalendarEvent[];
}

const uidOf = (personId: string, { kind, day }: CalendarEvent, place: number): string => {
  const digest = createHash('sha256').update(`${personId} ${kind} ${day} ${place}`).digest('hex');
  return `${digest.slice(0, 32)}@loadgate.invalid`;
};

const eventLines = (event: CalendarEvent, uid: string, madeAt: number): readonly string[] => [
  'BEGIN:VEVENT',
  `UID:${uid}`,
  `DTSTAMP:${instantValue(madeAt)}`,
  event.at === null ? `DTSTART;VALUE=DATE:${dayValue(event.day)}` : `DTSTART:${instantValue(event.at)}`,
  `SUMMARY:${textValue(event.title)}`,
  `DESCRIPTION:${textValue(event.note)}`,
  ...(event.place === null ? [] : [`LOCATION:${textValue(event.place)}`]),
  // It keeps nobody else from booking the hour.
  'TRANSP:TRANSPARENT',
  'CLASS:PRIVATE',
  'BEGIN:VALARM',
  'ACTION:DISPLAY',
  `DESCRIPTION:${textValue(event.title)}`,
  `TRIGGER:${event.alarm}`,
  'END:VALARM',
  'END:VEVENT',
];

/** Events of one kind and day are told apart by their order. */
const places = (events: readonly CalendarEvent[]): readonly number[] => {
  const counted = new Map<string, number>();
  return events.map(({ kind, day }) => {
    const place = counted.get(`${kind} ${day}`) ?? 0;
    counted.set(`${kind} ${day}`, place + 1);
    return place;
  });
};

/** The standard knows no calendar without a component; this one says nothing of anybody's days. */
const nothingPlanned = [
  ...['BEGIN:VTIMEZONE', 'TZID:Etc/UTC', 'BEGIN:STANDARD', 'DTSTART:19700101T000000'],
  ...['TZOFFSETFROM:+0000', 'TZOFFSETTO:+0000', 'END:STANDARD', 'END:VTIMEZONE'],
];

export const calendarFile = ({ name, language, personId, madeAt, events }: Calendar): string => {
  const place = places(events);
  return [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:-//Loadgate//Calendar//${language.toUpperCase()}`,
    `X-WR-CALNAME:${textValue(name)}`,
    ...(events.length === 0 ? nothingPlanned : []),
    ...events.flatMap((event, at) => eventLines(event, uidOf(personId, event, place[at]!), madeAt)),
    'END:VCALENDAR',
  ]
    .map(folded)
    .join('');
};
