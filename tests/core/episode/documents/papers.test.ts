/** The letter and the sheet at the end of care repeat the record: what is missing is said, nothing is promised. */
import { describe, expect, it } from 'vitest';
import type { DocumentFacts, DocumentItem } from '#core/episode/documents/document-facts.ts';
import { adviceOf } from '#core/episode/documents/document-words.ts';
import { selfManagementOf } from '#core/episode/documents/self-management.ts';
import { dischargeIn } from '#messages/papers/discharge.ts';
import { selfManagementIn } from '#messages/papers/self-management.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';
import { cuffDose } from '#tests/ui/patient/views.ts';

const version = {
  dose: lowLoadDose,
  badDay: { ...lowLoadDose, sets: 2 },
  joints: ['right-knee'],
  cautions: [
    { id: 'c', text: 'Clinician caution.', patient: { key: 'stop-signs' }, from: 'x', support: 'clinic' },
  ],
  signedOn: '2026-03-02',
  signedName: 'Signer One',
  endedOn: '2026-04-30',
} as const;

const item: DocumentItem = {
  itemId: 'l',
  first: version,
  last: version,
  atEnd: true,
  suspended: null,
};

const facts: DocumentFacts = {
  clinic: {
    name: 'Clinic a',
    phone: '210 000 000',
    emergencyNumber: '112',
    urgentNumber: '116 117',
    monitoringHours: [{ days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], from: '09:00', to: '17:00' }],
  },
  patient: { name: 'Test Person', birthDay: '1958-06-01' },
  episode: {
    id: 'e',
    diagnoses: ['Knee osteoarthritis'],
    joints: ['right-knee'],
    followedJoints: ['right-knee'],
    goals: ['Carry my shopping'],
    referrer: null,
    contacts: [],
    changes: [],
  },
  from: '2026-03-02',
  end: { on: '2026-04-30', state: 'discharged', reason: 'Agreed at the visit', by: 'Closer' },
  careGoesOn: false,
  lines: [item],
  log: {
    careDays: 60,
    sessions: 14,
    easierSessions: 3,
    testSessions: 0,
    plannedDays: 24,
    plannedDaysWithout: 10,
    mornings: 41,
    daysWithoutMorning: 19,
  },
  decisions: [],
  limits: [],
  checks: { screening: null, measured: [], notMeasured: ['Body mass'] },
  outcomes: [],
  sides: [],
  baselines: [],
};

/** Usual values a clinician set. */
const baseline = {
  joint: 'right-knee',
  usualPain: 3,
  usualPainTop: 5,
  acceptablePainLimit: 6,
  usualStiffnessMinutes: 20,
  usualSwelling: 'none',
  usualEffusion: 'zero',
  usualFatigue: null,
  setOn: '2026-03-10',
  setBy: 'Freezer',
  dueForReview: false,
} as const;

const clinicWords = {
  title: () => 'Straighten the knee',
  dose: (dose: { sets: number }) => `${dose.sets} sets`,
};
/** The sheet as it is read in English. */
const sheetOf = (over: Partial<DocumentFacts> = {}) =>
  selfManagementIn('en', selfManagementOf({ ...facts, ...over })!);
const textOf = (document: ReturnType<typeof dischargeIn>) =>
  document.parts.flatMap(({ title, lines, advice = [] }) => [title, ...lines, ...advice]).join('\n');
const letter = (over: Partial<DocumentFacts> = {}) =>
  textOf(dischargeIn('en', { ...facts, ...over }, '2026-05-02', clinicWords));
const sheet = (over: Partial<DocumentFacts> = {}) => textOf(sheetOf(over));

