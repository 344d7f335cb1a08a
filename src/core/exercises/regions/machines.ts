/** On machines of the clinic: presses, knee extension, leg curl and cable. */
import { carried, main } from '../demand.ts';
import type { Exercise } from '../exercise.ts';
import { still, through } from '../movements.ts';

const legPress = {
  family: 'leg-press-machine',
  machine: 'leg-press',
  methods: ['low-load'],
  target: ['quadriceps', 'glutes'],
  indirect: ['hamstrings'],
  loads: [
    main('knee', 'extension'),
    main('hip', 'extension'),
    carried('ankle', 'dorsiflexion'),
    carried('low-back', 'held against the pad'),
  ],
  limb: 'leg',
  equipment: ['leg press machine'],
  position: 'sitting',
  weightBearing: ['legs'],
  range: [
    through('knee', 'flexion', 0, 90),
    through('hip', 'flexion', 30, 100),
    through('ankle', 'dorsiflexion', 0, 10),
  ],
  cautions: ['machine-set-up', 'knee-bend-pain', 'hip-bend-limit', 'breath-holding'],
} as const;

const oneLeg = {
  methods: ['low-load'],
  limb: 'leg',
  limbsAtOnce: 'one',
  position: 'sitting',
  weightBearing: [],
  range: [through('knee', 'flexion', 0, 90), still('hip', 'flexion', 90)],
} as const;

const pulling = [main('shoulder', 'pulling'), main('elbow', 'flexion'), carried('hand', 'grip')];

const cable = {
  machine: 'cable',
  methods: ['low-load'],
  indirect: ['biceps', 'forearms'],
  limb: 'arm',
  limbsAtOnce: 'both',
  equipment: ['cable machine'],
  position: 'sitting',
  weightBearing: [],
} as const;

export const machineExercises: readonly Exercise[] = [
  { ...legPress, id: 'leg-press-machine', title: 'Leg press on the machine, two legs', limbsAtOnce: 'both' },
  {
    ...legPress,
    id: 'leg-press-machine-one-leg',
    title: 'Leg press on the machine, one leg',
    limbsAtOnce: 'one',
  },
  {
    ...oneLeg,
    id: 'knee-extension-machine',
    family: 'knee-extension-machine',
    machine: 'knee-extension',
    title: 'Straighten the knee on the machine',
    target: ['quadriceps'],
    indirect: [],
    loads: [main('knee', 'extension'), carried('hip', 'held bent')],
    equipment: ['knee extension machine'],
    cautions: ['machine-set-up', 'knee-end-range'],
  },
  {
    ...oneLeg,
    id: 'leg-curl-machine',
    family: 'leg-curl-machine',
    machine: 'leg-curl',
    title: 'Bend the knee on the machine, sitting',
    target: ['hamstrings'],
    indirect: ['calves'],
    loads: [main('knee', 'flexion'), carried('hip', 'held bent')],
    equipment: ['leg curl machine'],
    cautions: ['machine-set-up'],
  },
  {
    id: 'chest-press-machine',
    family: 'chest-press-machine',
    machine: 'chest-press',
    title: 'Chest press on the machine, sitting',
    methods: ['low-load'],
    target: ['chest'],
    indirect: ['shoulders', 'triceps'],
    loads: [
      main('shoulder', 'pushing'),
      main('elbow', 'extension'),
      carried('wrist', 'held straight'),
      carried('hand', 'grip'),
    ],
    limb: 'arm',
    limbsAtOnce: 'both',
    equipment: ['chest press machine'],
    position: 'sitting',
    weightBearing: [],
    range: [through('shoulder', 'flexion', -10, 90), through('elbow', 'flexion', 0, 110)],
    cautions: ['machine-set-up', 'grip-strain', 'breath-holding'],
  },
  {
    ...cable,
    id: 'cable-row',
    family: 'cable-row',
    title: 'Row at the cable, sitting',
    target: ['upper-back', 'lats'],
    loads: [...pulling, carried('low-back', 'held straight')],
    range: [through('shoulder', 'flexion', -20, 90), through('elbow', 'flexion', 0, 110)],
    cautions: ['machine-set-up', 'grip-strain', 'low-back-bend'],
  },
  {
    ...cable,
    id: 'cable-pull-down',
    family: 'cable-pull-down',
    title: 'Pull the cable down from above, sitting',
    target: ['lats', 'upper-back'],
    loads: pulling,
    range: [
      through('shoulder', 'flexion', 0, 150),
      through('shoulder', 'abduction', 0, 150),
      through('elbow', 'flexion', 0, 130),
    ],
    cautions: ['machine-set-up', 'overhead-arm', 'grip-strain'],
  },
];
