/** Bridges: lifting the pelvis from lying on the back. */
import { carried, held, main } from '../demand.ts';
import type { Exercise } from '../exercise.ts';
import { through } from '../movements.ts';

const bridge = {
  family: 'bridge',
  methods: ['variation'],
  target: ['glutes'],
  limb: 'leg',
  equipment: ['mat or bed'],
  position: 'lying on the back',
  /** Feet and shoulders carry the body once the pelvis is up. */
  weightBearing: ['legs'],
  range: [through('hip', 'flexion', 0, 50), through('knee', 'flexion', 80, 100)],
} as const;
const bridgeDemand = [main('hip', 'extension'), carried('knee', 'flexion'), carried('low-back', 'extension')];

export const bridges: readonly Exercise[] = [
  {
    ...bridge,
    id: 'bridge-two-legs',
    title: 'Bridge on two legs',
    indirect: ['hamstrings', 'trunk-back'],
    loads: bridgeDemand,
    limbsAtOnce: 'both',
    cautions: ['floor-transfer', 'breath-holding', 'low-back-arch'],
    setting: { kind: 'bridge', legs: 'two', addedKg: 0 },
  },
  {
    ...bridge,
    id: 'bridge-two-legs-weight',
    title: 'Bridge on two legs with 5 kg on the hips',
    indirect: ['hamstrings', 'trunk-back'],
    loads: bridgeDemand,
    limbsAtOnce: 'both',
    equipment: ['mat or bed', 'weight, 5 kg'],
    cautions: ['floor-transfer', 'breath-holding', 'low-back-arch', 'weight-drop'],
    setting: { kind: 'bridge', legs: 'two', addedKg: 5 },
  },
  {
    ...bridge,
    id: 'bridge-one-leg-bent',
    title: 'Bridge on one leg, other foot just off the floor',
    indirect: ['hamstrings', 'trunk-back', 'trunk-front'],
    loads: [...bridgeDemand, held('hip', 'holding the leg up')],
    limbsAtOnce: 'one',
    cautions: ['floor-transfer', 'breath-holding', 'low-back-arch'],
    setting: { kind: 'bridge', legs: 'one-bent', addedKg: 0 },
  },
  {
    ...bridge,
    id: 'bridge-one-leg',
    title: 'Bridge on one leg, other leg straight',
    indirect: ['hamstrings', 'trunk-back', 'trunk-front'],
    loads: [...bridgeDemand, held('hip', 'holding the leg up'), held('knee', 'held straight')],
    limbsAtOnce: 'one',
    cautions: ['floor-transfer', 'breath-holding', 'low-back-arch'],
    setting: { kind: 'bridge', legs: 'one-straight', addedKg: 0 },
  },
];
