/** Referred, on the books, not seen yet: nothing is screened, measured or prescribed. */
import { atHome, loads } from '../home.ts';
import type { Story } from '../story.ts';

export const firstVisit: Story = {
  id: 'first-visit',
  email: 'patient-10@demo.invalid',
  shows: 'A first visit still to come: every method closed, with the reason, until somebody has asked.',
  person: {
    givenName: 'Solveig',
    familyName: 'Ashdrummond',
    birthDay: '1961-03-08',
    phone: '020 913 0160',
  },
  profile: {
    diagnosis: 'Knee osteoarthritis, right',
    inflammatoryArthritis: false,
    followedJoints: ['right-knee'],
    ownedLoadsKg: loads(1, 6, 0.5),
    ownedEquipment: atHome('ankle weight'),
    formulaSex: 'female',
  },
  days: 7,
  visits: [],
  weeks: [],
  remarks: [],
  expected: [],
  disagreements: [],
};
