/** Answers go missing, sessions are left out, then nothing comes: unknown never moves the dose on. */
import {
  body,
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

export const missedAnswers: Story = {
  id: 'missed-answers',
  email: 'patient-3@demo.invalid',
  shows: 'A morning not answered, scores not given, sessions left out, then silence: each holds the dose.',
  person: { givenName: 'Chidi', familyName: 'Varrenholt', birthDay: '1984-05-02', phone: '020 913 0153' },
  profile: {
    diagnosis: 'Shoulder osteoarthritis after a dislocation, right',
    inflammatoryArthritis: false,
    followedJoints: ['right-shoulder'],
    ownedLoadsKg: loads(1, 5, 0.5),
    ownedEquipment: atHome('hand weight'),
    formulaSex: 'male',
  },
  days: 42,
  visits: [
    on(
      0,
      screens(),
      measures(...body(83, 181), pressure(122, 74), toFailure('side-arm-raise-straight', 'right', 4, 14)),
      prescribes('arm', {
        method: 'low-load',
        exerciseId: 'side-arm-raise-straight',
        side: 'right',
        sessionsPerWeek: 3,
      }),
      toldBaseline('right-shoulder', 2, 5),
      plans({ arm: 'Mon Wed Fri' }),
    ),
    on(14, setsBaseline('right-shoulder', 2, 5, 'Thirteen mornings, 1 to 2.')),
  ],
  weeks: [
    week(0, '. 2 2 1 2 2 1', 5, 'Mon 2 3 2, Wed 2 3 2, Fri 2 2 2'),
    week(7, '2 2 1 2 . 2 1', 5, 'Mon 2 3 2, Wed 1 3 2, Fri 2 3 2'),
    week(14, '2 2 1 2 2 1 2', 5, 'Mon 2 3 2, Wed 1 3 2, Fri 2 3 2'),
    // Thursday's morning is not answered; on Friday the scores are left open.
    week(21, '2 2 1 . 2 2 1', 5, 'Mon 2 3 2, Wed 1 3 2, Fri ? ? 2'),
    week(28, '2 2 . 2 . . 1', 5, 'Mon 2 3 2'),
    week(35, '2 2 1', 5, 'Mon 2 3 2'),
  ],
  remarks: [],
  expected: [
    { day: 15, joint: 'right-shoulder', decision: 'progress', why: 'Two weeks answered, all as usual.' },
    { day: 24, joint: 'right-shoulder', decision: 'hold', why: 'Nothing known of the morning after.' },
    { day: 26, joint: 'right-shoulder', decision: 'hold', why: 'Pain before and during were not answered.' },
    {
      day: 29,
      joint: 'right-shoulder',
      decision: 'progress',
      why: 'One session answered whole and quiet; nothing was missed before it.',
      inForce: { arm: '3 × 23–25, 2 kg' },
    },
    {
      day: 36,
      joint: 'right-shoulder',
      decision: 'hold',
      why: 'Four of six planned sessions in two weeks: regular first, more later.',
      waits: { arm: null },
    },
    { day: 42, joint: 'right-shoulder', decision: 'hold', why: 'Silence since Wednesday: somebody rings.' },
  ],
  disagreements: [],
};
