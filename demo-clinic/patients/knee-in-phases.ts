/** Ten days after a new knee: the surgeon’s phases bind what is done, and the next opens when somebody has looked. */
import {
  beginsProtocol,
  body,
  confirmsPhase,
  consentGiven,
  measures,
  plans,
  prescribes,
  pressure,
  screens,
  setsBaseline,
  tells,
  toldBaseline,
  writes,
  writesPhase,
} from '../acts.ts';
import { atHome, loads } from '../home.ts';
import { on, type Story, week } from '../story.ts';

const standingUp = {
  method: 'variation',
  exerciseId: 'sit-to-stand-high-seat',
  side: 'both',
  repetitionsLow: 8,
  repetitionsHigh: 12,
  sessionsPerWeek: 3,
} as const;

export const kneeInPhases: Story = {
  id: 'knee-in-phases',
  email: 'patient-11@demo.invalid',
  shows:
    'Phases after a new knee: partial weight-bearing closes standing up, a limit of 2 kg bounds the load; four weeks later a clinician confirms the next phase.',
  person: { givenName: 'Thaddea', familyName: 'Wrenfield', birthDay: '1957-05-23', phone: '020 913 0161' },
  profile: {
    diagnosis: 'Knee replacement, right',
    inflammatoryArthritis: false,
    followedJoints: ['right-knee'],
    ownedLoadsKg: loads(1, 4, 0.5),
    ownedEquipment: atHome('ankle weight', 'high firm seat'),
    formulaSex: 'female',
  },
  days: 42,
  visits: [
    on(
      0,
      consentGiven('treatment', 'record-keeping', 'remote-monitoring'),
      screens({
        'operation-plaster-or-bed': { answer: 'yes' },
        'artificial-joint-or-metalwork': { answer: 'yes', limbs: [{ limb: 'leg', side: 'right' }] },
      }),
      measures(...body(74, 165), pressure(126, 78)),
      beginsProtocol('knee', {
        joint: 'right-knee',
        procedure: 'Knee replacement',
        daysAgo: 10,
        author: 'Mr Hollis Quentrell, surgeon',
        letter:
          'Partial weight-bearing of 30 kg and bending to 90 degrees for the first six weeks, then as tolerated. No cuff on this leg before I have seen her again.',
      }),
      writesPhase('knee', {
        place: 1,
        name: 'Protected',
        inDays: 0,
        weightBearing: 'partial',
        bearKg: 30,
        flexionToDegrees: 90,
        limitKg: 2,
      }),
      writesPhase('knee', {
        place: 2,
        name: 'Building',
        inDays: 28,
        weightBearing: 'as-tolerated',
        bearKg: null,
        flexionToDegrees: 110,
        limitKg: 4,
      }),
      writesPhase('knee', {
        place: 3,
        name: 'Free, without a cuff',
        inDays: 63,
        weightBearing: 'full',
        bearKg: null,
        flexionToDegrees: null,
        limitKg: null,
      }),
      { does: 'try', request: standingUp, refusedFor: 'Only partial weight-bearing to 30 kg is allowed' },
      prescribes('knee', {
        method: 'low-load',
        exerciseId: 'knee-extension-seated',
        side: 'right',
        knownOneRepMaxKg: 9,
        repetitionsLow: 15,
        repetitionsHigh: 30,
        sessionsPerWeek: 3,
      }),
      toldBaseline('right-knee', 3, 20),
      plans({ knee: 'Mon Wed Fri' }),
      tells('Keep to what your surgeon said about weight on the leg. It stands with your exercise.'),
    ),
    on(14, setsBaseline('right-knee', 3, 20, 'Fourteen mornings, 2 to 3.')),
    on(
      28,
      confirmsPhase('knee', 2, 'Walks without a stick indoors, wound closed, bends to 95 degrees.'),
      prescribes('chair', standingUp),
      plans({ knee: 'Mon Wed Fri', chair: 'Mon Wed Fri' }),
      writes('clinic', {
        objective: 'Knee bends to 95 degrees, cool, no effusion.',
        plan: 'Standing up from the high seat from today; the cuff stays closed.',
      }),
    ),
  ],
  weeks: [
    week(0, '. 3 3 2 3 3 3', 20, 'Mon 3 4 3, Wed 3 4 3, Fri 3 4 3'),
    week(7, '3 3 2 3 3 2 3', 20, 'Mon 3 4 3, Wed 3 4 3, Fri 2 3 3'),
    week(14, '3 2 3 3 2 3 2', 20, 'Mon 3 4 3, Wed 2 3 3, Fri 2 3 2'),
    week(21, '2 3 2 2 3 2 2', 15, 'Mon 2 3 2, Wed 2 3 2, Fri 2 3 2'),
    week(28, '2 3 2 2 2 3 2', 15, 'Mon 2 3 3, Wed 2 3 2, Fri 2 3 2'),
    week(35, '2 2 2 2 2 2 2', 15, 'Mon 2 3 2, Wed 2 3 2, Fri 2 3 2'),
    week(42, '2', 15, ''),
  ],
  remarks: [],
  expected: [
    {
      day: 6,
      joint: 'right-knee',
      decision: 'progress',
      why: 'Quiet; the load is what the surgeon allows and no more.',
      inForce: { knee: '3 × 15–30, 2 kg' },
    },
    {
      day: 29,
      joint: 'right-knee',
      decision: 'progress',
      why: 'The second phase was confirmed: standing up is open, at its first dose.',
      inForce: { chair: '3 × 8–12' },
    },
  ],
  disagreements: [],
};
