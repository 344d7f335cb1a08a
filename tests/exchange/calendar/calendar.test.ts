/** A calendar file, read back by two other libraries. */
import ICAL from 'ical.js';
import { convertIcsCalendar } from 'ts-ics';
import { describe, expect, it } from 'vitest';
import { instantAt } from '#data/civil-time.ts';
import { type CalendarEvent, calendarFile } from '#exchange/calendar/calendar.ts';
import { folded, textValue } from '#exchange/calendar/lines.ts';

const berlin = 'Europe/Berlin';
const session = (day: string, zone = berlin): CalendarEvent => ({
  ...{ kind: 'session', day, at: instantAt(day, '09:00', zone), title: 'Exercise session', note: 'A note' },
  ...{ place: null, alarm: 'PT0S' },
});
const fileOf = (...events: readonly CalendarEvent[]): string =>
  calendarFile({
    name: 'My plan',
    language: 'en',
    personId: 'person-1',
    madeAt: Date.parse('2026-03-02T09:00:00Z'),
    events,
  });

const readByOne = (file: string) =>
  new ICAL.Component(ICAL.parse(file)).getAllSubcomponents('vevent').map((part) => {
    const event = new ICAL.Event(part);
    return {
      uid: event.uid,
      at: event.startDate.isDate ? event.startDate.toString() : event.startDate.toJSDate().toISOString(),
      title: event.summary,
      note: event.description,
      place: event.location ?? '',
      alarms: part.getAllSubcomponents('valarm').length,
    };
  });

const readByOther = (file: string) =>
  (convertIcsCalendar(undefined, file).events ?? []).map(
    ({ uid, start, summary, description, location, alarms }) => ({
      uid,
      at: start.type === 'DATE' ? start.date.toISOString().slice(0, 10) : start.date.toISOString(),
      title: summary,
      note: description ?? '',
      place: location ?? '',
      alarms: alarms?.length ?? 0,
    }),
  );

const hard = 'Session, low; knee \\ left\nline2';

describe('a calendar', () => {
  it('escapes what means something to a reader, the backslash first [exchange 116]', () => {
    expect(textValue(hard)).toBe('Session\\, low\\; knee \\\\ left\\nline2');
    expect(textValue('a\r\nb\rc\u0007')).toBe('a\\nb\\nc');
  });

  it('folds by octets and cuts no character in two [exchange 117]', () => {
    const line = `DESCRIPTION:${'é'.repeat(60)}`;
    const parts = folded(line).split('\r\n').slice(0, -1);
    expect(parts.length).toBe(2);
    expect(Math.max(...parts.map((part) => Buffer.byteLength(part)))).toBeLessThanOrEqual(75);
    expect(parts.join('\r\n').replaceAll('\r\n ', '')).toBe(line);
    expect(folded('x'.repeat(75))).toBe(`${'x'.repeat(75)}\r\n`);
    expect(folded('x'.repeat(76))).toBe(`${'x'.repeat(75)}\r\n x\r\n`);
  });

  it.each([
    ['autumn', ['2026-10-19', '2026-10-26', '2026-11-02'], ['07:00', '08:00', '08:00']],
    ['spring', ['2026-03-23', '2026-03-30', '2026-04-06'], ['08:00', '07:00', '07:00']],
  ])(
    'keeps nine in the morning over the clock change of %s, as both readers read it',
    (_when, days, hours) => {
      const file = fileOf(...days.map((day) => session(day)));
      const expected = days.map((day, at) => `${day}T${hours[at]}:00.000Z`);
      expect(readByOne(file).map(({ at }) => at)).toEqual(expected);
      expect(readByOther(file).map(({ at }) => at)).toEqual(expected);
    },
  );

  it('reads alike in both, with every word and an alarm each', () => {
    const file = fileOf(
      { ...session('2026-03-02'), note: hard, place: 'Room 3; first floor', title: 'é'.repeat(80) },
      { ...session('2026-03-04'), kind: 'review', at: null, alarm: '-PT6H' },
    );
    const [one, other] = [readByOne(file), readByOther(file)];
    expect(one).toEqual(other);
    expect(one[0]).toMatchObject({
      note: hard,
      place: 'Room 3; first floor',
      title: 'é'.repeat(80),
      alarms: 1,
    });
    expect(one[1]?.at).toBe('2026-03-04');
  });

  it('gives each event an id and a time of making, no two the same, and the same when made again', () => {
    const events = [session('2026-03-02'), session('2026-03-02'), session('2026-03-04')];
    const ids = readByOne(fileOf(...events)).map(({ uid }) => uid);
    expect(new Set(ids).size).toBe(3);
    expect(readByOne(fileOf(...events)).map(({ uid }) => uid)).toEqual(ids);
    expect(fileOf(...events).match(/^DTSTAMP:20260302T090000Z\r$/gm)).toHaveLength(3);
    expect(fileOf(...events)).not.toContain('person-1');
  });

  it('ends every line with both signs and none is longer than may be', () => {
    const file = fileOf({ ...session('2026-03-02'), note: '€'.repeat(200) });
    expect(file.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(file.split('\r\n').filter((line) => Buffer.byteLength(line) > 75)).toEqual([]);
  });
});
