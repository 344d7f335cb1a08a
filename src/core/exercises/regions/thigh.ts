/** Thigh: standing up, squatting, bending and straightening the knee, hinging. */
import { carried, held, main } from '../demand.ts';
import type { Exercise } from '../exercise.ts';
import type { ExerciseId } from '../ids.ts';
import { still, through } from '../movements.ts';

const bending = (kneeDegrees: number, hipDegrees: number, ankleDegrees: number) => [
  through('knee', 'flexion', 0, kneeDegrees),
  through('hip', 'flexion', 0, hipDegrees),
  through('ankle', 'dorsiflexion', 0, ankleDegrees),
];

/** Hips bend furthest at the start, when the trunk leans over the feet. */
const bendingFrom = (seatHeightM: number) =>
  seatHeightM >= 0.55
    ? bending(80, 90, 15)
    : seatHeightM >= 0.46
      ? bending(95, 105, 20)
      : bending(100, 110, 20);

const sitToStand = (id: ExerciseId<'thigh'>, title: string, seatHeightM: number, seat: string): Exercise => ({
  id,
  family: 'sit-to-stand',
  title,
  methods: ['variation'],
  target: ['quadriceps', 'glutes'],
  indirect: ['hamstrings', 'trunk-back'],
  loads: [main('knee', 'extension'), main('hip', 'extension'), carried('ankle', 'dorsiflexion')],
  limb: 'leg',
  limbsAtOnce: 'both',
  equipment: [seat],
  position: 'sitting to standing',
  weightBearing: ['legs'],
  range: bendingFrom(seatHeightM),
  cautions: ['steady-seat', 'fall-risk-standing', 'hip-bend-limit'],
  setting: { kind: 'sit-to-stand', seatHeightM },
});

const squat = {
  family: 'squat',
  methods: ['variation'],
  target: ['quadriceps', 'glutes'],
  indirect: ['hamstrings', 'trunk-back'],
  loads: [
    main('knee', 'extension'),
    main('hip', 'extension'),
    carried('ankle', 'dorsiflexion'),
    carried('low-back', 'held straight'),
  ],
  limb: 'leg',
  weightBearing: ['legs'],
  range: bending(90, 100, 20),
} as const;

const kneeExtension = {
  family: 'knee-extension',
  methods: ['variation', 'low-load', 'occlusion'],
  target: ['quadriceps'],
  indirect: [],
  loads: [main('knee', 'extension'), carried('hip', 'flexion')],
  limb: 'leg',
  limbsAtOnce: 'one',
  position: 'sitting',
  weightBearing: [],
  range: [through('knee', 'flexion', 0, 90), still('hip', 'flexion', 90)],
} as const;

const kneeBend = {
  family: 'knee-bend',
  target: ['hamstrings'],
  indirect: ['calves'],
  loads: [main('knee', 'flexion'), carried('hip', 'held straight')],
  limb: 'leg',
  limbsAtOnce: 'one',
  weightBearing: ['legs'],
  range: [through('knee', 'flexion', 0, 90), still('hip', 'flexion')],
} as const;

const hinge = {
  family: 'hip-hinge',
  target: ['hamstrings', 'glutes'],
  loads: [main('hip', 'extension'), main('low-back', 'held straight'), carried('knee', 'held slightly bent')],
  limb: 'leg',
  limbsAtOnce: 'both',
  position: 'standing',
  weightBearing: ['legs'],
  range: [through('hip', 'flexion', 0, 80), still('low-back', 'flexion')],
} as const;

