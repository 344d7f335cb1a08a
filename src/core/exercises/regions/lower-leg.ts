/** Lower leg: heel raises and toe raises. */
import { carried, main } from '../demand.ts';
import type { Exercise } from '../exercise.ts';

const heelRaise = {
  family: 'heel-raise',
  methods: ['variation'],
  target: ['calves'],
  loads: [main('ankle', 'plantarflexion'), carried('foot', 'push-off'), carried('knee', 'held straight')],
  limb: 'leg',
  position: 'standing',
} as const;

const shin = {
  family: 'toe-raise',
  target: ['shins'],
  indirect: [],
  loads: [main('ankle', 'dorsiflexion')],
  limb: 'leg',
} as const;

export const lowerLeg: readonly Exercise[] = [
  {
    ...heelRaise,
    id: 'heel-raise-two-legs',
    title: 'Heel raise on two legs',
    indirect: [],
    limbsAtOnce: 'both',
    equipment: ['firm support'],
    cautions: ['fall-risk-standing'],
    setting: { kind: 'heel-raise', legs: 'two', addedKg: 0 },
  },
  {
    ...heelRaise,
    id: 'heel-raise-two-legs-weight',
    title: 'Heel raise on two legs with 5 kg in a backpack',
    indirect: [],
    loads: [...heelRaise.loads, carried('low-back', 'carrying')],
    limbsAtOnce: 'both',
    equipment: ['firm support', 'backpack, 5 kg'],
    cautions: ['fall-risk-standing'],
    setting: { kind: 'heel-raise', legs: 'two', addedKg: 5 },
  },
  {
    ...heelRaise,
    id: 'heel-raise-one-leg',
    title: 'Heel raise on one leg',
    indirect: ['hip-abductors'],
    limbsAtOnce: 'one',
    equipment: ['firm support'],
    cautions: ['fall-risk-standing', 'toe-joint'],
    setting: { kind: 'heel-raise', legs: 'one', addedKg: 0 },
  },
  {
    ...heelRaise,
    id: 'heel-raise-seated',
    family: 'heel-raise-seated',
    title: 'Heel raise, sitting, weight on the thigh',
    methods: ['low-load', 'occlusion'],
    indirect: [],
    loads: [main('ankle', 'plantarflexion'), carried('foot', 'push-off')],
    limbsAtOnce: 'one',
    equipment: ['firm chair', 'weight'],
    position: 'sitting',
    cautions: ['steady-seat', 'weight-drop'],
  },
  {
    ...shin,
    id: 'toe-raise-seated',
    title: 'Lift the front of the foot, sitting',
    methods: ['variation'],
    limbsAtOnce: 'both',
    equipment: ['firm chair'],
    position: 'sitting',
    cautions: ['steady-seat'],
  },
  {
    ...shin,
    id: 'toe-raise-standing',
    title: 'Lift the front of the foot, back against a wall',
    methods: ['variation'],
    loads: [...shin.loads, carried('knee', 'held straight')],
    limbsAtOnce: 'both',
    equipment: ['wall'],
    position: 'standing against a wall',
    cautions: ['fall-risk-standing', 'surface-slip'],
  },
  {
    ...shin,
    id: 'toe-raise-band',
    title: 'Pull the foot up against a band',
    methods: ['variation', 'low-load', 'occlusion'],
    limbsAtOnce: 'one',
    equipment: ['band'],
    position: 'sitting',
    cautions: ['band-snap'],
  },
];
