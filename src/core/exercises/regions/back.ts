/** Back: rows and pull-downs. */
import { carried, main } from '../demand.ts';
import type { Exercise } from '../exercise.ts';

const pulling = [main('shoulder', 'pulling'), main('elbow', 'flexion'), carried('hand', 'grip')];

const leanBack = (id: string, title: string, fromVerticalDeg: number, lean: string): Exercise => ({
  id,
  family: 'lean-back-row',
  title,
  methods: ['variation'],
  target: ['upper-back', 'lats'],
  indirect: ['biceps', 'forearms', 'trunk-back'],
  loads: [...pulling, carried('low-back', 'held straight'), carried('neck', 'held straight')],
  limb: 'arm',
  limbsAtOnce: 'both',
  equipment: ['two fixed handles'],
  position: 'leaning back',
  cautions: ['anchor-strength', 'surface-slip', 'grip-strain', 'breath-holding'],
  instructions: [
    'Hold both handles. Stand under the anchor.',
    lean,
    'Pull your chest to the handles.',
    'Go back slowly. Keep your body straight.',
  ],
  setting: { kind: 'lean-back-row', fromVerticalDeg },
});

const row = {
  family: 'seated-row',
  target: ['upper-back', 'lats'],
  limb: 'arm',
  limbsAtOnce: 'both',
} as const;

const overheadPull = { ...row, family: 'overhead-pull', target: ['lats', 'upper-back'] } as const;

export const back: readonly Exercise[] = [
  leanBack('row-lean-back', 'Lean-back row, body 30° from upright', 30, 'Lean back a little.'),
  leanBack('row-lean-back-further', 'Lean-back row, body 38° from upright', 38, 'Lean back a bit more.'),
  leanBack(
    'row-lean-back-half',
    'Lean-back row, body 45° from upright',
    45,
    'Lean back halfway to the floor.',
  ),
  leanBack(
    'row-lean-back-low',
    'Lean-back row, body 60° from upright',
    60,
    'Lean back far. Keep your feet flat.',
  ),
  {
    ...row,
    id: 'shoulder-blade-squeeze',
    title: 'Squeeze the shoulder blades together',
    methods: ['variation'],
    target: ['upper-back'],
    indirect: [],
    loads: [main('shoulder', 'drawing back'), carried('neck', 'held still')],
    equipment: ['none'],
    position: 'sitting',
    cautions: [],
    instructions: [
      'Sit tall. Let your arms hang.',
      'Pull your shoulder blades back and down.',
      'Hold for five slow counts.',
      'Let go.',
    ],
  },
  {
    ...row,
    id: 'row-band-seated',
    title: 'Row with a band, sitting',
    methods: ['variation', 'low-load'],
    indirect: ['biceps', 'forearms'],
    loads: pulling,
    equipment: ['band', 'firm chair'],
    position: 'sitting',
    cautions: ['steady-seat', 'band-snap', 'grip-strain'],
    instructions: [
      'Tie the band to something firm in front of you.',
      'Hold one end in each hand.',
      'Pull your elbows back.',
      'Come back slowly.',
    ],
  },
  {
    ...row,
    id: 'row-one-arm-weight',
    title: 'Row with a hand weight, leaning on a table',
    methods: ['variation', 'low-load'],
    indirect: ['biceps', 'forearms', 'trunk-back'],
    loads: [...pulling, carried('low-back', 'held bent forward')],
    limbsAtOnce: 'one',
    equipment: ['hand weight', 'heavy table'],
    position: 'bent forward',
    cautions: ['weight-drop', 'low-back-bend', 'grip-strain'],
    instructions: [
      'Lean on a table with one hand. Keep your back straight.',
      'Let the weight hang from the other hand.',
      'Pull your elbow up past your side.',
      'Lower slowly.',
    ],
  },
  {
    ...overheadPull,
    id: 'pull-down-band',
    title: 'Pull a band down from above',
    methods: ['variation', 'low-load'],
    indirect: ['biceps', 'forearms'],
    loads: pulling,
    equipment: ['band', 'high anchor'],
    position: 'sitting',
    cautions: ['band-snap', 'overhead-arm', 'grip-strain'],
    instructions: [
      'Tie the band to something firm above you.',
      'Hold one end in each hand.',
      'Pull your elbows down to your sides.',
      'Go up slowly.',
    ],
  },
  {
    ...overheadPull,
    id: 'pull-up-foot-assisted',
    title: 'Pull-up with the feet helping',
    methods: ['variation'],
    indirect: ['biceps', 'forearms', 'trunk-front'],
    loads: pulling,
    equipment: ['fixed bar', 'firm chair'],
    position: 'hanging, feet on a chair',
    cautions: ['steady-seat', 'anchor-strength', 'overhead-arm', 'grip-strain', 'breath-holding'],
    instructions: [
      'Hold the bar. Keep your feet on the chair.',
      'Pull up. Help with your legs as much as you need.',
      'Lower slowly.',
    ],
  },
  {
    ...overheadPull,
    id: 'pull-up',
    title: 'Pull-up',
    methods: ['variation'],
    indirect: ['biceps', 'forearms', 'trunk-front'],
    loads: pulling,
    equipment: ['fixed bar'],
    position: 'hanging',
    cautions: ['anchor-strength', 'overhead-arm', 'grip-strain', 'breath-holding'],
    instructions: ['Hang from the bar.', 'Pull up until your chin is at the bar.', 'Lower slowly.'],
    setting: { kind: 'moved-mass', movement: 'pull-up', addedKg: 0 },
  },
];
