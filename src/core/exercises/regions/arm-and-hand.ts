/** Arm and hand: bending and straightening the elbow, wrist and grip. */
import { carried, main } from '../demand.ts';
import type { Exercise } from '../exercise.ts';
import { still, through } from '../movements.ts';

const arm = { limb: 'arm', limbsAtOnce: 'one', weightBearing: [] } as const;

const elbowBend = {
  ...arm,
  family: 'elbow-bend',
  target: ['biceps'],
  indirect: ['forearms'],
  loads: [main('elbow', 'flexion'), carried('wrist', 'held straight'), carried('hand', 'grip')],
  position: 'sitting',
  range: [through('elbow', 'flexion', 0, 130)],
} as const;
const elbowStraighten = {
  ...arm,
  family: 'elbow-straighten',
  target: ['triceps'],
  indirect: ['shoulders'],
  position: 'sitting',
  range: [through('elbow', 'flexion', 0, 130), still('shoulder', 'flexion', 170)],
} as const;
const overheadDemand = [
  main('elbow', 'extension'),
  carried('shoulder', 'held overhead'),
  carried('wrist', 'held straight'),
  carried('hand', 'grip'),
];
const wrist = {
  ...arm,
  family: 'wrist-weight',
  methods: ['variation', 'low-load', 'occlusion'],
  target: ['forearms'],
  indirect: ['hand'],
  equipment: ['hand weight', 'table'],
  position: 'sitting, forearm on a table',
  cautions: ['weight-drop', 'grip-strain'],
} as const;

const grip = {
  ...arm,
  family: 'grip',
  methods: ['variation', 'low-load'],
  target: ['hand', 'forearms'],
  indirect: [],
  position: 'sitting',
  cautions: ['hand-joint-pain'],
} as const;

const bandArm = { ...arm, methods: ['variation', 'low-load', 'occlusion'], equipment: ['band'] } as const;

export const armAndHand: readonly Exercise[] = [
  {
    ...elbowBend,
    id: 'curl-seated',
    title: 'Curl, sitting',
    methods: ['variation', 'low-load', 'occlusion'],
    equipment: ['firm chair', 'hand weight'],
    cautions: ['steady-seat', 'weight-drop', 'grip-strain'],
    setting: { kind: 'limb-lift', lever: 'forearm', angleDeg: 0, addedKg: 0 },
  },
  {
    ...elbowBend,
    id: 'curl-seated-one-kilo',
    title: 'Curl, sitting, 1 kg in the hand',
    methods: ['variation'],
    equipment: ['firm chair', 'hand weight, 1 kg'],
    cautions: ['steady-seat', 'weight-drop', 'grip-strain'],
    setting: { kind: 'limb-lift', lever: 'forearm', angleDeg: 0, addedKg: 1 },
  },
  {
    ...elbowBend,
    id: 'curl-seated-two-kilos',
    title: 'Curl, sitting, 2 kg in the hand',
    methods: ['variation'],
    equipment: ['firm chair', 'hand weight, 2 kg'],
    cautions: ['steady-seat', 'weight-drop', 'grip-strain'],
    setting: { kind: 'limb-lift', lever: 'forearm', angleDeg: 0, addedKg: 2 },
  },
  {
    ...elbowStraighten,
    id: 'overhead-extension',
    title: 'Straighten the elbow overhead',
    methods: ['variation', 'low-load', 'occlusion'],
    loads: overheadDemand,
    equipment: ['firm chair', 'hand weight'],
    cautions: ['steady-seat', 'overhead-arm', 'weight-drop', 'grip-strain'],
    setting: { kind: 'limb-lift', lever: 'forearm', angleDeg: 0, addedKg: 0 },
  },
  {
    ...elbowStraighten,
    id: 'overhead-extension-one-kilo',
    title: 'Straighten the elbow overhead, 1 kg in the hand',
    methods: ['variation'],
    loads: overheadDemand,
    equipment: ['firm chair', 'hand weight, 1 kg'],
    cautions: ['steady-seat', 'overhead-arm', 'weight-drop', 'grip-strain'],
    setting: { kind: 'limb-lift', lever: 'forearm', angleDeg: 0, addedKg: 1 },
  },
  {
    ...bandArm,
    id: 'curl-band',
    family: 'band-arm-bend',
    title: 'Bend the elbow against a band',
    target: ['biceps'],
    indirect: ['forearms'],
    loads: elbowBend.loads,
    position: 'sitting',
    range: elbowBend.range,
    cautions: ['band-snap', 'grip-strain'],
  },
  {
    ...bandArm,
    id: 'press-down-band',
    family: 'band-arm-straighten',
    title: 'Press a band down',
    target: ['triceps'],
    indirect: [],
    loads: [main('elbow', 'extension'), carried('shoulder', 'held still'), carried('hand', 'grip')],
    equipment: ['band', 'high anchor'],
    position: 'standing or sitting',
    weightBearing: ['legs'],
    range: [through('elbow', 'flexion', 0, 100), still('shoulder', 'flexion')],
    cautions: ['band-snap', 'grip-strain'],
  },
  {
    ...wrist,
    id: 'wrist-bend-up',
    title: 'Bend the wrist, palm up',
    loads: [main('wrist', 'flexion'), carried('hand', 'grip')],
    range: [through('wrist', 'flexion', -50, 60)],
  },
  {
    ...wrist,
    id: 'wrist-bend-back',
    title: 'Bend the wrist back, palm down',
    loads: [main('wrist', 'extension'), carried('hand', 'grip')],
    range: [through('wrist', 'extension', -50, 50)],
  },
  {
    ...grip,
    id: 'ball-squeeze',
    title: 'Squeeze a soft ball',
    loads: [main('hand', 'grip'), carried('wrist', 'held straight')],
    equipment: ['soft ball'],
    range: [through('hand', 'flexion', 20, 70)],
  },
  {
    ...grip,
    id: 'towel-wring',
    title: 'Wring a towel',
    loads: [main('hand', 'grip'), main('wrist', 'turning')],
    limbsAtOnce: 'both',
    equipment: ['towel'],
    range: [
      through('hand', 'flexion', 40, 90),
      through('wrist', 'flexion', -40, 40),
      through('wrist', 'pronation', -30, 30),
    ],
  },
  {
    ...grip,
    id: 'finger-spread',
    family: 'finger-spread',
    title: 'Spread the fingers against a rubber ring',
    target: ['hand'],
    loads: [main('hand', 'spreading')],
    equipment: ['soft rubber ring'],
    range: [through('hand', 'abduction', 0, 20)],
  },
];
