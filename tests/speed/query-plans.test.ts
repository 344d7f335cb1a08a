/** The file answers what is asked all day by indexes, so that a large clinic waits no longer than a small one. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { takeSession } from '#data/entries/take-entry.ts';
import { worklistPage } from '#data/worklist/worklist.ts';
import { worklistCounts } from '#data/worklist/worklist-counts.ts';
import { asClinician, asPatient } from '#tests/support/callers.ts';
import { accessOf } from '#tests/support/clinic.ts';
import { type BusyClinic, busyClinic, sessionAt } from './busy-clinic.ts';
import { planOf, statementsDuring } from './statements.ts';

/**
 * Steps that read by the clinic alone, each because it stops early or never touches a row: the worklist
 * until its page is full, its counts from an index, the end of a chain, the newest version.
 */
const mayReadByClinic: readonly RegExp[] = [
  /INDEX worklist_item_by_danger \(/,
  /COVERING INDEX worklist_item_due \(/,
  /COVERING INDEX patient_by_clinic \(/,
  /INDEX identity_by_clinic_name \(/,
  /INDEX sqlite_autoindex_audit_1 \(clinic_id=\?\)/,
  // One row for each way of standing, and not for each patient.
  /worklist_tally_1 \(clinic_id=\?\)/,
  // As many as a clinic has machines, and as its settings had versions.
  /INDEX clinic_machine_by_clinic \(clinic_id=\?\)/,
  /INDEX decision_settings_by_clinic \(clinic_id=\?\)/,
  /INDEX clinic_settings_version_number \(clinic_id=\?\)/,
  /INDEX covering_clinician_by_clinic \(clinic_id=\?\)/,
  /INDEX short_signs_approval_by_clinic \(clinic_id=\?\)/,
];

/**
 * A list handed over with the question is no table, and neither are the patients counted along an index or the
 * rows (q) that a query read together with others has found.
 */
const isWhole = (step: string): boolean =>
  (/^SCAN \w/.test(step) &&
    !/^SCAN ((\d+ )?CONSTANT ROW|json_each VIRTUAL TABLE|listed_patients$|q$)/.test(step)) ||
  (/\(clinic_id=\?\)/.test(step) && !mayReadByClinic.some((allowed) => allowed.test(step)));

const wholeReads = (clinic: BusyClinic, asked: readonly string[]): readonly string[] =>
  [...new Set(asked)].flatMap((sql) =>
    planOf(clinic.store, sql)
      .filter(isWhole)
      .map((step) => `${step} in ${sql.slice(0, 200)}`),
  );

describe('no hot question reads a growing table in full', () => {
  let clinic: BusyClinic;
  beforeAll(async () => {
    clinic = await busyClinic(6);
  });
  afterAll(() => clinic.store.close());

  const clinician = () => accessOf(clinic.store, 'a', 'clinician-a', clinic.now + 3_600_000);
  const patient = () => accessOf(clinic.store, 'a', clinic.patientId, clinic.now + 3_600_000);

  const questions: readonly [string, () => Promise<unknown>][] = [
    ['a page of the worklist', () => asClinician(clinician()).clinician.worklist.list()],
    ['the list of patients', () => asClinician(clinician()).clinician.people.list()],
    [
      'the review of a record',
      () => asClinician(clinician()).clinician.review.get({ patientId: clinic.patientId }),
    ],
    ['today’s page of a patient', () => asPatient(patient(), clinic.patientId).patient.today.get()],
    ['a patient’s own history', () => asPatient(patient(), clinic.patientId).patient.history.get()],
    [
      'a session with its decision, doses and worklist',
      () => takeSession(patient(), clinic.patientId, sessionAt(clinic, patient().now, 'session-planned')),
    ],
  ];

  it.each(questions)('%s', async (_, ask) => {
    const asked = await statementsDuring(clinic.store, ask);
    expect(asked.length).toBeGreaterThan(0);
    expect(wholeReads(clinic, asked)).toEqual([]);
  });

  it('reads the worklist in order of danger from an index and stops when the page is full', async () => {
    const query = { after: { rank: 1, since: 1, patientId: 'a' }, limit: 50, kind: null, assignedTo: null };
    const asked = await statementsDuring(clinic.store, () => worklistPage(clinician(), query));
    expect(asked).toHaveLength(1);
    const steps = planOf(clinic.store, asked[0]!).join('\n');
    expect(steps).toMatch(
      /SEARCH worklist_item USING (COVERING )?INDEX worklist_item_by_danger \(clinic_id=\?/,
    );
    expect(steps).not.toMatch(/TEMP B-TREE/);
  });

  it('counts the worklist from where patients stand, and looks only at those for whom a day has passed', async () => {
    const asked = await statementsDuring(clinic.store, () =>
      worklistCounts(clinician(), { kind: null, assignedTo: null }),
    );
    const read = new Set(asked.flatMap((sql) => [...sql.matchAll(/from "(\w+)"/g)].map(([, name]) => name)));
    expect([...read]).toEqual(['worklist_standing', 'worklist_tally']);
    const steps = planOf(clinic.store, asked[0]!).filter((step) => /^SEARCH/.test(step));
    expect(steps.filter((step) => !/worklist_standing_until_(day|at) \(clinic_id=\? AND/.test(step))).toEqual(
      [],
    );
  });

  it('would find a table that is read in full, and one read by its clinic alone', () => {
    const reads = (sql: string) => wholeReads(clinic, [sql]).length;
    expect(reads('SELECT * FROM set_log')).toBe(1);
    expect(reads('SELECT * FROM patient_identity WHERE clinic_id = ? AND phone = ?')).toBe(0);
    expect(reads('SELECT * FROM prescription WHERE dose = ?')).toBe(1);
    expect(reads('SELECT * FROM set_log WHERE patient_id = ? AND session_id = ?')).toBe(0);
  });
});