export const thigh: readonly Exercise[] = [
  sitToStand('sit-to-stand-high-seat', 'Stand up from a high seat, 60 cm', 0.6, 'high firm seat'),
  sitToStand('sit-to-stand-raised-chair', 'Stand up from a raised chair, 55 cm', 0.55, 'raised firm chair'),
  sitToStand(
    'sit-to-stand-cushion',
    'Stand up from a chair with a firm cushion, 50 cm',
    0.5,
    'chair and firm cushion',
  ),
  sitToStand('sit-to-stand-chair', 'Stand up from a chair, seat 46 cm', 0.46, 'firm chair'),
  sitToStand('sit-to-stand-low-chair', 'Stand up from a low chair, seat 43 cm', 0.43, 'low firm chair'),
  {
    ...squat,
    id: 'squat-two-legs',
    title: 'Squat on two legs, hands near a support',
    limbsAtOnce: 'both',
    equipment: ['firm support'],
    position: 'standing',
    cautions: ['fall-risk-standing', 'hip-bend-limit', 'breath-holding'],
    setting: { kind: 'moved-mass', movement: 'squat-two-legs', addedKg: 0 },
  },
  {
    ...squat,
    id: 'squat-two-legs-weights',
    title: 'Squat on two legs with 5 kg in the hands',
    limbsAtOnce: 'both',
    equipment: ['hand weights, 5 kg together'],
    position: 'standing',
    cautions: ['fall-risk-standing', 'hip-bend-limit', 'breath-holding', 'weight-drop'],
    setting: { kind: 'moved-mass', movement: 'squat-two-legs', addedKg: 5 },
  },
  {
    ...squat,
    id: 'step-up',
    title: 'Step up on one leg',
    limbsAtOnce: 'one',
    equipment: ['firm step', 'hand rail'],
    position: 'standing',
    range: bending(75, 75, 15),
    cautions: ['fall-risk-standing', 'surface-slip'],
    setting: { kind: 'moved-mass', movement: 'squat-one-leg', addedKg: 0 },
  },
  {
    ...kneeExtension,
    id: 'knee-extension-seated',
    title: 'Straighten the knee, sitting',
    equipment: ['firm chair', 'ankle weight'],
    cautions: ['steady-seat', 'knee-end-range'],
    setting: { kind: 'limb-lift', lever: 'shank', angleDeg: 0, addedKg: 0 },
  },
  {
    ...kneeExtension,
    id: 'knee-extension-seated-one-kilo',
    title: 'Straighten the knee, sitting, 1 kg at the ankle',
    methods: ['variation'],
    equipment: ['firm chair', 'ankle weight, 1 kg'],
    cautions: ['steady-seat', 'knee-end-range'],
    setting: { kind: 'limb-lift', lever: 'shank', angleDeg: 0, addedKg: 1 },
  },
  {
    ...kneeExtension,
    id: 'knee-press-down',
    family: 'thigh-hold',
    isHeld: true,
    title: 'Press the knee down, lying or sitting',
    methods: ['variation'],
    equipment: ['rolled towel'],
    position: 'lying on the back',
    range: [through('knee', 'flexion', 0, 10), still('hip', 'flexion')],
    cautions: ['breath-holding'],
  },
  {
    ...squat,
    id: 'wall-sit',
    family: 'thigh-hold',
    isHeld: true,
    title: 'Sit against the wall and hold',
    limbsAtOnce: 'both',
    equipment: ['wall'],
    position: 'standing against a wall',
    range: [still('knee', 'flexion', 90), still('hip', 'flexion', 90)],
    cautions: ['surface-slip', 'breath-holding', 'knee-bend-pain'],
  },
  {
    ...squat,
    id: 'leg-press-band',
    family: 'band-leg-push',
    title: 'Leg press with a band',
    methods: ['variation', 'low-load', 'occlusion'],
    limbsAtOnce: 'one',
    indirect: ['calves'],
    equipment: ['band', 'firm chair'],
    position: 'sitting',
    range: [through('knee', 'flexion', 0, 100), through('hip', 'flexion', 80, 110)],
    cautions: ['band-snap', 'steady-seat', 'grip-strain'],
  },
  {
    ...kneeExtension,
    id: 'knee-extension-band',
    family: 'band-leg-push',
    title: 'Straighten the knee against a band',
    methods: ['variation', 'low-load', 'occlusion'],
    equipment: ['band', 'firm chair'],
    cautions: ['band-snap', 'steady-seat'],
  },
  {
    ...kneeBend,
    id: 'knee-bend-standing',
    title: 'Bend the knee, standing',
    methods: ['variation', 'low-load', 'occlusion'],
    loads: [...kneeBend.loads, held('knee', 'standing support'), held('hip', 'standing support')],
    equipment: ['firm support', 'ankle weight'],
    position: 'standing',
    cautions: ['fall-risk-standing'],
    setting: { kind: 'limb-lift', lever: 'shank', angleDeg: 0, addedKg: 0 },
  },
  {
    ...kneeBend,
    id: 'knee-bend-standing-one-kilo',
    title: 'Bend the knee, standing, 1 kg at the ankle',
    methods: ['variation'],
    loads: [...kneeBend.loads, held('knee', 'standing support'), held('hip', 'standing support')],
    equipment: ['firm support', 'ankle weight, 1 kg'],
    position: 'standing',
    cautions: ['fall-risk-standing'],
    setting: { kind: 'limb-lift', lever: 'shank', angleDeg: 0, addedKg: 1 },
  },
  {
    ...kneeBend,
    id: 'knee-bend-band',
    family: 'band-leg-pull',
    title: 'Bend the knee against a band, sitting',
    methods: ['variation', 'low-load', 'occlusion'],
    equipment: ['band', 'firm chair'],
    position: 'sitting',
    weightBearing: [],
    range: [through('knee', 'flexion', 0, 100), still('hip', 'flexion', 90)],
    cautions: ['band-snap', 'steady-seat'],
  },
  {
    ...hinge,
    id: 'hip-hinge-stick',
    title: 'Bow from the hips with a stick along the back',
    methods: ['variation'],
    indirect: ['trunk-back'],
    equipment: ['stick'],
    cautions: ['low-back-bend', 'fall-risk-standing'],
  },
  {
    ...hinge,
    id: 'hip-hinge-weights',
    title: 'Bow from the hips with hand weights',
    methods: ['variation', 'low-load'],
    indirect: ['trunk-back', 'forearms'],
    loads: [...hinge.loads, carried('hand', 'grip')],
    equipment: ['hand weights'],
    cautions: ['low-back-bend', 'fall-risk-standing', 'weight-drop'],
  },
];