describe('the letter', () => {
  it('is headed by the clinic and the person, as the sheet is', () => {
    const head = { from: ['Clinic a', 'Telephone 210 000 000'], about: 'Test Person, born 1 Jun 1958' };
    expect(dischargeIn('en', facts, '2026-05-02', clinicWords)).toMatchObject(head);
    expect(sheetOf()).toMatchObject(head);
  });

  it('gives the period, the goal in the patient’s words, who signed and who closed', () => {
    const text = letter();
    for (const part of [
      'Knee osteoarthritis',
      '“Carry my shopping”',
      'From 2 Mar 2026 to 30 Apr 2026, 60 days.',
      'signed 2 Mar 2026 by Signer One: 3 sets.',
      'Recorded by Closer.',
      'Referred by: not recorded.',
    ])
      expect(text).toContain(part);
  });

  it('shows first and last dose when a later version was signed', () => {
    const last = {
      ...version,
      dose: { ...lowLoadDose, sets: 4 },
      signedOn: '2026-04-01',
      signedName: 'Signer Two',
    };
    const text = letter({ lines: [{ ...item, last }] });
    expect(text).toContain('signed 2 Mar 2026 by Signer One: 3 sets.');
    expect(text).toContain('Last signed 1 Apr 2026 by Signer Two: 4 sets. In force when care ended.');
  });

  it('says how much was logged and how much is missing, and never counts missing as zero', () => {
    const text = letter();
    expect(text).toContain('14 sessions logged, 3 of them the easier session.');
    expect(text).toContain('24 days were planned; on 10 of them no session was logged.');
    expect(letter({ log: { ...facts.log, plannedDays: 0, plannedDaysWithout: 0 } })).toContain(
      'No day of this period was planned for a session.',
    );
    expect(text).toContain('Mornings logged on 41 days; missing on 19 of 60 days of care.');
    expect(letter({ log: { ...facts.log, plannedDays: null } })).toContain(
      'No programme named days, so missing sessions cannot be counted.',
    );
  });

  it('gives the last decision with its reason, no code of a rule, and the clinician’s answer, and says when nobody answered', () => {
    const decision = {
      joint: 'right-knee',
      decision: 'ease-back',
      day: '2026-04-20',
      reasons: [{ rule: 'P2', threshold: 'worst pain over the limit of 5' }],
      answer: null,
    } as const;
    expect(letter({ decisions: [decision] })).toContain(
      'right knee, 20 Apr 2026: ease back; worst pain over the limit of 5. No clinician answered it.',
    );
    const answer = { kind: 'override', decision: 'hold', reason: 'Seen', by: 'Closer' } as const;
    expect(letter({ decisions: [{ ...decision, answer }] })).toContain(
      'Closer overrode it with “hold”: Seen.',
    );
  });

  it('says what was not checked, and that an expired limit was never lifted', () => {
    const limit = {
      joint: 'right-knee',
      kind: 'load-limit',
      limitKg: 3,
      from: '2026-03-02',
      to: '2026-04-01',
      author: 'Dr Surgeon',
      isExpired: true,
    } as const;
    const text = letter({ limits: [limit] });
    expect(text).toContain('No screening is on record.');
    expect(text).toContain('Never measured: Body mass.');
    expect(text).toContain(
      'load limited to 3 kg, from 2 Mar 2026 to 1 Apr 2026. Set by Dr Surgeon. Its last day has passed and nobody has lifted it.',
    );
  });

  it('says that care goes on where no end is recorded, and how long it has gone on today', () => {
    const text = letter({ end: null, careGoesOn: true });
    expect(text).toContain('From 2 Mar 2026 to 2 May 2026, 62 days.');
    expect(text).toContain('Care goes on: no end of it is recorded.');
    expect(text).toContain('In force today.');
    const rests = letter({ end: null, lines: [{ ...item, suspended: 'joint-rests' }] });
    expect(rests).toContain('In force today. It rests.');
    expect(text).not.toContain('when care ended');
  });

  it('defers to the licensed clinician and local rules', () => {
    expect(letter()).toContain('for the licensed clinician, under local rules');
  });
});

