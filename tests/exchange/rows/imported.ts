/** Rows that came from files of other systems: one of each kind, and a file that was taken back. */
import { day, own } from './begin.ts';

const batch = (id: string, format: 'csv' | 'fhir') => ({
  ...own(id),
  ...{ format, source: `${id}.${format}`, fileDigest: `digest-${id}`, how: {}, rows: 1, leftOut: 0 },
});

const row = (id: string, kind: string, value: object, batchId = 'batch-1') => ({
  ...{ id, batchId, place: 2, kind, day, value },
});

export const imported = {
  import_batch: [batch('batch-1', 'csv'), batch('batch-2', 'fhir')],
  imported_row: [
    row('i-weight', 'measurement', { what: 'body-mass', massKg: 72.5 }),
    row('i-height', 'measurement', { what: 'stature', statureCm: 175 }),
    row('i-bp', 'measurement', { what: 'blood-pressure', systolicMmhg: 128, diastolicMmhg: 79 }),
    row('i-pain', 'measurement', { what: 'pain', pain: 0, place: null }),
    row('i-grip-l', 'measurement', { what: 'grip', side: 'left', forceKg: 28.5 }),
    row('i-grip-r', 'measurement', { what: 'grip', side: 'right', forceKg: 31 }),
    row('i-morning', 'morning', { joint: 'right-knee', pain: 3, stiffnessMinutes: 20, fatigue: null }),
    row('i-stiff', 'morning', { joint: 'left-knee', pain: null, stiffnessMinutes: 5, fatigue: 2 }),
    row('i-session', 'session', {
      ...{ exercise: 'Squat, "deep"', joint: 'right-knee', sets: 3, repetitions: 12, loadKg: 7.5 },
      ...{ painBefore: 1, painDuring: 2, painAfter: 0 },
    }),
    row('i-session-bare', 'session', {
      ...{ exercise: '=Bike', joint: null, sets: null, repetitions: null, loadKg: null },
      ...{ painBefore: null, painDuring: null, painAfter: 4 },
    }),
    { ...row('i-condition', 'condition', { text: 'Knee osteoarthritis' }), day: '2019-05-04' },
    row('i-back', 'measurement', { what: 'body-mass', massKg: 300 }, 'batch-2'),
    { ...row('i-back-condition', 'condition', { text: 'Gout' }, 'batch-2'), day: null },
  ],
  import_undo: [{ ...own('undo-1'), batchId: 'batch-2', reason: 'Somebody else' }],
};
