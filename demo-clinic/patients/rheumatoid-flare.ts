/** Rheumatoid arthritis: of six joints two flare together and stay so; the clinic is told on the third day. */
import type { Joint } from '#core/exercises/joints.ts';
import {
  body,
  consentGiven,
  injection,
  measures,
  medicine,
  missedDose,
  plans,
  prescribes,
  pressure,
  screens,
  setsBaseline,
  steroidCourse,
  tells,
  toldBaseline,
} from '../acts.ts';
import { atHome, loads } from '../home.ts';
import { morningsOf, on, type Story, week } from '../story.ts';

/** Followed beside the two that flare, and quiet throughout. */
const quiet: readonly Joint[] = ['left-wrist', 'left-hand', 'right-knee', 'left-knee'];
const joints: readonly Joint[] = ['right-wrist', 'right-hand', ...quiet];

/** The hand, and the quiet joints at their usual 1. */
const rest = (hand: string): readonly string[] => [hand, ...quiet.map(() => hand.replace(/\d/g, '1'))];

export const rheumatoidFlare: Story = {
  id: 'rheumatoid-flare',
  email: 'patient-9@demo.invalid',
  shows:
    'An inflammatory flare of two of six joints after a missed dose: eased at once, no second cut, the clinic told on day three; then a course of steroid and an injection.',
  person: { givenName: 'Leocadia', familyName: 'Brandmere', birthDay: '1973-12-03', phone: '020 913 0159' },
  profile: {
    diagnosis: 'Rheumatoid arthritis',
    inflammatoryArthritis: true,
    followedJoints: [...joints],
    asksFatigue: true,
    ownedLoadsKg: loads(0.5, 3, 0.25),
    ownedEquipment: atHome('hand weight'),
    formulaSex: 'female',
  },
  days: 35,
  visits: [
    on(
      0,
      consentGiven('treatment', 'record-keeping', 'remote-monitoring'),
      medicine('change', 'disease-modifying', 18, 'Raised by the rheumatology team.'),
      screens({
        'rheumatoid-arthritis': { answer: 'yes' },
        'arthritis-medicines': { answer: 'yes', details: ['biologic'] },
      }),
      measures(
        ...body(64, 163),
        pressure(122, 76),
        { kind: 'grip', side: 'right', forceKg: 17 },
        {
          kind: 'joint-counts',
          tender: 4,
          swollen: 2,
          patientGlobal: 4,
          clinicianGlobal: 3,
        },
      ),
      prescribes('wrist', {
        method: 'low-load',
        exerciseId: 'wrist-bend-up',
        side: 'right',
        knownOneRepMaxKg: 3.5,
        sessionsPerWeek: 3,
      }),
      toldBaseline('right-wrist', 2, 30),
      toldBaseline('right-hand', 3, 30),
      ...quiet.map((joint) => toldBaseline(joint, 1, 30)),
      plans({ wrist: 'Mon Wed Fri' }),
    ),
    on(
      14,
      setsBaseline('right-wrist', 2, 30, 'Fourteen mornings, 2 at most.'),
      setsBaseline('right-hand', 3, 30, 'Fourteen mornings, 2 to 3.'),
      ...quiet.map((joint) => setsBaseline(joint, 1, 30, 'Fourteen mornings, 1 at most.')),
    ),
    on(29, missedDose('biologic', 'Left out for a cold.')),
    on(
      32,
      tells('Do the easier session or none. If the flare goes on we ring you and your rheumatology team.'),
    ),
    on(33, steroidCourse(14, 'taper', 'Begun by the rheumatology team after our note.')),
    on(34, injection('right-wrist')),
  ],
  weeks: [
    week(0, '. 2 2 1 2 2 2', 30, 'Mon 2 3 2, Wed 2 3 2, Fri 2 3 3', rest('. 3 3 2 3 2 3'), 3),
    week(7, '2 2 1 2 2 2 1', 30, 'Mon 2 3 2, Wed 1 3 2, Fri 2 3 2', rest('3 2 3 3 3 2 3'), 3),
    week(14, '2 2 2 1 2 2 2', 30, 'Mon 2 3 2, Wed 2 3 2, Fri 2 3 2', rest('3 3 2 3 3 3 2'), 3),
    week(21, '2 1 2 2 2 1 2', 30, 'Mon 2 3 2, Wed 2 3 2, Fri 2 3 2', rest('2 3 3 3 2 3 3'), 3),
    // Both joints flare overnight to Thursday.
    week(28, '2 2 2 5 6 6 6', 30, 'Mon 2 3 2, Wed 2 3 3, Fri 5 5 5 easier', rest('3 3 3 6 6 6 7'), 3),
    week(35, '6', 30, '', rest('6'), 3),
  ],
  remarks: morningsOf(31, 35, { flare: true, stiffness: 90, swelling: 'slight', fatigue: 6, ofFirst: 2 }),
  expected: [
    { day: 22, joint: 'right-wrist', decision: 'progress', why: 'Quiet in both joints.' },
    {
      day: 31,
      joint: 'right-wrist',
      decision: 'ease-back',
      why: 'Flare overnight, stiff for an hour and a half.',
      inForce: { wrist: '3 × 21–25, 1.5 kg' },
    },
    { day: 31, joint: 'right-hand', decision: 'ease-back', why: 'The hand flares with it.' },
    {
      day: 33,
      joint: 'right-wrist',
      decision: 'ease-back',
      contact: 'routine',
      why: 'Third day of an inflammatory flare: these last, so the clinic is told.',
      inForce: { wrist: '3 × 21–25, 1.5 kg' },
    },
    {
      day: 35,
      joint: 'right-wrist',
      decision: 'ease-back',
      contact: 'routine',
      why: 'Fifth day; a call to the patient and her rheumatology team, not a smaller dose.',
    },
  ],
  disagreements: [],
};
