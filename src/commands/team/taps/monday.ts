/**
 * The Monday of a made clinic: its people are invented, their weeks told through the functions the product uses and
 * decided on version 2 of the rules, and then the worklist is opened before anybody has touched it. What acted by
 * itself takes no press; a row takes one, its primary action.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import { inRoot } from '#commands/paths.mjs';
import type { Access } from '#data/access.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { migrateStore } from '#data/database/migrate.ts';
import type { Store } from '#data/database/store.ts';
import { type Proposal, proposalsOf } from '#data/decision/decisions.ts';
import { openStore } from '#data/open-store.ts';
import { createClinic } from '#data/patients/people.ts';
import { type Cursor, type WorklistLine, worklistPage } from '#data/worklist/worklist.ts';
import { groupCounts } from '#data/worklist/worklist-counts.ts';
import { demoClinic, demoNow } from '#demo/clinic.ts';
import { accessAt, type DemoContext } from '#demo/context.ts';
import { madePeople } from '#demo/made-clinic.ts';
import { openRecord, tell } from '#demo/tell.ts';
import { seeded } from '#simulation/raises/seeded.ts';

const mondayPeople = 200;
const mondaySeed = 20_260_420;
const rulesVersion = 2;
const clinician = { id: 'made-clinician', name: 'Nuala Derravane' };
/** Before the first intake. */
const createdAt = Date.parse('2026-01-05T09:00:00Z');

const countedBy = <T>(all: readonly T[], nameOf: (one: T) => string): Readonly<Record<string, number>> => {
  const counts = new Map<string, number>();
  for (const one of all) counts.set(nameOf(one), (counts.get(nameOf(one)) ?? 0) + 1);
  return Object.fromEntries([...counts].sort(([a], [b]) => (a < b ? -1 : 1)));
};

const rowsOf = async (access: Access): Promise<readonly WorklistLine[]> => {
  const rows: WorklistLine[] = [];
  let after: Cursor | null = null;
  do {
    const page: Awaited<ReturnType<typeof worklistPage>> = await worklistPage(access, {
      after,
      limit: 100,
      kind: null,
      assignedTo: null,
    });
    rows.push(...page.lines);
    after = page.next;
  } while (after !== null);
  return rows;
};

/** What the newest proposal of each exercise became without anybody: eased back, gone up inside the band, repeated. */
const actedByThemselves = async (access: Access, ids: readonly string[]) => {
  const newest: Proposal[] = [];
  for (const id of ids) {
    const proposals = await proposalsOf(access, id);
    const items = new Set(proposals.map(({ itemId }) => itemId));
    for (const item of items) newest.push(proposals.find(({ itemId }) => itemId === item)!);
  }
  return countedBy(
    newest.filter(({ effect }) => effect !== 'awaits-signature'),
    ({ kind }) => kind,
  );
};

/** Tells the people's weeks into an empty store and counts the list of that Monday. */
export const countMonday = async (store: Store, auditKey: Uint8Array, people = mondayPeople) => {
  const context: DemoContext = {
    store,
    auditKey,
    clinicId: demoClinic.id,
    zone: demoClinic.zone,
    clinician,
    now: Date.parse(demoNow),
    today: demoNow.slice(0, 10),
  };
  await createClinic(store, demoClinic, createdAt);
  const settings = { 'engine-version': rulesVersion };
  await saveSettings(accessAt(context, clinician, createdAt), settings, 'The rules that are counted.');
  const stories = madePeople(people, seeded(mondaySeed));
  for (const story of stories) {
    await openRecord(context, story);
    await tell(context, story, { id: story.id, name: story.person.givenName });
    await turn();
  }
  const access = accessAt(context, clinician, context.now);
  const rows = await rowsOf(access);
  const groups = await groupCounts(access, new Set());
  return {
    people,
    day: access.day,
    rulesVersion,
    rows: rows.length,
    rowsByKind: countedBy(rows, ({ worklistItems }) => worklistItems[0]!.kind),
    itemsByKind: countedBy(
      rows.flatMap(({ worklistItems }) => worklistItems),
      ({ kind }) => kind,
    ),
    needClinician: groups.find(({ group }) => group === 'needs-you')?.count ?? 0,
    nothingFound: groups.find(({ group }) => group === 'nothing-found')?.count ?? 0,
    actedByThemselves: await actedByThemselves(
      access,
      stories.map(({ id }) => id),
    ),
    presses: rows.length,
    habitsDrawn: countedBy(stories, ({ shows }) => shows),
  };
};

/** In a file of its own, thrown away afterwards. */
export const tellMonday = async (): Promise<void> => {
  const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-monday-'));
  const store = openStore(path.join(folder, 'clinic.sqlite'));
  try {
    const migrated = migrateStore(store, inRoot('drizzle'));
    if (!migrated.ok) throw new Error(migrated.reason);
    console.log(JSON.stringify(await countMonday(store, Buffer.alloc(32, 7)), null, 2));
  } finally {
    store.close();
    rmSync(folder, { recursive: true, force: true });
  }
};
