/** A page of the worklist with its four weeks of each patient, against the same rows read raw. */
import type { Joint } from '#core/exercises/joints.ts';
import { stripOf } from '#core/worklist/strip.ts';
import { figuresOf } from '#core/worklist/strip-words.ts';
import type { Access } from '#data/access.ts';
import { openStore } from '#data/open-store.ts';
import { worklistPage } from '#data/worklist/worklist.ts';
import { worklistCounts } from '#data/worklist/worklist-counts.ts';
import { accessTo, groupFile } from '../group/make-group.ts';
import type { Client } from '../group/raw-rows.ts';
import { measurePairs, medianOf } from '../pairs.ts';
import { type Measured, type Part, rounded } from '../part.ts';

/** A page long enough that it holds a thousand rows. */
const longPage = 700;
const usualPage = 50;
const bar = 1.5;

export const pageOf = (access: Access, limit: number) =>
  worklistPage(access, { after: null, limit, kind: null, assignedTo: null });

/** The page with what each row draws of its four weeks worked out. */
const drawnPage = async (access: Access, limit: number) =>
  (await pageOf(access, limit)).lines.map(({ strip, worklistItems: [first] }) => {
    const drawn = stripOf({ today: access.day, about: (first?.joint ?? null) as Joint | null, ...strip! });
    return [drawn, figuresOf(drawn, access.day)];
  });

/** The same rows by hand: whose most pressing item comes first, and then all that is due of those. */
const rawPage = (client: Client) => {
  const due = 'clinic_id = ? AND shows_from <= ? AND (snoozed_until IS NULL OR snoozed_until < ?)';
  const heads = client
    .prepare(
      `SELECT patient_id, rank, since FROM worklist_item m WHERE ${due} AND NOT EXISTS (
         SELECT 1 FROM worklist_item o WHERE o.clinic_id = m.clinic_id AND o.patient_id = m.patient_id
         AND o.shows_from <= ? AND (o.snoozed_until IS NULL OR o.snoozed_until < ?)
         AND (+o.rank, +o.since, +o.key) < (+m.rank, +m.since, +m.key))
       ORDER BY rank, since, patient_id LIMIT ?`,
    )
    .raw();
  const ofPatient = client
    .prepare(
      `SELECT m.*, i.given_name, i.family_name, i.birth_day, i.phone, w.facts FROM worklist_item m
       JOIN patient_identity i ON i.patient_id = m.patient_id
       LEFT JOIN worklist_strip w ON w.patient_id = m.patient_id
       WHERE m.${due} AND m.patient_id IN (SELECT value FROM json_each(?)) ORDER BY m.rank, m.since`,
    )
    .raw();
  return (access: Access, limit: number): number => {
    const { clinicId, day } = access;
    const ids = (heads.all(clinicId, day, day, day, day, limit) as string[][]).map(([id]) => id);
    return ofPatient.all(clinicId, day, day, JSON.stringify(ids)).length;
  };
};

const times = async (work: () => Promise<unknown>, runs = 15): Promise<number> => {
  const found: number[] = [];
  for (let run = 0; run < runs; run++) {
    const began = performance.now();
    await work();
    found.push(performance.now() - began);
  }
  return medianOf(found);
};

export const worklistPart: Part = {
  name: 'worklist',
  about: 'worklist ÷ the same rows read raw',
  run: async (settings): Promise<readonly Measured[]> => {
    const store = openStore(await groupFile(settings.plan));
    try {
      const access = accessTo(store);
      const raw = rawPage(store.reader.client);
      const paired = await measurePairs(
        { ready: async () => () => drawnPage(access, longPage) },
        { ready: async () => () => raw(access, longPage) },
        settings.until,
      );
      const figures = {
        rows: raw(access, longPage),
        'product ms': rounded(paired.firstMs),
        'raw ms': rounded(paired.secondMs),
        'page of 50 ms': rounded(await times(() => drawnPage(access, usualPage))),
        'counts ms': rounded(await times(() => worklistCounts(access, { kind: null, assignedTo: null }))),
      };
      return [{ part: 'worklist', title: worklistPart.about, bar, paired, figures }];
    } finally {
      store.close();
    }
  },
};
