/** She owns 1, 2 and 3 kg: a set first, then a step far over 10 % that says so, then nothing is left to step. */
import { body, measures, plans, prescribes, pressure, screens, setsBaseline, signs, tells } from '../acts.ts';
import { atHome } from '../home.ts';
import { on, type Story, week, weekly } from '../story.ts';

export const beyondHerDumbbells: Story = {
  id: 'beyond-her-dumbbells',
  email: 'patient-8@demo.invalid',
  shows:
    'Dumbbells of 1, 2 and 3 kg: repetitions, a set, a named step of 50 %, then nothing heavier at home.',
  person: { givenName: 'Philippa', familyName: 'Norregate', birthDay: '1996-07-11', phone: '020 913 0158' },
  profile: {
    diagnosis: 'Elbow osteoarthritis after a fracture, right',
    inflammatoryArthritis: false,
    followedJoints: ['right-elbow'],
    ownedLoadsKg: [1, 2, 3],
    ownedEquipment: atHome('hand weight'),
    formulaSex: 'female',
  },
  days: 56,
  visits: [
    on(
      0,
      screens(),
      measures(...body(62, 166), pressure(112, 70)),
      prescribes('curl', {
        method: 'low-load',
        exerciseId: 'curl-seated',
        side: 'right',
        knownOneRepMaxKg: 6.5,
        percent: 32,
        repetitionsLow: 15,
        repetitionsHigh: 17,
        sessionsPerWeek: 3,
      }),
      setsBaseline('right-elbow', 2, 5, 'As told at intake; to be set again from two weeks of mornings.'),
      plans({ curl: 'Mon Wed Fri' }),
    ),
    on(14, setsBaseline('right-elbow', 2, 5, 'Fourteen mornings, 1 to 2.')),
    ...weekly(17, 31, signs),
    on(
      35,
      signs,
      tells('You have outgrown your dumbbells. Bring them on your next visit; we look for another way.'),
    ),
    on(43, {
      does: 'override',
      joint: 'right-elbow',
      decision: 'hold',
      reason: 'Nothing heavier at home; she stays here until her next visit.',
      days: 28,
    }),
  ],
  weeks: [
    week(0, '. 2 1 2 2 1 2', 5, 'Mon 2 3 2, Wed 1 3 2, Fri 2 3 2'),
    week(7, '2 2 1 2 2 2 1', 5, 'Mon 2 3 2, Wed 1 3 2, Fri 2 3 2'),
    week(14, '2 2 2 1 2 2 1', 5, 'Mon 2 3 2, Wed 2 3 2, Fri 2 3 2'),
    week(21, '2 2 1 2 2 1 2', 5, 'Mon 2 3 2, Wed 1 3 2, Fri 2 3 2'),
    week(28, '2 1 2 2 1 2 2', 5, 'Mon 2 3 2, Wed 2 3 2, Fri 1 3 2'),
    week(35, '2 2 2 1 2 2 1', 5, 'Mon 2 4 2, Wed 2 3 2, Fri 2 3 2'),
    week(42, '2 1 2 2 2 1 2', 5, 'Mon 2 3 2, Wed 2 3 2, Fri 2 3 2'),
    week(49, '2 2 1 2 1 2 2', 5, 'Mon 2 3 2, Wed 1 3 2, Fri 1 3 2'),
    week(56, '2', 5, ''),
  ],
  remarks: [],
  expected: [
    {
      day: 15,
      joint: 'right-elbow',
      decision: 'progress',
      why: 'Repetitions first.',
      waits: { curl: '3 × 17–17, 2 kg' },
    },
    {
      day: 22,
      joint: 'right-elbow',
      decision: 'progress',
      why: '3 kg would be half as much again: a fourth set first.',
      waits: { curl: '4 × 17–17, 2 kg' },
    },
    {
      day: 29,
      joint: 'right-elbow',
      decision: 'progress',
      why: 'Sets are used up: 3 kg, 50 % more and named as that, repetitions from the foot of the band.',
      waits: { curl: '4 × 15–17, 3 kg' },
    },
    {
      day: 43,
      joint: 'right-elbow',
      decision: 'progress',
      why: 'The joint would take more and she owns nothing heavier: the same again.',
      inForce: { curl: '4 × 17–17, 3 kg' },
      waits: { curl: null },
    },
    { day: 56, joint: 'right-elbow', decision: 'progress', why: 'Unchanged: nothing left to step at home.' },
  ],
  disagreements: [],
};
