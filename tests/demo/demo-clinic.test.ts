/** The stories of the demo clinic, told into a real database by the functions the product uses. */
import { readFileSync } from 'node:fs';
import { getTableName } from 'drizzle-orm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { prescribedLoadKg, shareOf } from '#core/decision/dose/volume.ts';
import { equipmentKinds, householdEquipment } from '#core/exercises/equipment.ts';
import { nutritionLockRow } from '#core/nutrition/nutrition-lock.ts';
import { flushReads } from '#data/audit/audit.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { verifyRows } from '#data/audit/verify-rows.ts';
import { dayAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import { lastRecordedAt } from '#data/patients/last-recorded.ts';
import { patientOf } from '#data/patients/people.ts';
import { appendOnlyTables } from '#data/schema/kit.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import { worklistPage } from '#data/worklist/worklist.ts';
import {
  demoClinic,
  demoNow,
  demoPassphrase,
  demoSignIns,
  otherClinic,
  reviewerCodeSecret,
  reviewerTypedSecret,
} from '#demo/clinic.ts';
import { itemIdOf } from '#demo/clinician.ts';
import { loadDemoClinic } from '#demo/load.ts';
import { otherClinicStory } from '#demo/other-clinic.ts';
import { stories } from '#demo/patients.ts';
import type { Disagreement, Story } from '#demo/story.ts';
import { makeAuth, openAccount } from '#server/sign-in/auth.ts';
import { freshStore } from '#tests/support/store.ts';
import { typedSecret } from '#tests/support/typed-secret.ts';
import { replayedOtherwise } from './replayed.ts';
import {
  accessTo,
  auditKey,
  type Claim,
  claimsOf,
  decisionsInForceAt,
  inForceAt,
  middayOf,
  placeOf,
  type Told,
  target,
  toldOf,
  waitsAt,
} from './told.ts';

const everyStory: readonly Story[] = [...stories, otherClinicStory];

let store: Store;
const told = new Map<string, Told>();
const auth = (at: Store) => makeAuth(at, { secret: 's'.repeat(32), origin: 'http://127.0.0.1:3000' });

beforeAll(async () => {
  store = freshStore();
  await loadDemoClinic(target(store, (account) => openAccount(auth(store), account)));
  for (const story of everyStory) told.set(story.id, await toldOf(store, story));
}, 240_000);
afterAll(() => store.close());

const productSays = (story: Story, { on, of }: Claim, day: number): string | null => {
  const known = told.get(story.id)!;
  const midday = middayOf(story, day);
  if (on === 'decision') return decisionsInForceAt(known, of, midday)?.decision ?? null;
  return on === 'in force' ? inForceAt(known, story, of, midday) : waitsAt(known, story, of, midday);
};

const disputed = (story: Story, day: number, claim: Claim): Disagreement | undefined =>
  story.disagreements.find((one) => one.day === day && one.on === claim.on && one.of === claim.of);

describe.each(everyStory.map((story) => [story.id, story] as const))('%s', (_, story) => {
  it.each(story.expected.map((one) => [one.day, one.decision, one.joint, one.why, one] as const))(
    'day %i: %s for the %s. %s',
    (day, _decision, joint, _why, one) => {
      for (const claim of claimsOf(one)) {
        const dispute = disputed(story, day, claim);
        if (dispute) expect(dispute.expected).toBe(claim.says);
        expect({ ...claim, says: productSays(story, claim, day) }).toEqual(
          dispute ? { ...claim, says: dispute.product } : claim,
        );
      }
      if (one.contact) {
        expect(decisionsInForceAt(told.get(story.id)!, joint, middayOf(story, day))?.contact).toBe(
          one.contact,
        );
      }
    },
  );

  it('every disagreement is about something expected on its day, and says why', () => {
    for (const one of story.disagreements) {
      const claims = story.expected.filter(({ day }) => day === one.day).flatMap(claimsOf);
      expect(claims).toContainEqual({ on: one.on, of: one.of, says: one.expected });
      expect(one.product).not.toBe(one.expected);
      expect(one.why.length).toBeGreaterThan(40);
    }
  });
});

describe('three quiet months', () => {
  it('bring more repetitions, more load and a harder level with at most four signatures after the first ones', () => {
    const story = stories.find(({ id }) => id === 'steady-progress')!;
    const { versions } = told.get(story.id)!;
    // What acts by itself is signed in the moment it is made.
    const signedByHand = versions.filter(
      (row) => row.origin !== 'clinician' && row.signedAt !== null && row.signedAt !== row.recordedAt,
    );
    expect(signedByHand.length).toBeGreaterThan(0);
    expect(signedByHand.length).toBeLessThanOrEqual(4);
    const inForceOf = (item: string) =>
      versions.filter((row) => row.itemId === itemIdOf(story.id, item) && row.signedAt !== null);
    const [knee, chair] = ['knee', 'chair'].map(inForceOf);
    const shareOfFirst = shareOf(knee!.at(-1)!.dose, knee![0]!.dose);
    expect(shareOfFirst).toBeGreaterThan(1.3);
    expect(knee!.map(({ dose }) => prescribedLoadKg(dose)).at(-1)).toBeGreaterThan(3.2);
    expect(chair!.at(-1)!.dose.exerciseId).not.toBe(chair![0]!.dose.exerciseId);
  });
});

describe('the demo clinic as a whole', () => {
  it('gives the same decisions, doses and words when it is loaded again', async () => {
    const again = freshStore();
    await loadDemoClinic(target(again));
    for (const story of everyStory) {
      const second = await toldOf(again, story);
      const first = told.get(story.id)!;
      const decided = ({ decisions }: Told) =>
        decisions.map(({ id: _, sessionId: _s, morningId: _m, ...row }) => row);
      const dosed = ({ versions }: Told) => versions.map(({ id: _, decisionId: _d, ...row }) => row);
      expect(decided(second)).toEqual(decided(first));
      expect(dosed(second)).toEqual(dosed(first));
    }
    again.close();
  }, 240_000);

  it('leaves out what has not happened yet when the clock stands earlier', async () => {
    const earlier = freshStore();
    const now = Date.parse('2026-02-02T12:00:00+00:00');
    await loadDemoClinic({ ...target(earlier), now });
    expect(await lastRecordedAt(earlier)).toBeLessThanOrEqual(now);
    const known = await Promise.all(everyStory.map((story) => toldOf(earlier, story)));
    // Two stories began on 19 January, every other later.
    expect(known.filter(({ versions }) => versions.length > 0)).toHaveLength(2);
    earlier.close();
  }, 120_000);

  it('leaves nothing in the future of its own today', async () => {
    expect(await lastRecordedAt(store)).toBeLessThanOrEqual(Date.parse(demoNow));
    expect(dayAt(Date.parse(demoNow), demoClinic.zone)).toBe('2026-04-20');
  });

  it('leaves an audit chain that holds, in both clinics', async () => {
    await flushReads(store);
    for (const place of [demoClinic, otherClinic]) {
      const verdict = await verifyChain(store, auditKey, place.id);
      expect(verdict.ok && verdict.rows > 10).toBe(true);
    }
  });

  it('every row of the record is as the audit says it was written', async () => {
    const { rows, ...verdict } = await verifyRows(store, auditKey, [demoClinic.id, otherClinic.id]);
    expect(verdict).toEqual({ findings: [], wrong: 0, unknown: 0 });
    expect(rows).toBeGreaterThan(1000);
  });

  it.each([
    ['the product’s own connection', 1],
    ['any other connection', 0],
  ])('no row of an append-only table can be replaced, by its key or by its place: %s', (_, recursive) => {
    const { client } = store.writer;
    client.pragma(`recursive_triggers = ${recursive}`);
    const tables = [...appendOnlyTables.keys()]
      .map((table) => getTableName(table))
      .filter((name) => client.prepare(`SELECT 1 FROM ${name}`).get() !== undefined);
    const taken: string[] = [];
    for (const name of tables) {
      const columns = (client.pragma(`table_info(${name})`) as { name: string; pk: number }[]).map(
        ({ name: column, pk }) => (pk > 0 && column !== 'clinic_id' ? `${column} || 7` : column),
      );
      for (const values of ['rowid, *', `rowid, ${columns.join(', ')}`]) {
        const names = (client.pragma(`table_info(${name})`) as { name: string }[]).map((one) => one.name);
        const into = `INSERT OR REPLACE INTO ${name} (rowid, ${names.join(', ')})`;
        try {
          client.exec(`BEGIN; ${into} SELECT ${values} FROM ${name} LIMIT 1`);
          taken.push(name);
        } catch (error) {
          expect(String(error)).toContain(`${name} is append-only`);
        } finally {
          client.exec('ROLLBACK');
        }
      }
    }
    client.pragma('recursive_triggers = ON');
    expect(taken).toEqual([]);
    expect(tables.length).toBeGreaterThan(25);
  });

  it('puts people on today’s worklist in the order its README tells', async () => {
    const query = { after: null, limit: 100, kind: null, assignedTo: null };
    const { lines } = await worklistPage(accessTo(store), query);
    const readme = readFileSync(new URL('../../demo-clinic/README.md', import.meta.url), 'utf8');
    const written = [...readme.matchAll(/^\d+\. \*\*(.+?)\*\* \(`(.+?)`\)/gm)].map((row) => [row[1], row[2]]);
    const listed = lines.map((line) => {
      const { person } = stories.find((story) => story.id === line.patientId)!;
      return [`${person.givenName} ${person.familyName}`, line.worklistItems[0]?.kind];
    });
    expect(written.length).toBeGreaterThan(4);
    expect(listed).toEqual(written);
  });

  it('keeps each clinic’s people from the other', async () => {
    expect(await patientOf(accessTo(store), otherClinicStory.id)).toBeNull();
    expect(await patientOf(accessTo(store, otherClinic), stories[0]!.id)).toBeNull();
  });

  it('locks nutrition for the person who told of kidney disease, and refers', async () => {
    const screening = await newestScreening(accessTo(store), 'kidney-lock');
    const kidneyDisease = screening!.answers.find((row) => row.item === 'kidney-disease')!.answer;
    if (kidneyDisease === 'not-applicable') throw new Error('Kidney disease is asked of everybody.');
    const lock = nutritionLockRow.calculate({ kidneyDisease });
    expect(lock.ok && lock.result).toMatchObject({ locked: true, showToPatient: false });
    expect(lock.ok && lock.notes.map((note) => note.code)).toContain('refer-clinician');
  });
});

describe('who is in it', () => {
  it('every sign-in of the list opens with the demo passphrase', async () => {
    const signIn = auth(store);
    for (const { email, role, who } of demoSignIns) {
      const answer = await signIn.api.signInEmail({ body: { email, password: demoPassphrase } });
      // The reviewer's passphrase opens only the question for a one-time code.
      if (email === 'reviewer@demo.invalid') {
        expect(answer).toMatchObject({ twoFactorRedirect: true });
        continue;
      }
      const user = answer.user as unknown as { email: string; role: string; name: string };
      expect([user.email, user.role, user.name]).toEqual([email, role, who]);
    }
  }, 60_000);

  it('prints the reviewer’s secret as an authenticator app takes it', () => {
    expect(reviewerTypedSecret).toBe(typedSecret(reviewerCodeSecret));
  });

  it('the list for the command line says the same', () => {
    const file = new URL('../../demo-clinic/sign-ins.json', import.meta.url);
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(
      demoSignIns.map(({ who, email, story }) => ({ who, email, story })),
    );
  });

  it('every patient sign-in is the person of its story', () => {
    const named = stories.map(({ email, person }) => [email, `${person.givenName} ${person.familyName}`]);
    expect(
      demoSignIns.filter(({ role }) => role === 'patient').map(({ email, who }) => [email, who]),
    ).toEqual(named);
  });

  it('addresses cannot be reached and telephone numbers lie in the range kept for fiction', () => {
    const phones = [demoClinic.phone, otherClinic.phone, ...everyStory.map((story) => story.person.phone)];
    // 020 910 0000 to 020 919 9999, set aside for drama by the Irish regulator (from memory).
    expect(phones.filter((phone) => !/^020 91\d \d{4}$/.test(phone ?? ''))).toEqual([]);
    expect(demoSignIns.filter(({ email }) => !email.endsWith('@demo.invalid'))).toEqual([]);
  });

  it('things at home are the catalogue’s plain words and never a trade name', () => {
    const known = new Set([...equipmentKinds, ...householdEquipment]);
    const strange = everyStory.flatMap((story) =>
      story.profile.ownedEquipment.filter((thing) => !known.has(thing)),
    );
    expect(strange).toEqual([]);
    expect(everyStory.filter((story) => /[®™©]/.test(JSON.stringify(story)))).toEqual([]);
  });

  it('each story lies in its own clinic', () => {
    expect(everyStory.map((story) => placeOf(story).id)).toEqual([
      ...stories.map(() => demoClinic.id),
      otherClinic.id,
    ]);
  });

  it('every decision comes out again, from its stored facts and from the record as it was known then', async () => {
    expect(await replayedOtherwise(store)).toEqual([]);
  });
});
