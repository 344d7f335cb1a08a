/** Chest and shoulder: push-ups from wall to floor, presses, arm raises, turning the arm. */
import { carried, main } from '../demand.ts';
import type { Exercise, JointDemand } from '../exercise.ts';
import type { ExerciseId } from '../ids.ts';
import { still, through } from '../movements.ts';

const wallDemand: readonly JointDemand[] = [
  main('shoulder', 'horizontal push'),
  main('elbow', 'extension'),
  carried('wrist', 'load in extension'),
  carried('ankle', 'leaning forward'),
];
const floorDemand: readonly JointDemand[] = [
  main('shoulder', 'horizontal push'),
  main('elbow', 'extension'),
  carried('wrist', 'load in extension'),
  carried('low-back', 'held straight'),
  carried('foot', 'toe support'),
];
/** The upper arms go a little behind the trunk, held away from it. */
const pushing = (elbowDegrees: number) => [
  through('shoulder', 'flexion', -20, 90),
  through('shoulder', 'abduction', 0, 60),
  through('elbow', 'flexion', 0, elbowDegrees),
];
const leaningOnHands = [...pushing(100), still('wrist', 'extension', 80)];
/** The arm goes up in either plane. */
const overhead = [
  through('shoulder', 'flexion', 0, 170),
  through('shoulder', 'abduction', 0, 170),
  through('elbow', 'flexion', 0, 130),
];
const pushUp = {
  family: 'push-up',
  methods: ['variation'],
  target: ['chest', 'triceps'],
  limb: 'arm',
  limbsAtOnce: 'both',
  weightBearing: ['arms', 'legs'],
  range: leaningOnHands,
} as const;

const wall = (id: ExerciseId<'chest-and-shoulder'>, title: string, footLengthsBack: number): Exercise => ({
  ...pushUp,
  id,
  title,
  indirect: ['shoulders'],
  loads: wallDemand,
  equipment: ['wall'],
  position: 'standing',
  cautions: ['wrist-load', 'surface-slip'],
  setting: { kind: 'wall-push-up', footLengthsBack },
});

const raisedHands = (
  id: ExerciseId<'chest-and-shoulder'>,
  title: string,
  handHeightM: number,
  support: string,
): Exercise => ({
  ...pushUp,
  id,
  title,
  indirect: ['shoulders', 'trunk-front'],
  loads: floorDemand,
  equipment: [support],
  position: 'leaning forward',
  cautions: ['wrist-load', 'surface-slip', 'breath-holding'],
  setting: { kind: 'push-up', support: 'feet', handHeightM, footHeightM: 0 },
});

const armRaise = {
  methods: ['variation', 'low-load'],
  target: ['shoulders'],
  indirect: ['upper-back'],
  limb: 'arm',
  limbsAtOnce: 'one',
  position: 'standing or sitting',
  weightBearing: ['legs'],
} as const;
const frontDemand = [main('shoulder', 'flexion'), carried('elbow', 'held'), carried('hand', 'grip')];
const sideDemand = [main('shoulder', 'abduction'), carried('elbow', 'held'), carried('hand', 'grip')];
const frontRange = [through('shoulder', 'flexion', 0, 90)];
const sideRange = [through('shoulder', 'abduction', 0, 90)];
const turn = {
  family: 'arm-turn',
  methods: ['variation', 'low-load'],
  target: ['shoulders'],
  indirect: ['upper-back'],
  loads: [main('shoulder', 'turning'), carried('elbow', 'held bent'), carried('hand', 'grip')],
  limb: 'arm',
  limbsAtOnce: 'one',
  weightBearing: ['legs'],
} as const;
const press = {
  methods: ['low-load', 'variation'],
  limb: 'arm',
  limbsAtOnce: 'both',
  weightBearing: [],
} as const;

