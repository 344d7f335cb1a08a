/** A six-day flare eases the dose once, the way back is half-way, and later weeks hold without easing. */
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
import { flareThenHoldLetter } from '../letter-facts.ts';
import { morningOf, morningsOf, on, type Story, week } from '../story.ts';

export const flareThenHold: Story = {
  id: 'flare-then-hold',
  email: 'patient-2@demo.invalid',
  shows:
    'A flare of six days: one cut and no second, the easier session, a return half-way, then weeks that hold.',
  person: { givenName: 'Desmond', familyName: 'Aklavi', birthDay: '1967-11-30', phone: '020 913 0152' },
  profile: {
    diagnosis: 'Knee osteoarthritis, left',
    inflammatoryArthritis: false,
    followedJoints: ['left-knee'],
    ownedLoadsKg: loads(2, 8, 0.5),
    ownedEquipment: atHome('ankle weight'),
    formulaSex: 'male',
  },
  days: 91,
  visits: [
    on(
      0,
      consentGiven('treatment', 'record-keeping', 'remote-monitoring'),
      screens(),
      measures(...body(88, 179), pressure(132, 80), toFailure('knee-extension-seated', 'left', 9, 13)),
      prescribes('knee', {
        method: 'low-load',
        exerciseId: 'knee-extension-seated',
        side: 'left',
        sessionsPerWeek: 3,
      }),
      toldBaseline('left-knee', 3, 25),
      plans({ knee: 'Mon Wed Fri' }),
    ),
    on(14, setsBaseline('left-knee', 3, 25, 'Fourteen mornings, 2 to 3.')),
    on(
      39,
      { does: 'accept', joint: 'left-knee', reason: 'Rang him: an ordinary flare, nothing else found.' },
      writes('telephone', {
        subjective: 'Knee sore since Wednesday night after moving paving slabs. Walks, slept badly once.',
        assessment: 'Ordinary flare. Not hot, no fever, no injury told.',
        plan: 'Easier session until it has settled. Ring again on Monday.',
      }),
      tells(
        'A flare is no fault of yours. Do the easier session until the knee has settled; we are watching it.',
      ),
    ),
    on(56, signs),
    on(57, setsBaseline('left-knee', 3, 25, 'Back to the mornings of before the flare.')),
    on(63, signs),
    on(
      77,
      screens(),
      measures(pressure(130, 82)),
      writes('clinic', {
        subjective: 'Stairs manageable with one hand on the rail. Would like to garden for an hour.',
        objective: 'Knee cool, no effusion. Full extension, bends to 125 degrees as before.',
        assessment: 'Tolerates the dose; a point over usual the morning after.',
        plan: 'Stay at this dose and look again in two weeks.',
      }),
    ),
  ],
  weeks: [
    week(0, '. 3 3 2 3 3 3', 25, 'Mon 3 4 3, Wed 3 4 3, Fri 3 4 3'),
    week(7, '3 3 2 3 3 2 3', 25, 'Mon 3 4 3, Wed 3 4 3, Fri 3 3 3'),
    week(14, '3 3 3 2 3 3 2', 25, 'Mon 3 4 3, Wed 3 4 3, Fri 2 4 3'),
    week(21, '3 2 3 3 2 3 3', 25, 'Mon 3 4 3, Wed 3 4 3, Fri 2 4 3'),
    week(28, '3 3 2 3 3 2 3', 25, 'Mon 3 4 3, Wed 2 4 3, Fri 3 4 3'),
    // The knee flares overnight to Thursday.
    week(35, '3 3 3 7 7 6 6', 25, 'Mon 3 4 3, Wed 3 4 4, Fri 6 6 6 easier'),
    week(42, '5 4 3 3 3 3 3', 25, 'Mon 5 5 5 easier, Wed 3 4 3, Fri 3 4 3'),
    week(49, '3 3 3 2 3 3 2', 25, 'Mon 3 4 3, Wed 3 4 3, Fri 3 4 3'),
    week(56, '3 2 3 3 3 2 3', 25, 'Mon 3 4 3, Wed 3 4 3, Fri 3 3 3'),
    week(63, '3 3 2 3 3 3 2', 25, 'Mon 3 4 3, Wed 2 4 3, Fri 3 4 3'),
    // From here on every session leaves the knee a point over usual the morning after.
    week(70, '3 4 3 4 3 4 3', 25, 'Mon 3 4 4, Wed 3 4 4, Fri 3 4 4'),
    week(77, '3 4 3 4 3 4 3', 30, 'Mon 3 4 4, Wed 3 4 4, Fri 3 4 4'),
    week(84, '3 4 3 4 3 4 3', 30, 'Mon 3 4 4, Wed 3 4 4, Fri 3 4 4'),
    week(91, '3', 30, ''),
  ],
  remarks: [
    ...morningsOf(38, 41, { flare: true, stiffness: 45, swelling: 'slight' }),
    ...morningsOf(42, 43, { flare: true, stiffness: 40 }),
    morningOf(44, { stiffness: 30 }),
  ],
  expected: [
    { day: 36, joint: 'left-knee', decision: 'progress', why: 'Quiet weeks up to here.' },
    {
      day: 38,
      joint: 'left-knee',
      decision: 'ease-back',
      why: 'Flare: 7 of 10 the morning after, twice its usual pain, swelling a little. One step back.',
      inForce: { knee: '3 × 23–25, 4.5 kg' },
    },
    {
      day: 40,
      joint: 'left-knee',
      decision: 'ease-back',
      why: 'Still the same flare: the easier session again, and no second cut.',
      inForce: { knee: '3 × 23–25, 4.5 kg' },
    },
    { day: 43, joint: 'left-knee', decision: 'ease-back', why: 'Sixth day of the flare, on the way down.' },
    {
      day: 45,
      joint: 'left-knee',
      decision: 'hold',
      why: 'The flare is over, but the mean of the week is still well over usual.',
    },
    {
      day: 47,
      joint: 'left-knee',
      decision: 'progress',
      why: 'A quiet session and morning: back half-way to the dose of before, for the clinician to sign.',
      waits: { knee: '3 × 24–25, 4.5 kg' },
    },
    {
      day: 50,
      joint: 'left-knee',
      decision: 'progress',
      why: 'A week of mornings at usual: half-way back, for the clinician to sign.',
      inForce: { knee: '3 × 23–25, 4.5 kg' },
      waits: { knee: '3 × 24–25, 4.5 kg' },
    },
    { day: 71, joint: 'left-knee', decision: 'hold', why: 'A point over usual the morning after.' },
    { day: 91, joint: 'left-knee', decision: 'hold', why: 'Three weeks of this: stay, and talk about it.' },
  ],
  letter: flareThenHoldLetter,
  disagreements: [
    {
      day: 47,
      on: 'decision',
      of: 'left-knee',
      expected: 'progress',
      product: 'hold',
      why: 'The flare set off the sum chart of the mornings (X1), which holds until a week of mornings lies at usual; a physiotherapist would go half-way back three days sooner.',
    },
    {
      day: 47,
      on: 'waits',
      of: 'knee',
      expected: '3 × 24–25, 4.5 kg',
      product: null,
      why: 'Nothing is proposed while the chart holds.',
    },
  ],
};