describe('the sheet for the patient', () => {
  it('shows what was in force with its easier session, and nothing that had ended before', () => {
    expect(sheet()).toContain(
      '\n3 sets of 15 to 25 repetitions; with 4 kg; right side; 90 seconds rest between sets.\n3 times a week.\nThe easier session, for a bad day: 2 sets of 15 to 25 repetitions; with 4 kg;',
    );
    expect(sheet()).toContain('Straighten the knee, sitting');
    expect(sheet({ lines: [{ ...item, atEnd: false }] })).not.toContain('Straighten the knee');
  });

  it.each(['everything-rests', 'joint-rests'] as const)(
    'gives no dose of what rested at the end: %s',
    (suspended) => {
      const text = sheet({ lines: [{ ...item, suspended }] });
      expect(text).not.toContain('sets');
      expect(text).toContain('Do not do this before you have rung the clinic.');
    },
  );

  it('leaves out the full dose where only the easier session stood', () => {
    const text = sheet({ lines: [{ ...item, suspended: 'easier-only' }] });
    expect(text).not.toContain('3 sets');
    expect(text).toContain('2 sets');
  });

  it('never hands out work with a cuff or wrap', () => {
    const dose = {
      ...lowLoadDose,
      method: 'occlusion',
      side: 'right',
      limb: 'leg',
      scheme: [30, 15, 15],
      cuff: { kind: 'elastic-wrap', tightness: 5 },
      inflation: 'continuous',
      capSeconds: 300,
      supervised: false,
    } as const;
    const text = sheet({ lines: [{ ...item, last: { ...version, dose, badDay: dose } }] });
    expect(text).not.toContain('3 sets');
    expect(text).toContain('Do not use the cuff or wrap before you have asked a clinician.');
  });

  it('reads the joint by the values a clinician set, and says so when there are none', () => {
    const text = sheet({ baselines: [baseline] });
    expect(text).toContain('Your usual pain, 0 to 10: 3, up to 5.');
    expect(text).toContain('Your own limit for pain, 0 to 10: 6.');
    expect(text).toContain('Set by Freezer on 10 Mar 2026.');
    const lowered = sheet({ baselines: [{ ...baseline, tightenedFrom: '2026-02-10' }] });
    expect(lowered).toContain('Lowered on 10 Mar 2026, because your mornings had become better.');
    expect(lowered).not.toContain('Set by');
    expect(sheet()).toContain(
      'No usual values were set for it.\nAsk the clinic how to read it: 210 000 000.',
    );
  });

  it('keeps what no record says apart, as advice for a clinician to read first', () => {
    const document = sheetOf({ lines: [{ ...item, suspended: 'joint-rests' }] });
    expect(adviceOf(document)).toEqual([
      'Do not do this before you have rung the clinic.',
      'Ask the clinic how to read it: 210 000 000.',
      'If nobody answers there, do not wait: ring 116 117.',
    ]);
    const withoutNumber = { ...facts.clinic, urgentNumber: null };
    expect(sheet({ clinic: withoutNumber })).toContain('If nobody answers there, do not wait: ring 112.');
    const recorded = document.parts.flatMap(({ lines }) => lines).join('\n');
    expect(recorded).not.toMatch(/\b(do not|ring|ask the clinic)\b/i);
    expect(adviceOf(dischargeIn('en', facts, '2026-05-02', clinicWords))).toEqual([]);
  });

  it('gives advice for pain over the limit and a worse morning where values were set', () => {
    const text = adviceOf(sheetOf({ baselines: [baseline] })).join('\n');
    expect(text).toContain('If pain goes over your limit, stop. Ring the clinic');
    expect(text).toContain('do not do more than before');
  });

  it('names the sign after a cuff only where a cuff was in force at the end', () => {
    const sign = 'Ten minutes after the cuff came off';
    const cuff = { ...item, last: { ...item.last, dose: cuffDose } };
    expect(sheet()).not.toContain(sign);
    expect(sheet({ lines: [cuff] })).toContain(sign);
    expect(sheet({ lines: [{ ...cuff, atEnd: false }] })).not.toContain(sign);
  });

  it('speaks of today where care goes on, and of no end', () => {
    const text = sheet({ end: null, careGoesOn: true, lines: [{ ...item, suspended: 'easier-only' }] });
    expect(text).toContain('Your care goes on; no end of it is recorded.');
    expect(text).toContain('Only the easier session is planned for this now.');
    expect(text).toContain('reads what you send at these times');
    expect(text).not.toMatch(/when your care ended|last day of care/i);
    const cuff = { ...item, last: { ...item.last, dose: cuffDose } };
    const withCuff = sheet({ end: null, careGoesOn: true, lines: [cuff] });
    expect(withCuff).toContain('You have no exercise to do without the cuff.');
    expect(withCuff).toContain('Once your care has ended, do not use the cuff');
  });

  it('names emergency signs under the emergency number, and that nobody reads what is sent any more', () => {
    expect(sheet()).toContain('Stop and ring 112 at once\nPain or pressure in the chest.');
    expect(sheet()).toContain('Nobody reads what you send any more');
    expect(sheet({ careGoesOn: true })).toContain(
      'reads what you send at these times: Monday to Friday, 9:00 to 17:00.',
    );
  });
});

it('neither paper promises anything', () => {
  expect(`${letter()}\n${sheet()}`).not.toMatch(/\bsafe|\bimproved|\bcured|\beffective\b|\bguarantee/i);
});
