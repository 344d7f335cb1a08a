/** This morning she ticks calf pain and swelling: everything stops and she is first on the list. */
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
  toldBaseline,
} from '../acts.ts';
import { atHome } from '../home.ts';
import { morningOf, on, type Story, week } from '../story.ts';

export const redFlag: Story = {
  id: 'red-flag',
  email: 'patient-6@demo.invalid',
  shows:
    'A warning sign told with this morning’s answers: all sessions stop, a call today, first on the list.',
  person: { givenName: 'Yewande', familyName: 'Coldrick', birthDay: '1991-06-25', phone: '020 913 0156' },
  profile: {
    diagnosis: 'Ankle osteoarthritis after a fracture, right',
    inflammatoryArthritis: false,
    followedJoints: ['right-ankle'],
    ownedLoadsKg: [5],
    ownedEquipment: atHome(),
    formulaSex: 'female',
  },
  days: 28,
  visits: [
    on(
      0,
      consentGiven('treatment', 'record-keeping', 'remote-monitoring'),
      screens(),
      measures(
        ...body(66, 168),
        pressure(116, 72),
        { kind: 'patient-chosen-activity', activity: 'Cycling to work', score: 2 },
        { kind: 'patient-chosen-activity', activity: 'Standing through a shift', score: 4 },
        { kind: 'patient-chosen-activity', activity: 'Down the cellar steps', score: 3 },
      ),
      prescribes('heel', {
        method: 'variation',
        exerciseId: 'heel-raise-two-legs',
        side: 'both',
        sessionsPerWeek: 3,
      }),
      toldBaseline('right-ankle', 2, 10),
      plans({ heel: 'Mon Wed Fri' }),
    ),
    on(14, setsBaseline('right-ankle', 2, 10, 'Fourteen mornings, 1 to 2.'), asksAtHome('activities', 28)),
  ],
  weeks: [
    week(0, '. 2 2 1 2 2 1', 10, 'Mon 2 3 2, Wed 2 3 2, Fri 2 3 2'),
    week(7, '2 1 2 2 1 2 2', 10, 'Mon 2 3 2, Wed 2 3 2, Fri 1 3 2'),
    week(14, '2 2 1 2 2 1 2', 10, 'Mon 2 3 2, Wed 1 3 2, Fri 2 3 2'),
    week(21, '2 2 2 1 2 2 2', 10, 'Mon 2 3 2, Wed 2 3 2, Fri 2 3 2'),
    week(28, '3', 10, ''),
  ],
  remarks: [morningOf(28, { redFlags: ['calf-pain-swelling'] })],
  atHome: [{ day: 14, given: [3, 5, null] }],
  expected: [
    { day: 15, joint: 'right-ankle', decision: 'progress', why: 'Quiet and done as asked.' },
    { day: 27, joint: 'right-ankle', decision: 'progress', why: 'Nothing out of the ordinary on Sunday.' },
    {
      day: 28,
      joint: 'right-ankle',
      decision: 'pause',
      contact: 'same-day',
      why: 'Calf pain and swelling may be a clot: no session, a call today, whatever the pain score.',
      waits: { heel: null },
    },
  ],
  disagreements: [],
};
