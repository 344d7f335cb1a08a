/** An episode of care that has ended, put together by hand. `reason` and `signedName` are what somebody typed. */
import type { DocumentFacts } from '#core/episode/documents/document-facts.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';
import { kneeCaution } from './letter-papers.ts';

export const careFacts = (reason: string, signedName = 'Signer One'): DocumentFacts => {
  const version = {
    dose: lowLoadDose,
    badDay: { ...lowLoadDose, sets: 2 },
    joints: ['right-knee'] as const,
    cautions: [kneeCaution],
    signedOn: '2026-03-02',
    signedName,
    endedOn: '2026-04-30',
  };
  return {
    clinic: {
      name: 'Ward Street Clinic',
      phone: '020 913 0140',
      emergencyNumber: '112',
      urgentNumber: '116 117',
      monitoringHours: [{ days: ['Mon', 'Tue'], from: '09:00', to: '17:00' }],
    },
    patient: { name: 'Maeve Tarrowby', birthDay: '1958-08-14' },
    episode: {
      id: 'e',
      diagnoses: ['Knee osteoarthritis, right'],
      joints: ['right-knee'],
      followedJoints: ['right-knee'],
      goals: ['Carry my shopping'],
      referrer: null,
      contacts: [],
      changes: [],
    },
    from: '2026-03-02',
    end: { on: '2026-04-30', state: 'discharged', reason, by: 'Closer' },
    careGoesOn: false,
    lines: [{ itemId: 'l', first: version, last: version, atEnd: true, suspended: null }],
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
};
