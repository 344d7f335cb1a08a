/** One person of a group hour as the server answers, for tests of the page. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { GroupPerson } from '#ui/clinician/answers.ts';

export const dose: LowLoadDose = {
  method: 'low-load',
  exerciseId: 'knee-extension-seated',
  side: 'right',
  sets: 3,
  repetitions: { low: 15, high: 20 },
  reserve: 2,
  restSeconds: 90,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  loadKg: 4,
  oneRepMaxKg: 12,
};

export const exercise: GroupPerson['today']['exercises'][number] = {
  prescriptionId: 'rx1',
  itemId: 'line1',
  joints: ['right-knee'],
  dose,
  badDay: { ...dose, sets: 2, repetitions: { low: 10, high: 12 } },
  today: 'as-planned',
  signedName: 'Ada Verrin',
  isDoable: true,
  isPlanned: true,
  reasons: [],
  cautions: [
    { id: 'c1', text: 'Stop for chest pain.', isLimit: false },
    { id: 'c2', text: 'No more than 4 kg on the right knee.', isLimit: true },
  ],
};

export const today: GroupPerson['today'] = {
  day: '2026-03-02',
  zone: 'Europe/Lisbon',
  emergencyNumber: '112',
  stop: null,
  joints: ['right-knee'],
  painLookups: [
    {
      joint: 'right-knee',
      byPain: [
        ...Array<'as-planned'>(5).fill('as-planned'),
        'bad-day',
        'bad-day',
        ...Array<'none'>(4).fill('none'),
      ],
      whenUnknown: 'bad-day',
      acceptablePainLimit: 5,
    },
  ],
  isShortSigns: true,
  hasCuff: false,
  asksPregnancy: false,
  asksTwoHours: false,
  isSentToday: false,
  told: ['Do the same again.'],
  decided: [],
  exercises: [exercise],
};

export const person = (over: Partial<GroupPerson> = {}): GroupPerson => ({
  patientId: 'p1',
  name: 'Odo Tessaly',
  entryId: 'group-1',
  today,
  session: null,
  earlierSessions: [],
  typed: null,
  ...over,
});

export const none = { signs: 'none', 'signs-form': 'short', began: '1000' };
export const usual = { usual: 'yes', relief: 'no', news: 'none', 'other-joint': 'no' };
export const before = { ...none, ...usual, 'before:right-knee': '2' };
export const after = {
  'during:right-knee': '3',
  'after:right-knee': '2',
  right: 'yes',
  extra: 'no',
  'gave-way:right-knee': 'no',
  'signs-after': 'none',
  'signs-after-form': 'short',
};
