/** Kidney disease told in the screening: nutrition refers, occlusion waits, the hip goes on with pre-approved steps. */
import {
  asksAtHome,
  body,
  consentGiven,
  measures,
  plans,
  prescribes,
  pressure,
  screens,
  setsBaseline,
  toFailure,
  toldBaseline,
} from '../acts.ts';
import { atHome, loads } from '../home.ts';
import { on, type Story, week } from '../story.ts';

export const kidneyLock: Story = {
  id: 'kidney-lock',
  email: 'patient-7@demo.invalid',
  shows:
    'Kidney disease locks every nutrition target and refers; the exercise goes on, three steps approved ahead.',
  person: { givenName: 'Anselm', familyName: 'Thistlewood', birthDay: '1963-10-17', phone: '020 913 0157' },
  profile: {
    diagnosis: 'Hip osteoarthritis, right; kidney disease',
    inflammatoryArthritis: false,
    followedJoints: ['right-hip'],
    ownedLoadsKg: loads(0.5, 4, 0.5),
    ownedEquipment: atHome('ankle weight'),
    formulaSex: 'male',
  },
  days: 42,
  visits: [
    on(
      0,
      consentGiven('treatment', 'record-keeping', 'remote-monitoring'),
      screens({ 'kidney-disease': { answer: 'yes' } }),
      measures(...body(84, 176), pressure(126, 78), toFailure('side-lying-hip-abduction', 'right', 4, 12)),
      prescribes('hip', {
        method: 'low-load',
        exerciseId: 'side-lying-hip-abduction',
        side: 'right',
        sessionsPerWeek: 2,
      }),
      toldBaseline('right-hip', 2, 20),
      plans({ hip: 'Tue Fri' }),
    ),
    on(14, setsBaseline('right-hip', 2, 20, 'Fourteen mornings, 1 to 2.'), asksAtHome('own-questions', 21)),
    on(21, { does: 'pre-approve', item: 'hip', steps: 3, days: 28 }),
    on(35, measures(pressure(124, 80))),
  ],
  weeks: [
    week(0, '. 2 2 1 2 2 2', 20, 'Tue 2 3 2, Fri 2 3 2'),
    week(7, '2 2 1 2 2 1 2', 20, 'Tue 2 3 2, Fri 2 3 3'),
    week(14, '2 1 2 2 2 2 1', 20, 'Tue 1 3 2, Fri 2 3 2'),
    week(21, '2 2 2 1 2 2 2', 20, 'Tue 2 3 2, Fri 2 3 2'),
    // The session of Friday is left out for a hospital appointment.
    week(28, '2 2 1 2 2 2 1', 20, 'Tue 2 3 2'),
    week(35, '2 2 2 1 2 3 2', 20, 'Tue 2 3 2, Fri 2 3 3'),
    week(42, '2', 20, ''),
  ],
  remarks: [],
  atHome: [
    { day: 15, given: [4, true, null] },
    { day: 36, given: [6, true, 'Walking to the pier and back'] },
  ],
  expected: [
    { day: 16, joint: 'right-hip', decision: 'progress', why: 'Quiet and done as asked.' },
    {
      day: 23,
      joint: 'right-hip',
      decision: 'progress',
      why: 'Inside what was approved ahead: a second step in the week acts by itself.',
      inForce: { hip: '3 × 23–25, 2 kg' },
    },
    {
      day: 24,
      joint: 'right-hip',
      decision: 'progress',
      why: 'No session since: nothing new to step on.',
      inForce: { hip: '3 × 23–25, 2 kg' },
    },
    { day: 30, joint: 'right-hip', decision: 'progress', why: 'Quiet; further steps one session at a time.' },
    {
      day: 38,
      joint: 'right-hip',
      decision: 'progress',
      why: 'The third step approved ahead: a set more, which would otherwise wait for a signature.',
      inForce: { hip: '4 × 25–25, 2 kg' },
    },
    { day: 41, joint: 'right-hip', decision: 'hold', why: 'A point over usual after Friday’s session.' },
    { day: 42, joint: 'right-hip', decision: 'hold', why: 'No session since.' },
  ],
  disagreements: [],
};
