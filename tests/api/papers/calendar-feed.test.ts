/** A patient’s private calendar address: what it gives, to whom, how it ends, and what is noted of it. */
import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Joint } from '#core/exercises/joints.ts';
import { flushReads } from '#data/audit/audit.ts';
import type { Store } from '#data/database/store.ts';
import { applyEpisodeChange } from '#data/episode/episode-changes.ts';
import { openEpisode } from '#data/episode/episodes.ts';
import { erasePerson, leaveNoTrace } from '#data/erasure/erase-person.ts';
import { personFiles } from '#exchange/person-files.ts';
import { asClinician, asPatient, asPerson } from '#tests/support/callers.ts';
import { accessOf, type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { testOrigin, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { GET } from '../../../src/app/calendar/[address]/route.ts';

let store: Store;
let setting: Setting;
let network = 0;
const patientOf = ({ patientId }: Setting) => asPatient(accessOf(store, 'a', 'patient-user'), patientId);
const own = () => patientOf(setting).patient.exports;
const desk = () => asClinician(setting.clinician).clinician.exports;

beforeEach(async () => {
  network += 1;
  store = freshStore();
  setting = await twoClinics(store);
  testRuntime(store);
  await signedExercise(setting.clinician, setting.patientId);
});
afterEach(() => store.close());

const made = async (language: 'en' | 'de' = 'en') => (await own().makeFeed({ language })).path;
const read = (path: string, headers: Readonly<Record<string, string>> = {}) => {
  const sent = new Headers({ 'x-forwarded-for': `198.51.100.${network}`, ...headers });
  const address = path.replace('/calendar/', '');
  return GET(new Request(`${testOrigin}${path}`, { headers: sent }), {
    params: Promise.resolve({ address }),
  });
};
const answerOf = async (path: string) => {
  const response = await read(path);
  const headers = [...response.headers].filter(([name]) => name !== 'x-request-id');
  return { status: response.status, headers, body: await response.text() };
};
const rowsOf = async (subject: string) => {
  await flushReads(store);
  return store.reader.client.prepare('SELECT * FROM audit WHERE subject = ?').all(subject) as object[];
};

describe('a private calendar address', () => {
  it('gives the calendar file and not a word more, to whoever has it, with no cookie and to no other site', async () => {
    const response = await read(await made('de'));
    const text = await response.text();
    const [file] = await personFiles(setting.clinician, setting.patientId, 'calendar', {
      ...{ language: 'de', hasMark: false },
    });
    expect(text.replace(/DTSTAMP:.*/g, '')).toBe(file!.text.replace(/DTSTAMP:.*/g, ''));
    expect(new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').length).toBeGreaterThan(50);
    expect([response.status, response.headers.get('content-type')]).toEqual([
      200,
      'text/calendar; charset=utf-8',
    ]);
    expect(response.headers.get('referrer-policy')).toBe('no-referrer');
    expect(response.headers.get('cache-control')).toBe('private, no-cache');
    expect(response.headers.get('set-cookie')).toBeNull();
  });

  it('is a calendar that the standard knows also while nothing is planned', async () => {
    const { path } = await asPatient(
      accessOf(store, 'a', 'patient-user'),
      setting.otherPatientId,
    ).patient.exports.makeFeed({ language: 'en' });
    const calendar = new ICAL.Component(ICAL.parse(await (await read(path)).text()));
    expect(calendar.getAllSubcomponents().map(({ name }) => name)).toEqual(['vtimezone']);
  });

  it('says that nothing is new to a program that has the same days already, and gives a changed plan anew', async () => {
    const path = await made();
    const mark = (await read(path)).headers.get('etag')!;
    const again = await read(path, { 'if-none-match': mark });
    expect([again.status, await again.text()]).toEqual([304, '']);
    await asClinician(setting.clinician).clinician.bookings.book({
      ...{ patientId: setting.patientId, booking: { when: '2026-03-20T10:30', place: null } },
    });
    expect((await read(path, { 'if-none-match': mark })).status).toBe(200);
  });

  it('answers alike once it was taken back, when it never was, and for any other text', async () => {
    const path = await made();
    const token = path.slice('/calendar/'.length, -'.ics'.length);
    const never = await answerOf(`/calendar/${'A'.repeat(43)}.ics`);
    expect(never.status).toBe(404);
    await own().endFeed();
    for (const text of [
      path,
      `/calendar/${token}`,
      '/calendar/x',
      `/calendar/${token}.ics.ics`,
      '/calendar/%00',
    ])
      expect(await answerOf(text)).toEqual(never);
  });

  it('is one at a time: a new one ends the one before', async () => {
    const [first, second] = [await made(), await made()];
    expect(first).not.toBe(second);
    expect([(await read(first)).status, (await read(second)).status]).toEqual([404, 200]);
  });

  it('stands nowhere in the file, nor in an answer after the first', async () => {
    const path = await made();
    const token = path.slice('/calendar/'.length, -'.ics'.length);
    await read(path);
    await flushReads(store);
    store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
    expect(readFileSync(store.file).includes(token)).toBe(false);
    expect(
      JSON.stringify([await own().feed(), await desk().feed({ patientId: setting.patientId })]),
    ).not.toContain(token);
  });

  it('is let in six times a minute and told then how long to wait', async () => {
    const path = await made();
    const answers = [];
    for (let time = 0; time < 7; time += 1) answers.push(await read(path));
    expect(answers.map(({ status }) => status)).toEqual([...Array(6).fill(200), 429]);
    expect(Number(answers[6]!.headers.get('retry-after'))).toBeGreaterThan(0);
  });
});

describe('the end of an address', () => {
  it('is at the clinic’s hand as well, once', async () => {
    const path = await made();
    await desk().endFeed({ patientId: setting.patientId });
    expect((await read(path)).status).toBe(404);
    expect((await own().feed())?.ended).toMatchObject({ by: 'clinic' });
    await expect(desk().endFeed({ patientId: setting.patientId })).rejects.toThrow(/ended already/);
  });

  it('comes with the end of care, after which none is made', async () => {
    const { clinician, patientId } = setting;
    const knee: readonly Joint[] = ['right-knee'];
    const episode = {
      ...{ diagnoses: ['Knee osteoarthritis'], joints: knee, followedJoints: knee },
      ...{ goals: [], referrer: null, contacts: [] },
    };
    const opened = await openEpisode(clinician, patientId, episode, 'Referral');
    const path = await made();
    const outcome = await applyEpisodeChange(clinician, patientId, opened, {
      ...{ to: 'discharged', on: clinician.day, reason: 'Done', breakKind: null, expectedBack: null },
    });
    expect(outcome).toMatchObject({ ok: true });
    expect((await read(path)).status).toBe(404);
    expect((await own().feed())?.ended).toMatchObject({ by: 'end-of-care' });
    await expect(own().makeFeed({ language: 'en' })).rejects.toThrow(/care here has ended/);
  });

  it('comes with the erasure of the person, and nothing of it is left', async () => {
    const path = await made();
    await read(path);
    await flushReads(store);
    await erasePerson(setting.clinician, [setting.patientId], 'asked');
    leaveNoTrace(store);
    expect((await read(path)).status).toBe(404);
    expect(store.reader.client.prepare('SELECT count(*) AS n FROM calendar_feed').get()).toMatchObject({
      n: 0,
    });
  });
});

describe('what is noted of an address', () => {
  it('is that it was made and ended, and that it was read once a day however often it is asked', async () => {
    const path = await made();
    for (let time = 0; time < 5; time += 1) await read(path);
    await own().endFeed();
    for (const subject of ['calendar-feed-ended', 'calendar-feed']) {
      const rows = (await rowsOf(subject)) as { act: string; patient_id: string }[];
      expect(rows.every((row) => row.patient_id === setting.patientId)).toBe(true);
      expect(rows.map(({ act }) => act)).toEqual(subject === 'calendar-feed' ? ['write', 'read'] : ['write']);
    }
  });

  it('is in the list of who opened the record, by what it is, and when it was read last', async () => {
    await read(await made());
    await flushReads(store);
    const { lines } = await patientOf(setting).patient.access.list();
    expect(lines.filter(({ isFeed }) => isFeed)).toMatchObject([{ reads: 1, writes: 0 }]);
    expect((await own().feed())?.lastReadAt).toBeGreaterThan(0);
  });
});

it('is made only by somebody who proved a moment ago who they are; ended without', async () => {
  await made();
  const stale = asPerson(accessOf(store, 'a', 'patient-user'), {
    ...{ role: 'patient', patientId: setting.patientId, provedAt: Date.now() - 3_600_000 },
  }).patient.exports;
  await expect(stale.makeFeed({ language: 'en' })).rejects.toMatchObject({ problem: 'fresh-sign-in' });
  expect(await stale.endFeed()).toBe(true);
});
