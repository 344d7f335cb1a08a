/** Trunk and neck. No body-weight figure can be computed for these; their order is common practice. */
import { carried, main } from '../demand.ts';
import type { Exercise } from '../exercise.ts';
import { still, through } from '../movements.ts';

const trunk = {
  limb: 'trunk',
  limbsAtOnce: 'both',
  methods: ['variation'],
  equipment: ['mat or bed'],
  weightBearing: [],
  range: [still('low-back', 'flexion')],
} as const;

const frontTrunk = {
  ...trunk,
  family: 'trunk-front',
  target: ['trunk-front'],
} as const;
const plankDemand = [
  main('low-back', 'held straight'),
  carried('shoulder', 'leaning weight'),
  carried('elbow', 'leaning weight'),
];
const backTrunk = { ...trunk, family: 'trunk-back', target: ['trunk-back'] } as const;
const neck = {
  ...trunk,
  family: 'neck-hold',
  target: ['neck'],
  indirect: [],
  equipment: ['none'],
  position: 'sitting',
  cautions: ['neck-pressure', 'breath-holding'],
} as const;

export const trunkAndNeck: readonly Exercise[] = [
  {
    ...frontTrunk,
    id: 'belly-press',
    title: 'Press the low back down, lying on the back',
    indirect: [],
    loads: [main('low-back', 'held still')],
    position: 'lying on the back',
    cautions: ['floor-transfer', 'breath-holding'],
  },
  {
    ...frontTrunk,
    id: 'heel-slide',
    title: 'Slide one heel out with a still back',
    indirect: ['hip-flexors'],
    loads: [main('low-back', 'held still'), carried('hip', 'flexion'), carried('knee', 'bending')],
    position: 'lying on the back',
    range: [...trunk.range, through('hip', 'flexion', 0, 50), through('knee', 'flexion', 0, 90)],
    cautions: ['floor-transfer', 'breath-holding'],
  },
  {
    ...frontTrunk,
    id: 'arm-and-leg-lowering',
    title: 'Lower opposite arm and leg, lying on the back',
    indirect: ['hip-flexors', 'shoulders'],
    loads: [main('low-back', 'held still'), carried('hip', 'flexion'), carried('shoulder', 'flexion')],
    position: 'lying on the back',
    range: [...trunk.range, through('hip', 'flexion', 0, 90), through('shoulder', 'flexion', 90, 180)],
    cautions: ['floor-transfer', 'breath-holding', 'overhead-arm'],
  },
  {
    ...frontTrunk,
    id: 'forearm-plank-knees',
    title: 'Forearm plank on the knees',
    indirect: ['shoulders', 'glutes'],
    loads: [...plankDemand, carried('knee', 'kneeling pressure')],
    position: 'on forearms and knees',
    weightBearing: ['arms', 'legs'],
    cautions: ['floor-transfer', 'breath-holding', 'kneeling'],
  },
  {
    ...frontTrunk,
    id: 'forearm-plank',
    title: 'Forearm plank on the feet',
    indirect: ['shoulders', 'glutes', 'quadriceps'],
    loads: [...plankDemand, carried('foot', 'toe support'), carried('knee', 'held straight')],
    position: 'on forearms and feet',
    weightBearing: ['arms', 'legs'],
    cautions: ['floor-transfer', 'breath-holding'],
  },
  {
    ...backTrunk,
    id: 'arm-and-leg-reach',
    title: 'Reach out opposite arm and leg on all fours',
    indirect: ['glutes', 'shoulders'],
    loads: [
      main('low-back', 'held straight'),
      carried('hip', 'extension'),
      carried('shoulder', 'leaning weight'),
      carried('wrist', 'load in extension'),
      carried('knee', 'kneeling pressure'),
    ],
    position: 'on hands and knees',
    weightBearing: ['arms', 'legs'],
    range: [
      ...trunk.range,
      through('hip', 'flexion', 0, 90),
      through('knee', 'flexion', 0, 90),
      through('shoulder', 'flexion', 90, 180),
      still('wrist', 'extension', 80),
    ],
    cautions: ['floor-transfer', 'kneeling', 'wrist-load'],
  },
  {
    ...backTrunk,
    id: 'chest-lift',
    title: 'Lift the chest, lying on the front',
    indirect: ['upper-back', 'neck'],
    loads: [main('low-back', 'extension'), carried('neck', 'held straight')],
    position: 'lying on the front',
    range: [through('low-back', 'extension', 0, 20)],
    cautions: ['floor-transfer', 'front-lying', 'low-back-arch'],
  },
  {
    ...trunk,
    id: 'side-plank-knees',
    family: 'trunk-side',
    title: 'Side plank on the knees',
    limbsAtOnce: 'one',
    target: ['trunk-front', 'trunk-back'],
    indirect: ['hip-abductors', 'shoulders'],
    loads: [
      main('low-back', 'held sideways'),
      carried('shoulder', 'leaning weight'),
      carried('elbow', 'leaning weight'),
      carried('hip', 'abduction'),
      carried('knee', 'side pressure'),
    ],
    position: 'on one forearm and knee',
    weightBearing: ['arms', 'legs'],
    range: [still('low-back', 'side-bend')],
    cautions: ['floor-transfer', 'side-lying-hip', 'breath-holding'],
  },
  {
    ...neck,
    id: 'chin-draw',
    title: 'Draw the chin in',
    loads: [main('neck', 'drawing back')],
    range: [through('neck', 'flexion', 0, 10)],
  },
  {
    ...neck,
    id: 'neck-press-front',
    title: 'Press the forehead into the hands',
    loads: [main('neck', 'flexion without movement')],
    range: [still('neck', 'flexion')],
  },
  {
    ...neck,
    id: 'neck-press-side',
    title: 'Press the side of the head into the hand',
    loads: [main('neck', 'side bend without movement')],
    range: [still('neck', 'side-bend')],
  },
];
