/**
 * The worklist, kept on write. `worklist_item` is derived: it can be thrown away and rebuilt from the record
 * at any time. What clinicians did about an item is a record of its own and append-only.
 */
import { sql } from 'drizzle-orm';
import { worklistItemKinds } from '#core/worklist/item.ts';
import type { StripFacts } from '#core/worklist/strip.ts';
import { kit, words } from './kit.ts';
import { clinic, patient } from './people.ts';

export const worklistItem = kit.table(
  'worklist_item',
  {
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    key: kit.text('key'),
    kind: kit.word('kind', worklistItemKinds),
    rank: kit.whole('rank'),
    since: kit.instant('since'),
    /** First civil day of the clinic on which it shows; a due date, so nothing goes stale at midnight. */
    showsFrom: kit.day('shows_from'),
    /** Instant of that day before which it does not show; null = the whole day. */
    showsAt: kit.instantOrNull('shows_at'),
    joint: kit.textOrNull('joint'),
    decisionId: kit.idOrNull('decision_id'),
    facts: kit.json<Readonly<Record<string, string | number>>>('facts'),
    acknowledgedBy: kit.textOrNull('acknowledged_by'),
    assignedTo: kit.idOrNull('assigned_to'),
    assignedName: kit.textOrNull('assigned_name'),
    snoozedUntil: kit.dayOrNull('snoozed_until'),
  },
  (t) => [
    kit.key({ columns: [t.clinicId, t.patientId, t.key] }),
    // Serves a page of the worklist: a clinic's items by danger, then age, read until the page is full.
    kit
      .index('worklist_item_by_danger')
      .on(t.clinicId, t.rank, t.since, t.patientId, t.showsFrom, t.snoozedUntil, t.showsAt, t.key),
    // Holds all a page shows of a patient, beside each other: a page of fifty looks in fifty places, not in two hundred.
    kit
      .index('worklist_item_of_patient')
      .on(
        t.clinicId,
        t.patientId,
        t.showsFrom,
        t.snoozedUntil,
        t.showsAt,
        t.key,
        t.kind,
        t.rank,
        t.since,
        t.joint,
        t.decisionId,
        t.facts,
        t.acknowledgedBy,
        t.assignedTo,
        t.assignedName,
      ),
    // Serves the counts above the worklist without touching the rows.
    kit
      .index('worklist_item_due')
      .on(t.clinicId, t.patientId, t.showsFrom, t.snoozedUntil, t.kind, t.assignedTo, t.showsAt),
    kit.check('worklist_item_kind', sql`${t.kind} IN (${words(worklistItemKinds)})`),
  ],
);

/** Four weeks of dose and mornings of each patient, kept on write as the items are. */
export const worklistStrip = kit.table('worklist_strip', {
  patientId: kit
    .id('patient_id')
    .primaryKey()
    .references(() => patient.id),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  facts: kit.json<StripFacts>('facts'),
});

/**
 * Where a patient stands, kept on write as the items are, and how many patients of the clinic stand so: what the
 * numbers above the worklist are added up from, whatever the number of patients.
 */
export const worklistStanding = kit.table(
  'worklist_standing',
  {
    patientId: kit
      .id('patient_id')
      .primaryKey()
      .references(() => patient.id),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    stands: kit.text('stands'),
    /** Day and instant from which it reads otherwise without anybody writing; null = never. */
    untilDay: kit.dayOrNull('until_day'),
    untilAt: kit.instantOrNull('until_at'),
  },
  (t) => [
    kit.index('worklist_standing_until_day').on(t.clinicId, t.untilDay),
    kit.index('worklist_standing_until_at').on(t.clinicId, t.untilAt),
  ],
);

export const worklistTally = kit.table(
  'worklist_tally',
  {
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    stands: kit.text('stands'),
    patients: kit.whole('patients'),
  },
  (t) => [kit.key({ columns: [t.clinicId, t.stands] })],
);

/** `unacknowledge` and `unassign` take back an act of whoever wrote it. */
export const worklistItemActs = [
  'acknowledge',
  'unacknowledge',
  'assign',
  'unassign',
  'snooze',
  'unsnooze',
] as const;

export const worklistItemAction = kit.appendOnly(
  'worklist_item_action',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    itemKey: kit.text('item_key'),
    /** The item as it stood; a later one of the same key begins afresh. */
    itemSince: kit.instant('item_since'),
    act: kit.word('act', worklistItemActs),
    until: kit.dayOrNull('until'),
    assignee: kit.idOrNull('assignee'),
    assigneeName: kit.textOrNull('assignee_name'),
    reason: kit.text('reason'),
    doneAt: kit.instant('done_at'),
    doneBy: kit.id('done_by'),
    doneName: kit.text('done_name'),
  },
  (t) => [
    kit.index('worklist_item_action_by_patient').on(t.patientId, t.doneAt),
    kit.check('worklist_item_action_act', sql`${t.act} IN (${words(worklistItemActs)})`),
    kit.check('worklist_item_action_snooze', sql`(${t.act} = 'snooze') = (${t.until} IS NOT NULL)`),
  ],
);
