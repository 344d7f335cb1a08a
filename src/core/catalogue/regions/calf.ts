import { carried, main } from '../demand.ts';
import type { Exercise } from '../exercise.ts';

export const calf: readonly Exercise[] = [
  {
    id: 'heel-raise-two-legs',
    family: 'heel-raise',
    title: 'Heel raise on two legs',
    methods: ['variation'],
    target: ['calves'],
    indirect: [],
    loads: [main('ankle', 'plantarflexion'), carried('foot', 'push-off'), carried('knee', 'held straight')],
    limb: 'leg',
    limbsAtOnce: 'both',
    equipment: ['firm support'],
    position: 'standing',
    cautions: ['fall-risk-standing'],
    instructions: ['Hold on to a firm support.', 'Rise up on your toes.', 'Lower slowly.'],
    setting: { kind: 'heel-raise', legs: 'two', addedKg: 0 },
  },
  {
    id: 'heel-raise-one-leg',
    family: 'heel-raise',
    title: 'Heel raise on one leg',
    methods: ['variation'],
    target: ['calves'],
    indirect: ['hip-abductors'],
    loads: [main('ankle', 'plantarflexion'), carried('foot', 'push-off'), carried('knee', 'held straight')],
    limb: 'leg',
    limbsAtOnce: 'one',
    equipment: ['firm support'],
    position: 'standing',
    cautions: ['fall-risk-standing'],
    instructions: [
      'Hold on to a firm support.',
      'Stand on one leg.',
      'Rise up on your toes.',
      'Lower slowly.',
    ],
    setting: { kind: 'heel-raise', legs: 'one', addedKg: 0 },
  },
];
