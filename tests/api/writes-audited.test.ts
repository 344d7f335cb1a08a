/** Whatever is written leaves a row of the audit, in the same transaction. */

import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { procedureLines } from '#api/procedures.ts';
import { proposedWording } from '#core/episode/consent.ts';
import type { Store } from '#data/database/store.ts';
import { codeFiles, withoutComments } from '#tests/architecture/repository.ts';
import { asAdministrator, asClinician, asPatient } from '#tests/support/callers.ts';
import { accessOf, type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { planted } from '#tests/support/planted.ts';
import { freshStore } from '#tests/support/store.ts';

/** Procedures that change nothing of the record, each with its reason. */
const unwritten: Readonly<Record<string, string>> = {
  'account.endEverywhere': 'nothing is open here that it could end; its row is looked at in account.test.ts',
  'admin.clinicSettings.preview': 'works out and keeps nothing; with names shown it is a read',
  'clinician.calculations.tryOne': 'works out and keeps nothing',
  'clinician.inventedPeople.tryOwnRule': 'works out and keeps nothing',
  'patient.exports.endFeed': 'where no address is in use nothing changes',
  'clinician.inventedPeople.trySettings': 'works out and keeps nothing',
  'clinician.drafts.drop':
    'typed and not recorded yet; opening a draft is audited as an opening of the record',
  'clinician.drafts.save': 'typed and not recorded yet',
  'clinician.replay.everybody': 'works out and keeps nothing; with names shown it is a read',
  'clinician.replay.stop': 'ends what is being worked out, and keeps nothing',
  'clinician.prescriptions.propose': 'works out and keeps nothing; audited as an opening of the record',
};

/** Files of the data layer that write without a row of their own, each with its reason. */
const unsealed: Readonly<Record<string, string>> = {
  'src/data/database/key-fingerprints.ts': 'proves that the file can be written to, and changes no value',
  'src/data/entries/carried-two-hours.ts':
    'part of the write of the entry they are carried to, which is sealed',
  'src/data/patients/drafts.ts': 'typed and not recorded yet',
  'src/data/accounts/stored-attempts.ts': 'counts of wrong tries; the refused sign-in itself is a row',
  'src/data/worklist/standings.ts':
    'added up anew from the record, inside the write that changed it, or by whoever asks first on a new day',
  'src/data/worklist/worklist-items.ts': 'worked out anew from the record, inside the write that changed it',
};

let store: Store;
let setting: Setting;
let prescriptionId: string;
beforeAll(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  ({ prescriptionId } = await signedExercise(setting.clinician, setting.patientId));
});
afterAll(() => store.close());

type Step = Readonly<Record<string, unknown>>;
const call = async (caller: unknown, path: string, input: unknown): Promise<boolean> => {
  const step = path.split('.').reduce<unknown>((at, part) => (at as Step)[part], caller);
  try {
    await (step as (value: unknown) => Promise<unknown>)(input);
    return true;
  } catch {
    return false;
  }
};

const rows = () =>
  (
    store.reader.client
      .prepare(
        "SELECT count(*) AS n FROM audit WHERE act IN ('write', 'sign-in') OR subject IN ('record-file', 'emergency-access')",
      )
      .get() as { n: number }
  ).n;

const mutations = procedureLines().filter((line) => line.kind === 'mutation' && !unwritten[line.path]);

const callerOf = (path: string) => {
  if (path.startsWith('admin.')) return asAdministrator(setting.clinician);
  if (path.startsWith('patient.')) return asPatient(accessOf(store, 'a', 'patient-user'), setting.patientId);
  return asClinician(setting.clinician);
};

/** What is missing when the filled-in texts alone do not make a call that is taken. */
const fitting: Readonly<Record<string, object>> = {
  'clinician.consents.record': { kind: 'export', act: 'given', ...proposedWording },
  'patient.consents.give': { kind: 'sharing', ...proposedWording },
  'patient.consents.refuse': { kind: 'treatment', ...proposedWording },
  'patient.consents.withdraw': { kind: 'sharing' },
  'clinician.recordFile.make': { handedTo: 'Somebody named' },
  'admin.care.enterUrgentNumber': { urgentNumber: '116 117' },
  'admin.care.nameCoveringClinician': { userId: null },
  'admin.care.writeWording': { kind: 'sharing', text: 'Words long enough to be an agreement.' },
  'admin.questionnaires.write': {
    questionnaireId: null,
    questionnaire: {
      title: 'Nights',
      questions: [{ kind: 'yes-no', text: 'Did you sleep?', low: null, high: null }],
      isPermitted: true,
    },
  },
  'admin.staff.add': { name: 'New Person', email: 'new@test.invalid', role: 'clinician', administers: false },
  'clinician.entries.send': { kind: 'morning' },
  'clinician.visits.saveFirstVisit': {
    visit: { pressure: { systolicMmhg: 118, diastolicMmhg: 74 } },
  },
  'clinician.visits.begin': {
    visit: { place: 'clinic', whereabouts: null, callBackPhone: null, present: null },
  },
  'admin.clinicDetails.enter': { detail: 'urgent-number', value: '116 117', seen: null },
  'admin.clinicSettings.save': {
    values: { 'invitation-days': 3 },
    seen: { 'invitation-days': 7 },
    reason: 'Local rule',
  },
};

describe('whatever is written leaves a row of the audit', () => {
  it('every procedure that says it changes something and is taken has added a row when it answers', async () => {
    const taken: string[] = [];
    const silent: string[] = [];
    for (const { path } of mutations) {
      const own = path === 'clinician.prescriptions.end' ? { prescriptionId } : {};
      const ofRecord = path.startsWith('clinician.') ? { patientId: setting.patientId, ...own } : {};
      const fixed = { ...ofRecord, ...fitting[path] };
      const before = rows();
      if (!(await call(callerOf(path), path, planted(path, 'taken', fixed)))) continue;
      taken.push(path);
      if (rows() === before) silent.push(path);
    }
    expect(silent).toEqual([]);
    expect(taken.length).toBeGreaterThanOrEqual(20);
  });

  it('every file of the data layer that changes rows seals one, or stands here with its reason', () => {
    const found = codeFiles('src/data').filter((file) => {
      const code = withoutComments(file);
      const isWriting =
        /\btx\b[\s\S]{0,20}\.(insert|update|delete)\(|insertRows\(tx|client\.exec\('(INSERT|UPDATE|DELETE)/.test(
          code,
        );
      return isWriting && !/\b(appendAudit|auditWrite)\(tx\b/.test(code);
    });
    expect(found.sort()).toEqual(Object.keys(unsealed).sort());
  });

  it('only the data layer changes rows', () => {
    // The bench makes files of its own, and a made-up release is ended hard in the middle of its step.
    const others = ['src/data/', 'src/commands/team/bench/', 'src/commands/team/server-kills/'];
    const found = codeFiles('src')
      .filter((file) => !others.some((folder) => file.startsWith(folder)))
      .filter((file) =>
        /\btx\s*\.(insert|update|delete)\(|INSERT INTO |DELETE FROM /.test(withoutComments(file)),
      );
    expect(found).toEqual([]);
  });
});
