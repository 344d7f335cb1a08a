/** Every procedure for programs, called by the document alone; what it answers is what the document says. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tokenScopes } from '#core/clinic/token-scopes.ts';
import { addDays } from '#core/time/day.ts';
import type { Store } from '#data/database/store.ts';
import { makeToken } from '#data/programs/tokens.ts';
import { asClinician } from '#tests/support/callers.ts';
import { type Setting, start, twoClinics } from '#tests/support/clinic.ts';
import { testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs, workingPatient } from '#tests/support/working-patient.ts';
import type { InterfaceDocument } from './breaks.ts';
import { type Answer, ask, documentAsked, faultsOf } from './program.ts';

let store: Store;
let setting: Setting;
let secret: string;
let document: InterfaceDocument;
beforeAll(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  testRuntime(store);
  const work = workingPatient(store, setting.patientId);
  await work.signed();
  for (const day of [0, 2, 4]) {
    await work.didSession(start + day * dayMs, { before: 2, during: 3, after: 2 });
    await work.answeredMorning(start + (day + 1) * dayMs, 2);
  }
  ({ secret } = await makeToken(setting.clinician, { name: 'Booking', scopes: tokenScopes, days: 1 }));
  document = await documentAsked();
});
afterAll(() => store.close());

interface Page {
  readonly rows: readonly { readonly id: string; readonly changedAt: string }[];
  readonly next: string | null;
}

const get = (path: string, more = ''): Promise<Answer> =>
  ask(`${document.servers[0]!.url}${path.replace('{patientId}', setting.patientId)}${more}`, secret);
const page = async (path: string, more = ''): Promise<Page> => (await get(path, more)).json as Page;

describe('a program that knows the document alone', () => {
  it('is answered by every address as its schema says', async () => {
    const told: Record<string, number> = {};
    for (const [path, { get: operation }] of Object.entries(document.paths)) {
      const answer = await get(path);
      const { $ref = '' } = operation!.responses['200']!.content['application/json'].schema;
      expect([path, answer.status, faultsOf(document, $ref.split('/').at(-1)!, answer.json)]).toEqual([
        path,
        200,
        null,
      ]);
      const { rows, exercises } = answer.json as { rows?: object[]; exercises?: object[] };
      told[operation!.operationId] = (rows ?? exercises ?? []).length;
    }
    expect(told).toMatchObject({ people: 2, sessions: 3, mornings: 3, plan: expect.any(Number) });
    expect(told.measurements).toBeGreaterThan(3);
    expect(told.decisions).toBeGreaterThan(0);
    expect(told.plan).toBeGreaterThan(0);
  });

  it('is shown no dose without its cautions', async () => {
    const { exercises } = (await get('/people/{patientId}/plan')).json as {
      exercises: { cautions: object[] }[];
    };
    expect(exercises.every(({ cautions }) => cautions.length > 0)).toBe(true);
  });

  it('is told the limits of today among them, also one that was set after the dose was signed', async () => {
    const told = async () => {
      const { exercises } = (await get('/people/{patientId}/plan')).json as {
        exercises: { cautions: { id: string }[] }[];
      };
      return exercises.flatMap(({ cautions }) => cautions.map(({ id }) => id));
    };
    expect((await told()).join(' ')).not.toContain('limit-load-limit-right-knee');
    const limit = {
      ...{ joint: 'right-knee', kind: 'load-limit', limitKg: 10 },
      author: 'Dr Surgeon',
    } as const;
    await asClinician(setting.clinician).clinician.care.addLimit({
      patientId: setting.patientId,
      limit: { ...limit, from: setting.clinician.day, to: null, remark: null },
    });
    expect((await told()).join(' ')).toContain('limit-load-limit-right-knee');
  });

  it('whose schema is another finds the answer at fault, so that the check is one', async () => {
    const answer = await get('/people');
    expect(faultsOf(document, 'Sessions', answer.json)).not.toBeNull();
    expect(faultsOf(document, 'People', { rows: [{}], next: null })).not.toBeNull();
  });

  it.each([
    '/people',
    '/people/{patientId}/sessions',
    '/people/{patientId}/mornings',
    '/people/{patientId}/measurements',
  ])('reads %s page by page and misses nobody and nothing', async (path) => {
    const { rows } = await page(path);
    const found: string[] = [];
    let after: string | null = '';
    while (after !== null) {
      const next: Page = await page(
        path,
        `?limit=1${after === '' ? '' : `&after=${encodeURIComponent(after)}`}`,
      );
      expect(next.rows.length).toBeLessThanOrEqual(1);
      found.push(...next.rows.map(({ id }) => id));
      after = next.next;
    }
    expect(found).toEqual(rows.map(({ id }) => id));
    expect(found.length).toBeGreaterThan(1);
  });

  it('reads what changed at an instant or later, and what changed before it no more', async () => {
    const path = '/people/{patientId}/sessions';
    const { rows } = await page(path);
    const last = rows.at(-1)!;
    expect((await page(path, `?changedSince=${last.changedAt}`)).rows.map(({ id }) => id)).toEqual([last.id]);
    const later = new Date(Date.parse(last.changedAt) + 1).toISOString();
    expect((await page(path, `?changedSince=${later}`)).rows).toEqual([]);
    const { rows: people } = await page('/people', `?changedSince=${last.changedAt}`);
    expect(people.map(({ id }) => id)).toEqual([setting.patientId]);
  });

  const measuredAs = async (kind: string) =>
    ((await page('/people/{patientId}/measurements')).rows as readonly Record<string, unknown>[]).find(
      (row) => row.kind === kind,
    )!;

  it('reads a measurement again once it was marked as entered in error', async () => {
    const path = '/people/{patientId}/measurements';
    const { id } = await measuredAs('body-mass');
    const now = start + 20 * dayMs;
    const access = { ...setting.clinician, now, day: addDays(setting.clinician.day, 20) };
    await asClinician(access).clinician.corrections.enterInError({
      ...{ patientId: setting.patientId, subject: 'measurement', subjectId: String(id) },
      reason: 'Of somebody else',
    });
    const since = new Date(now).toISOString();
    expect((await page(path, `?changedSince=${since}`)).rows).toMatchObject([
      { id, enteredInErrorAt: since, replacedById: null },
    ]);
  });

  it('reads a measurement that bounds as it stands while its correction waits, and as struck once that was seen', async () => {
    const path = '/people/{patientId}/measurements';
    const pressure = () => measuredAs('blood-pressure');
    const { id } = await pressure();
    const at = (days: number) =>
      asClinician({
        ...setting.clinician,
        ...{ now: start + days * dayMs, day: addDays(setting.clinician.day, days) },
      }).clinician.corrections;
    const { correctionId } = await at(21).enterInError({
      ...{ patientId: setting.patientId, subject: 'measurement', subjectId: String(id) },
      reason: 'Of somebody else',
    });
    expect(await pressure()).toMatchObject({ id, enteredInErrorAt: null });
    await at(22).acknowledgePlan({ patientId: setting.patientId, correctionId });
    const instantAt = (days: number) => new Date(start + days * dayMs).toISOString();
    const since = `?changedSince=${instantAt(22)}`;
    expect((await page(path, since)).rows).toMatchObject([{ id, enteredInErrorAt: instantAt(21) }]);
  });

  it.each([
    ['a limit of nothing', '?limit=0', /limit/],
    ['a limit that is no number', '?limit=many', /limit/],
    ['a day where an instant belongs', '?changedSince=2026-03-02', /changedSince/],
    ['a parameter nobody knows', '?since=2026-03-02', /"since" is no parameter/],
    ['one sent twice', '?limit=1&limit=2', /"limit"/],
    ['the person beside the path', '?patientId=x', /"patientId"/],
  ])('is refused %s, and told what is wrong', async (_what, more, said) => {
    const { status, json } = await get('/people/{patientId}/sessions', more);
    expect([status, (json as { problem: string }).problem]).toEqual([400, 'refused']);
    expect((json as { message: string }).message).toMatch(said);
    expect(faultsOf(document, 'Refusal', json)).toBeNull();
  });

  it('finds nothing at an address that is not in the document', async () => {
    expect(await get('/staff')).toMatchObject({ status: 404, json: { problem: 'not-found' } });
  });
});
