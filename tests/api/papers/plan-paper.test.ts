/** The plan for paper as the record gives it, and the file over HTTP: signed work only, to whoever may open the record. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flushReads } from '#data/audit/audit.ts';
import type { Store } from '#data/database/store.ts';
import { recordNote } from '#data/episode/visit-notes.ts';
import { addVersion } from '#data/prescribing/prescribing.ts';
import { readPdf } from '#tests/papers/read-pdf.ts';
import { asClinician, asPatient } from '#tests/support/callers.ts';
import { lowLoadDose, type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { enrolled } from '#tests/support/phones.ts';
import {
  account,
  type Browser,
  browser,
  testOrigin,
  testPassphrase,
  testRuntime,
} from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST } from '../../../src/app/api/auth/[...all]/route.ts';
import { GET } from '../../../src/app/papers/[kind]/route.ts';

let store: Store;
let setting: Setting;
let phone: Browser;
let desk: Browser;
beforeAll(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  // In a demo nobody is asked for one-time codes.
  const at = testRuntime(store, { DEMO: '1' });
  const { itemId } = await signedExercise(setting.clinician, setting.patientId);
  await addVersion(setting.clinician, setting.patientId, {
    itemId,
    dose: { ...lowLoadDose, loadKg: 5 },
    badDay: lowLoadDose,
    joints: ['right-knee'],
    cautions: [{ id: 'new', text: 'New.', patient: { key: 'stop-signs' }, from: 'test', support: 'clinic' }],
    working: [],
    origin: 'clinician',
  });
  phone = await enrolled(setting);
  await account(at, { email: 'desk@clinic.example' });
  desk = browser('192.0.2.200');
  await desk.post(POST, '/api/auth/sign-in/email', {
    email: 'desk@clinic.example',
    password: testPassphrase,
  });
});
afterAll(() => store.close());

const ask = (from: Browser, address: string, headers: Readonly<Record<string, string>> = {}) => {
  const sent = from.headers();
  for (const [name, value] of Object.entries(headers)) sent.set(name, value);
  const [kind = ''] = address.split('?');
  return GET(new Request(`${testOrigin}/papers/${address}`, { headers: sent }), {
    params: Promise.resolve({ kind }),
  });
};

describe('the plan for paper', () => {
  it('holds the signed version in force with its cautions, and no word of the one that waits for a signature', async () => {
    const plan = await asClinician(setting.clinician).clinician.papers.plan({ patientId: setting.patientId });
    expect(plan.exercises).toMatchObject([
      {
        version: 1,
        dose: { loadKg: 4 },
        today: 'as-planned',
        signedName: 'clinician-a',
        signedOn: '2026-03-02',
      },
    ]);
    expect(plan.exercises[0]?.cautions).toHaveLength(1);
    expect(plan.weeks).toEqual(['2026-03-02']);
    // Three sessions a week and no programme: spaced from the day it was signed.
    expect(plan.exercises[0]?.days).toEqual(['2026-03-02', '2026-03-04', '2026-03-06']);
    expect(plan.clinic).toMatchObject({ emergencyNumber: '112', urgentNumber: '112' });
  });

  it('ends before the day a limit begins that its doses do not know, and says so', async () => {
    const { care, papers } = asClinician(setting.clinician).clinician;
    const { patientId } = setting;
    const none = { kind: 'load-limit', movement: null, fromDegrees: null, toDegrees: null, remark: null };
    const limit = {
      joint: 'right-knee',
      ...none,
      limitKg: 2,
      from: '2026-03-12',
      to: null,
      author: 'Dr Vance',
    };
    const limitId = await care.addLimit({ patientId, limit });
    const plan = await papers.plan({ patientId, weeks: 4 });
    expect(plan.until).toBe('2026-03-11');
    expect(plan.weeks).toEqual(['2026-03-02', '2026-03-09']);
    expect(plan.exercises[0]?.days?.at(-1)).toBe('2026-03-11');
    // The week that is printed ends before it: nothing is said.
    expect((await papers.plan({ patientId, weeks: 1 })).until).toBeNull();
    await care.liftLimit({ patientId, limitId, reason: 'Entered for the wrong joint.' });
    expect((await papers.plan({ patientId, weeks: 4 })).weeks).toHaveLength(4);
  });

  it('is the same for the patient, and begins with the week of the day', async () => {
    const own = await asPatient(setting.clinician, setting.patientId).patient.papers.plan({ weeks: 2 });
    expect(own.weeks).toEqual(['2026-03-02', '2026-03-09']);
    expect(own.exercises[0]?.days).toHaveLength(6);
  });

  it('is refused for no week, and for more than twelve', async () => {
    const of = (weeks: number) =>
      asPatient(setting.clinician, setting.patientId).patient.papers.plan({ weeks });
    await expect(of(0)).rejects.toThrow();
    await expect(of(12)).resolves.toBeDefined();
    await expect(of(13)).rejects.toThrow();
  });
});

describe('the file', () => {
  it('goes to the own phone and to the desk, never kept by a browser, and the opening is audited', async () => {
    const own = await ask(phone, 'plan?language=de&large=1');
    expect(own.status).toBe(200);
    expect(own.headers.get('content-type')).toBe('application/pdf');
    expect(own.headers.get('cache-control')).toBe('no-store');
    expect(own.headers.get('content-disposition')).toBe('inline; filename="uebungsplan-2026-03-02.pdf"');
    const read = await readPdf(new Uint8Array(await own.arrayBuffer()));
    expect(read.text.join(' ')).toContain('Mein Übungsplan');
    const atDesk = await ask(desk, `plan?patient=${setting.patientId}&paper=letter`);
    expect((await readPdf(new Uint8Array(await atDesk.arrayBuffer()))).size).toEqual([216, 279]);
    await flushReads(store);
    const subjects = store.reader.client
      .prepare("SELECT subject FROM audit WHERE subject LIKE '%papers.plan'")
      .all();
    expect(subjects).toEqual(
      expect.arrayContaining([{ subject: 'patient.papers.plan' }, { subject: 'clinician.papers.plan' }]),
    );
  });

  it('a phone gets its own whatever patient the address names; the desk nobody of another clinic', async () => {
    const own = await ask(phone, `plan?patient=${setting.otherPatientId}`);
    const { text } = await readPdf(new Uint8Array(await own.arrayBuffer()));
    expect(text.join(' ')).toContain('Test Person');
    expect((await ask(desk, `plan?patient=${setting.strangerPatientId}`)).status).toBe(404);
  });

  it.each([
    ['discharge', 'Zwischenbericht'],
    ['handover', 'Übergabe'],
  ])('is made at the desk in German: %s', async (kind, title) => {
    const made = await ask(desk, `${kind}?patient=${setting.patientId}&language=de`);
    expect(made.status).toBe(200);
    const { text, language } = await readPdf(new Uint8Array(await made.arrayBuffer()));
    expect([language?.slice(0, 2), text[0]?.includes(title)]).toEqual(['de', true]);
  });

  it('is refused to who is not signed in, to another site, and where the address names no paper', async () => {
    expect((await ask(browser('192.0.2.201'), 'plan')).status).toBe(401);
    expect((await ask(phone, 'plan', { 'sec-fetch-site': 'cross-site' })).status).toBe(403);
    for (const address of ['recipe', 'plan?paper=a3', 'plan?language=xx'])
      expect([address, (await ask(phone, address)).status]).toEqual([address, 404]);
    expect((await ask(phone, 'plan?weeks=13')).status).toBe(400);
    const record = await ask(phone, `record?language=de&patient=${setting.otherPatientId}`);
    expect(record.headers.get('content-disposition')).toBe('inline; filename="meine-akte-2026-03-02.pdf"');
    const { text } = await readPdf(new Uint8Array(await record.arrayBuffer()));
    expect(text.join(' ')).toContain('Test Person');
    expect((await ask(desk, `record?patient=${setting.patientId}`)).status).toBe(200);
    expect((await ask(desk, `record?patient=${setting.strangerPatientId}`)).status).toBe(404);
    // A letter is the clinic's to write.
    expect((await ask(phone, `letter?patient=${setting.patientId}`)).status).toBe(403);
    expect((await ask(desk, `letter?patient=${setting.patientId}`)).status).toBe(200);
    expect((await ask(desk, `discharge?patient=${setting.patientId}&language=xx`)).status).toBe(404);
    expect((await ask(desk, `letter?patient=${setting.patientId}&letter=nobody`)).status).toBe(404);
  });

  it('of a letter holds a note only where its address names it, and none that is not on record', async () => {
    const note = { subjective: null, objective: null, assessment: null, plan: null };
    const text = 'Rang about the stairs.';
    const written = { ...note, contact: 'telephone', day: '2026-03-02', text } as const;
    const id = await recordNote(setting.clinician, setting.patientId, written);
    const said = async (address: string) =>
      (await readPdf(new Uint8Array(await (await ask(desk, address)).arrayBuffer()))).text.join(' ');
    expect(await said(`letter?patient=${setting.patientId}`)).not.toContain(text);
    expect(await said(`letter?patient=${setting.patientId}&note=${id}`)).toContain(text);
    const gone = await ask(desk, `letter?patient=${setting.patientId}&note=${id}&note=gone`);
    expect(gone.status).toBe(404);
  });

  it.each(['discharge', 'self-management', 'handover', 'flare-note'])(
    'of a %s is for the desk alone',
    async (kind) => {
      const made = await ask(desk, `${kind}?patient=${setting.patientId}`);
      expect(made.status).toBe(200);
      expect(made.headers.get('content-disposition')).toBe(`inline; filename="${kind}-2026-03-02.pdf"`);
      expect((await ask(phone, `${kind}?patient=${setting.patientId}`)).status).toBe(403);
      expect((await ask(desk, `${kind}?patient=${setting.strangerPatientId}`)).status).toBe(404);
    },
  );
});
