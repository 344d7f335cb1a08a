import { carried, main } from '../demand.ts';
import type { Exercise } from '../exercise.ts';

export const back: readonly Exercise[] = [
  {
    id: 'row-lean-back',
    family: 'lean-back-row',
    title: 'Lean-back row, body 30° from upright',
    methods: ['variation'],
    target: ['upper-back', 'lats'],
    indirect: ['biceps', 'forearms'],
    loads: [
      main('shoulder', 'pulling'),
      main('elbow', 'flexion'),
      carried('hand', 'grip'),
      carried('low-back', 'held straight'),
    ],
    limb: 'arm',
    limbsAtOnce: 'both',
    equipment: ['fixed handles'],
    position: 'leaning back',
    cautions: ['anchor-strength', 'surface-slip'],
    instructions: [
      'Hold both handles.',
      'Stand under the anchor and lean back a little.',
      'Pull your chest to the handles.',
      'Go back slowly. Keep your body straight.',
    ],
    setting: { kind: 'lean-back-row', fromVerticalDeg: 30 },
  },
];
