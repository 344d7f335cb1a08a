/** Diagnosed high blood pressure keeps occlusion closed although the reading is in range; low load instead. */
import {
  body,
  consentGiven,
  measures,
  plans,
  prescribes,
  pressure,
  screens,
  setsBaseline,
  tells,
  toFailure,
  toldBaseline,
} from '../acts.ts';
import { atHome, loads } from '../home.ts';
import { on, type Story, week } from '../story.ts';

export const occlusionNotCleared: Story = {
  id: 'occlusion-not-cleared',
  email: 'patient-5@demo.invalid',
  shows:
    'Treated high blood pressure, in range, keeps occlusion closed; low load goes on; one hard session eases it.',
  person: {
    givenName: 'Bartholomew',
    familyName: 'Quillane',
    birthDay: '1952-09-21',
    phone: '020 913 0155',
  },
  profile: {
    diagnosis: 'Knee osteoarthritis, right; high blood pressure, treated',
    inflammatoryArthritis: false,
    followedJoints: ['right-knee'],
    ownedLoadsKg: loads(1, 6, 0.5),
    ownedEquipment: atHome('ankle weight'),
    formulaSex: 'male',
  },
  days: 28,
  visits: [
    on(
      0,
      consentGiven('treatment', 'record-keeping', 'remote-monitoring'),
      screens({
        'high-blood-pressure': { answer: 'yes' },
        medicines: { answer: 'yes', details: ['blood-pressure-tablet'] },
      }),
      measures(...body(79, 174), pressure(136, 82), toFailure('knee-extension-seated', 'right', 7, 12)),
      {
        does: 'try',
        request: {
          method: 'occlusion',
          exerciseId: 'knee-extension-seated',
          limb: 'leg',
          side: 'right',
          schemeId: 'thirty-then-fifteens',
          cuffKind: 'elastic-wrap',
          tightness: 6,
          loadKg: 2.5,
          secondsPerRepetition: 3,
          restSeconds: 30,
          sessionsPerWeek: 2,
          supervised: true,
        },
        refusedFor: 'Diagnosed high blood pressure keeps occlusion closed',
      },
      prescribes('knee', {
        method: 'low-load',
        exerciseId: 'knee-extension-seated',
        side: 'right',
        sessionsPerWeek: 3,
      }),
      toldBaseline('right-knee', 3, 15),
      plans({ knee: 'Mon Wed Fri' }),
      tells('No cuff for now: your blood pressure is known to be high, even if it reads well today.'),
    ),
    on(14, setsBaseline('right-knee', 3, 15, 'Fourteen mornings, 2 to 3.')),
    on(27, measures(pressure(134, 80))),
  ],
  weeks: [
    week(0, '. 3 2 3 3 2 3', 15, 'Mon 3 4 3, Wed 2 4 3, Fri 3 4 3'),
    week(7, '3 2 3 3 2 3 3', 15, 'Mon 3 4 3, Wed 3 4 3, Fri 2 4 3'),
    week(14, '3 3 2 3 3 2 3', 15, 'Mon 3 4 3, Wed 2 4 3, Fri 3 4 3'),
    // Monday, first session at the larger dose: 6 of 10 under way.
    week(21, '3 3 3 2 3 3 2', 15, 'Mon 3 6 4, Wed 3 4 3, Fri 3 4 3'),
    week(28, '3', 15, ''),
  ],
  remarks: [],
  expected: [
    { day: 15, joint: 'right-knee', decision: 'progress', why: 'Quiet and done as asked.' },
    {
      day: 22,
      joint: 'right-knee',
      decision: 'ease-back',
      why: '6 of 10 under way, over what anybody accepts at home: back to the dose of before.',
      inForce: { knee: '3 × 19–25, 3.5 kg' },
    },
    { day: 24, joint: 'right-knee', decision: 'progress', why: 'Quiet again at the dose of before.' },
    {
      day: 28,
      joint: 'right-knee',
      decision: 'progress',
      why: 'Quiet; after a cut that no flare explains, more repetitions wait for the clinician again.',
      inForce: { knee: '3 × 19–25, 3.5 kg' },
      waits: { knee: '3 × 21–25, 3.5 kg' },
    },
  ],
  disagreements: [],
};