export const chestAndShoulder: readonly Exercise[] = [
  wall('wall-push-up-near', 'Push-up against the wall, feet near', 0.6),
  wall('wall-push-up', 'Push-up against the wall', 1),
  raisedHands('incline-push-up-high', 'Push-up with hands at 90 cm', 0.9, 'worktop 90 cm high'),
  raisedHands('incline-push-up-table', 'Push-up with hands at 75 cm', 0.75, 'heavy table 75 cm high'),
  raisedHands('incline-push-up-middle', 'Push-up with hands at 60 cm', 0.6, 'fixed bench 60 cm high'),
  raisedHands('incline-push-up-low', 'Push-up with hands at 45 cm', 0.45, 'fixed seat 45 cm high'),
  raisedHands('incline-push-up-step', 'Push-up with hands at 30 cm', 0.3, 'fixed step 30 cm high'),
  {
    ...pushUp,
    id: 'knee-push-up',
    title: 'Push-up on the knees',
    indirect: ['shoulders', 'trunk-front'],
    loads: [...floorDemand.filter((demand) => demand.joint !== 'foot'), carried('knee', 'kneeling pressure')],
    equipment: ['mat'],
    position: 'on hands and knees',
    cautions: ['wrist-load', 'floor-transfer', 'kneeling', 'breath-holding'],
    setting: { kind: 'push-up', support: 'knees', handHeightM: 0, footHeightM: 0 },
  },
  {
    ...pushUp,
    id: 'push-up',
    title: 'Push-up on the floor',
    indirect: ['shoulders', 'trunk-front'],
    loads: floorDemand,
    equipment: ['mat'],
    position: 'on hands and feet',
    cautions: ['wrist-load', 'floor-transfer', 'breath-holding'],
    setting: { kind: 'push-up', support: 'feet', handHeightM: 0, footHeightM: 0 },
  },
  {
    ...pushUp,
    id: 'push-up-feet-raised',
    title: 'Push-up with feet at 30 cm',
    indirect: ['shoulders', 'trunk-front'],
    loads: floorDemand,
    equipment: ['mat', 'fixed step 30 cm high'],
    position: 'on hands and feet',
    cautions: ['wrist-load', 'floor-transfer', 'breath-holding', 'head-low', 'surface-slip'],
    setting: { kind: 'push-up', support: 'feet', handHeightM: 0, footHeightM: 0.3 },
  },
  {
    ...press,
    id: 'chest-press-band',
    family: 'chest-press',
    title: 'Chest press with a band, sitting',
    target: ['chest', 'triceps'],
    indirect: ['shoulders'],
    loads: [main('shoulder', 'horizontal push'), main('elbow', 'extension'), carried('hand', 'grip')],
    equipment: ['band', 'firm chair'],
    position: 'sitting',
    range: pushing(110),
    cautions: ['steady-seat', 'band-snap', 'grip-strain'],
  },
  {
    ...press,
    id: 'chest-press-lying',
    family: 'chest-press',
    title: 'Chest press with hand weights, lying on the back',
    target: ['chest', 'triceps'],
    indirect: ['shoulders'],
    loads: [main('shoulder', 'horizontal push'), main('elbow', 'extension'), carried('hand', 'grip')],
    equipment: ['hand weights', 'mat or bed'],
    position: 'lying on the back',
    range: pushing(100),
    cautions: ['weight-drop', 'floor-transfer', 'grip-strain'],
  },
  {
    ...press,
    id: 'overhead-press-band',
    family: 'overhead-press',
    title: 'Press a band overhead, sitting',
    target: ['shoulders', 'triceps'],
    indirect: ['upper-back'],
    loads: [main('shoulder', 'overhead push'), main('elbow', 'extension'), carried('neck', 'held still')],
    equipment: ['band', 'firm chair'],
    position: 'sitting',
    range: overhead,
    cautions: ['steady-seat', 'band-snap', 'overhead-arm', 'grip-strain'],
  },
  {
    ...press,
    id: 'overhead-press-weights',
    family: 'overhead-press',
    title: 'Press hand weights overhead, sitting',
    target: ['shoulders', 'triceps'],
    indirect: ['upper-back'],
    loads: [
      main('shoulder', 'overhead push'),
      main('elbow', 'extension'),
      carried('hand', 'grip'),
      carried('low-back', 'held straight'),
    ],
    equipment: ['hand weights', 'firm chair'],
    position: 'sitting',
    range: overhead,
    cautions: ['steady-seat', 'overhead-arm', 'weight-drop', 'breath-holding'],
  },
  {
    ...armRaise,
    id: 'front-arm-raise-bent',
    family: 'front-arm-raise',
    title: 'Raise the bent arm to the front',
    loads: frontDemand,
    equipment: ['none'],
    range: frontRange,
    cautions: ['overhead-arm'],
    setting: { kind: 'limb-lift', lever: 'bent-arm', angleDeg: 0, addedKg: 0 },
  },
  {
    ...armRaise,
    id: 'front-arm-raise-straight',
    family: 'front-arm-raise',
    title: 'Raise the straight arm to the front',
    loads: frontDemand,
    equipment: ['hand weight'],
    range: frontRange,
    cautions: ['overhead-arm', 'weight-drop'],
    setting: { kind: 'limb-lift', lever: 'straight-arm', angleDeg: 0, addedKg: 0 },
  },
  {
    ...armRaise,
    id: 'side-arm-raise-bent',
    family: 'side-arm-raise',
    title: 'Raise the bent arm to the side',
    loads: sideDemand,
    equipment: ['none'],
    range: sideRange,
    cautions: ['overhead-arm'],
    setting: { kind: 'limb-lift', lever: 'bent-arm', angleDeg: 0, addedKg: 0 },
  },
  {
    ...armRaise,
    id: 'side-arm-raise-straight',
    family: 'side-arm-raise',
    title: 'Raise the straight arm to the side',
    loads: sideDemand,
    equipment: ['hand weight'],
    range: sideRange,
    cautions: ['overhead-arm', 'weight-drop'],
    setting: { kind: 'limb-lift', lever: 'straight-arm', angleDeg: 0, addedKg: 0 },
  },
  {
    ...turn,
    id: 'arm-turn-out-hold',
    family: 'arm-turn-hold',
    isHeld: true,
    title: 'Press the back of the hand into a door frame',
    equipment: ['door frame'],
    position: 'standing',
    range: [still('shoulder', 'outward-rotation')],
    cautions: ['breath-holding'],
  },
  {
    ...turn,
    id: 'arm-turn-out-band',
    title: 'Turn the arm out against a band',
    equipment: ['band'],
    position: 'standing or sitting',
    range: [through('shoulder', 'outward-rotation', -45, 45)],
    cautions: ['band-snap', 'grip-strain'],
  },
];
