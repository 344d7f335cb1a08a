/**
 * The hand with putty, a ring and small weights, and held without movement. Each exercise is a family of its own
 * unless one is the next of another: no order between grips and pinches is known.
 */
import { carried, main } from '../demand.ts';
import type { Exercise, JointDemand } from '../exercise.ts';
import { still, through } from '../movements.ts';

const one = { limb: 'arm', limbsAtOnce: 'one', weightBearing: [], position: 'sitting' } as const;
const small = { ...one, methods: ['variation'], target: ['hand'], indirect: ['forearms'] } as const;
const withPutty = { ...small, equipment: ['exercise putty'] } as const;
const withRing = { ...small, equipment: ['soft rubber ring'] } as const;

/** What holds against the other hand's work. */
const against = (direction: string): JointDemand => ({
  joint: 'hand',
  direction,
  share: 'carried',
  of: 'other',
});

const holding = { ...small, isHeld: true, equipment: ['none'] } as const;

const withWeight = {
  ...one,
  methods: ['variation', 'low-load'],
  target: ['forearms'],
  indirect: ['hand'],
  equipment: ['hand weight', 'table'],
  position: 'sitting, forearm on a table',
  cautions: ['weight-drop', 'grip-strain'],
} as const;

const putty: readonly Exercise[] = [
  {
    ...withPutty,
    id: 'putty-squeeze',
    family: 'putty-squeeze',
    title: 'Squeeze putty with the whole hand',
    target: ['hand', 'forearms'],
    indirect: [],
    loads: [main('finger-joint', 'grip'), carried('thumb-base', 'grip'), carried('wrist', 'held straight')],
    range: [through('finger-joint', 'flexion', 20, 80)],
    cautions: ['hand-joint-pain'],
  },
  {
    ...withPutty,
    id: 'putty-hook',
    family: 'putty-hook',
    title: 'Hook the fingertips into putty',
    loads: [main('finger-joint', 'hook grip'), carried('wrist', 'held straight')],
    range: [through('finger-joint', 'flexion', 10, 80)],
    cautions: ['hand-joint-pain'],
  },
  {
    ...withPutty,
    id: 'putty-tip-pinch',
    family: 'putty-tip-pinch',
    title: 'Pinch putty between thumb and fingertip',
    loads: [main('thumb-base', 'tip pinch'), carried('finger-joint', 'tip pinch')],
    range: [through('thumb-base', 'abduction', 20, 35)],
    cautions: ['thumb-pinch', 'hand-joint-pain'],
  },
  {
    ...withPutty,
    id: 'putty-key-pinch',
    family: 'putty-key-pinch',
    title: 'Press putty with the thumb against the side of the finger',
    loads: [main('thumb-base', 'key pinch'), carried('finger-joint', 'side pressure')],
    range: [through('thumb-base', 'flexion', 0, 15)],
    cautions: ['thumb-pinch', 'hand-joint-pain'],
  },
  {
    ...withPutty,
    id: 'putty-finger-spread',
    family: 'putty-finger-spread',
    title: 'Spread the fingers inside a ring of putty',
    loads: [main('finger-joint', 'spreading'), carried('thumb-base', 'spreading')],
    range: [through('finger-joint', 'abduction', 0, 20)],
    cautions: ['hand-joint-pain'],
  },
];

const ring: readonly Exercise[] = [
  {
    ...withRing,
    id: 'thumb-out-ring',
    family: 'thumb-out-ring',
    title: 'Move the thumb out against a rubber ring',
    loads: [main('thumb-base', 'abduction'), carried('finger-joint', 'held still')],
    range: [through('thumb-base', 'abduction', 10, 40)],
    cautions: ['band-snap'],
  },
  {
    ...withRing,
    id: 'finger-straighten-ring',
    family: 'finger-straighten-ring',
    title: 'Straighten the fingers against a rubber ring',
    loads: [main('finger-joint', 'extension'), carried('thumb-base', 'held still')],
    range: [through('finger-joint', 'flexion', 10, 60)],
    cautions: ['band-snap'],
  },
];

const weights: readonly Exercise[] = [
  {
    ...withWeight,
    id: 'wrist-thumb-side-lift',
    family: 'wrist-thumb-side-lift',
    title: 'Lift the thumb side of the hand with a weight',
    loads: [main('wrist', 'radial deviation'), carried('hand', 'grip')],
    range: [through('wrist', 'radial-deviation', -15, 20)],
  },
  {
    ...withWeight,
    id: 'palm-turn',
    family: 'palm-turn',
    title: 'Turn the palm up and down with a weight',
    loads: [main('wrist', 'turning'), carried('elbow', 'turning'), carried('hand', 'grip')],
    range: [through('wrist', 'supination', -60, 60)],
  },
];

const holds: readonly Exercise[] = [
  {
    ...holding,
    id: 'thumb-out-hold',
    family: 'thumb-out-hold',
    title: 'Press the thumb out against the other hand, held',
    loads: [main('thumb-base', 'abduction'), against('holds against')],
    range: [still('thumb-base', 'abduction', 30)],
    cautions: ['slow-press', 'breath-holding'],
  },
  {
    ...holding,
    id: 'index-side-hold',
    family: 'index-side-hold',
    title: 'Press the index finger to the thumb side against the other hand, held',
    loads: [main('finger-joint', 'abduction'), carried('thumb-base', 'held still'), against('holds against')],
    range: [still('finger-joint', 'abduction')],
    cautions: ['slow-press', 'breath-holding'],
  },
  {
    ...holding,
    id: 'tip-pinch-hold',
    family: 'tip-pinch-hold',
    title: 'Round O, thumb and fingertip pressed together, held',
    loads: [main('thumb-base', 'tip pinch'), carried('finger-joint', 'tip pinch')],
    range: [still('thumb-base', 'abduction', 35)],
    cautions: ['thumb-pinch', 'slow-press', 'breath-holding'],
  },
  {
    ...holding,
    id: 'towel-grip-hold',
    family: 'towel-grip-hold',
    title: 'Grip a rolled towel, held',
    target: ['hand', 'forearms'],
    indirect: [],
    equipment: ['rolled towel'],
    loads: [main('hand', 'grip'), carried('wrist', 'held straight')],
    range: [still('hand', 'flexion', 60)],
    cautions: ['hand-joint-pain', 'slow-press', 'breath-holding'],
  },
  {
    ...holding,
    id: 'palm-press-hold',
    family: 'palm-press-hold',
    title: 'Press the palm down on a table, held',
    target: ['forearms'],
    indirect: ['hand'],
    equipment: ['table'],
    position: 'sitting, forearm on a table',
    loads: [main('wrist', 'flexion'), carried('finger-joint', 'held straight')],
    range: [still('wrist', 'flexion')],
    cautions: ['slow-press', 'breath-holding'],
  },
  {
    ...holding,
    id: 'back-of-hand-press-hold',
    family: 'back-of-hand-press-hold',
    title: 'Press the back of the hand up under a table, held',
    target: ['forearms'],
    indirect: ['hand'],
    equipment: ['heavy table'],
    position: 'sitting, hand under a table',
    loads: [main('wrist', 'extension'), carried('finger-joint', 'held straight')],
    range: [still('wrist', 'extension')],
    cautions: ['slow-press', 'breath-holding'],
  },
];

export const handExercises: readonly Exercise[] = [...putty, ...ring, ...weights, ...holds];
