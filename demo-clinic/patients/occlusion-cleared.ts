/** Occlusion closed at first, cleared with a reason, measured, watched twice, then done at home. */
import {
  body,
  consentGiven,
  measures,
  plans,
  prescribes,
  pressure,
  screens,
  setsBaseline,
  signs,
  tells,
  toFailure,
  toldBaseline,
  writes,
} from '../acts.ts';
import { atHome, loads } from '../home.ts';
import { occlusionClearedLetter } from '../letter-facts.ts';
import { on, type Story, type Taken, week } from '../story.ts';

const cuffed = {
  method: 'occlusion',
  exerciseId: 'knee-extension-seated',
  limb: 'leg',
  side: 'left',
  schemeId: 'thirty-then-fifteens',
  cuffKind: 'pneumatic',
  cuffWidthCm: 13,
  position: 'seated',
  percent: 60,
  knownOneRepMaxKg: 12,
  secondsPerRepetition: 3,
  restSeconds: 30,
  sessionsPerWeek: 2,
  pulseShown: true,
} as const;

const leftLeg = { limb: 'leg', side: 'left' } as const;

const occlusionPressure = (firstMmhg: number, secondMmhg: number): Taken => ({
  kind: 'limb-occlusion-pressure',
  limb: 'leg',
  side: 'left',
  cuffWidthCm: 13,
  position: 'seated',
  method: 'doppler',
  firstMmhg,
  secondMmhg,
});

export const occlusionCleared: Story = {
  id: 'occlusion-cleared',
  email: 'patient-4@demo.invalid',
  shows:
    'A clotting disorder in the family closes occlusion; cleared with a reason; two supervised sessions, then at home.',
  person: { givenName: 'Ingrid', familyName: 'Solvarre', birthDay: '1976-12-09', phone: '020 913 0154' },
  profile: {
    diagnosis: 'Knee osteoarthritis after removal of the inner meniscus, left',
    inflammatoryArthritis: false,
    followedJoints: ['left-knee'],
    ownedLoadsKg: loads(2, 6, 0.5),
    ownedEquipment: atHome('ankle weight'),
    formulaSex: 'female',
  },
  days: 56,
  visits: [
    on(
      0,
      consentGiven('treatment', 'record-keeping', 'remote-monitoring'),
      screens({ 'clotting-or-bleeding-disorder': { answer: 'yes', details: ['family'] } }),
      measures(...body(68, 170), pressure(118, 74), toFailure('knee-extension-seated', 'left', 8, 12)),
      {
        does: 'try',
        request: { ...cuffed, loadKg: 3, supervised: true },
        refusedFor: 'Clotting or bleeding disorder in the family',
      },
      prescribes('light', {
        method: 'low-load',
        exerciseId: 'knee-extension-seated',
        side: 'left',
        sessionsPerWeek: 2,
      }),
      toldBaseline('left-knee', 2, 10),
      plans({ light: 'Mon Thu' }),
    ),
    on(
      7,
      {
        does: 'clear',
        method: 'occlusion',
        limb: 'leg',
        side: 'left',
        findings: ['family-clotting-disorder'],
        reason:
          'Her own clotting was tested and is normal; letter of her physician seen, pulse at the foot felt.',
      },
      measures(occlusionPressure(182, 178), {
        kind: 'limb-circumference',
        limb: 'leg',
        side: 'left',
        site: 'mid-thigh',
        circumferenceCm: 54,
      }),
      {
        does: 'end',
        item: 'light',
        reason: 'Replaced by the same exercise with a cuff, watched at the clinic.',
      },
      consentGiven('occlusion-supervised', 'remote-monitoring'),
      prescribes('cuff', { ...cuffed, loadKg: 3, supervised: true }),
      { does: 'watch', ...leftLeg },
      plans({ cuff: 'Mon Thu' }),
    ),
    on(10, { does: 'watch', ...leftLeg }),
    on(
      14,
      { does: 'check-alone', ...leftLeg },
      consentGiven('occlusion-unsupervised'),
      setsBaseline('left-knee', 2, 10, 'Fourteen mornings, 1 to 2.'),
      prescribes('cuff', { ...cuffed, loadKg: 3, supervised: false }),
      tells('From today with the cuff at home. If the phone stops, take the cuff off.'),
    ),
    on(28, measures(pressure(120, 76)), signs),
    on(
      35,
      measures(occlusionPressure(174, 176)),
      writes('clinic', {
        text: 'Puts the cuff on and takes it off with either hand. Fingers warm, no tingling after release.',
      }),
      prescribes('cuff', { ...cuffed, loadKg: 3.5, supervised: false }),
    ),
    on(55, measures(pressure(119, 75))),
  ],
  weeks: [
    week(0, '. 2 2 1 2 2 1', 10, 'Mon 2 3 2, Thu 2 3 2'),
    week(7, '2 2 1 2 2 2 1', 10, 'Mon 2 3 2, Thu 2 3 2'),
    week(14, '2 2 1 2 2 1 2', 10, 'Mon 2 3 2, Thu 2 2 2'),
    week(21, '2 1 2 2 2 1 2', 10, 'Mon 2 3 2, Thu 2 3 2'),
    week(28, '2 2 2 1 2 2 1', 10, 'Mon 2 3 2, Thu 1 3 2'),
    week(35, '2 2 1 2 2 2 1', 10, 'Mon 2 3 2, Thu 2 3 2'),
    week(42, '2 1 2 2 1 2 2', 10, 'Mon 2 3 2, Thu 2 2 2'),
    week(49, '1 2 2 1 2 2 1', 10, 'Mon 1 3 2, Thu 1 3 2'),
    week(56, '2', 10, ''),
  ],
  remarks: [],
  expected: [
    {
      day: 8,
      joint: 'left-knee',
      decision: 'progress',
      why: 'Quiet after the first supervised session; one session is too few for more load.',
      inForce: { cuff: '30/15/15/15, 3 kg, 107 mmHg' },
      waits: { cuff: null },
    },
    {
      day: 15,
      joint: 'left-knee',
      decision: 'progress',
      why: 'Quiet, but one session at this prescription: no more load yet.',
      inForce: { cuff: '30/15/15/15, 3 kg, 107 mmHg' },
      waits: { cuff: null },
    },
    {
      day: 18,
      joint: 'left-knee',
      decision: 'progress',
      why: 'Two sessions on target at home: the next load, over 10 % and said so; the pressure stays.',
      waits: { cuff: '30/15/15/15, 3.5 kg, 107 mmHg' },
    },
    {
      day: 36,
      joint: 'left-knee',
      decision: 'progress',
      why: 'Measured anew, a little lower; quiet.',
      inForce: { cuff: '30/15/15/15, 3.5 kg, 104 mmHg' },
    },
    { day: 56, joint: 'left-knee', decision: 'progress', why: 'Quiet weeks; a step waits for a signature.' },
  ],
  letter: occlusionClearedLetter,
  disagreements: [],
};
