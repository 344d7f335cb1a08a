/** One patient of the other clinic, so that there is somebody the first clinic must not see. */
import { body, measures, plans, prescribes, pressure, screens } from './acts.ts';
import { atHome } from './home.ts';
import { on, type Story, week } from './story.ts';

export const otherClinicStory: Story = {
  id: 'other-clinic-patient',
  email: null,
  shows: 'A patient of another clinic.',
  person: { givenName: 'Oriel', familyName: 'Hastrup-Vane', birthDay: '1970-02-18', phone: '020 913 0295' },
  profile: {
    diagnosis: 'Hip osteoarthritis, left',
    inflammatoryArthritis: false,
    followedJoints: ['left-hip'],
    ownedLoadsKg: [],
    ownedEquipment: atHome(),
    formulaSex: 'female',
  },
  days: 7,
  visits: [
    on(
      0,
      screens(),
      measures(...body(70, 165), pressure(120, 75)),
      prescribes('bridge', {
        method: 'variation',
        exerciseId: 'bridge-two-legs',
        side: 'both',
        sessionsPerWeek: 2,
      }),
      plans({ bridge: 'Tue Fri' }),
    ),
  ],
  weeks: [week(0, '. 3 2 3 3 2 3', 15, 'Tue 3 4 3, Fri 3 3 3'), week(7, '3', 15, '')],
  remarks: [],
  expected: [
    {
      day: 6,
      joint: 'left-hip',
      decision: 'hold',
      why: 'First week: usual pain is not known, and mornings of 2 to 3 may well be it.',
    },
  ],
  disagreements: [],
};
