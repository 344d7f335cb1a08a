/** Back: rows and pull-downs. */
import { carried, main } from '../demand.ts';
import type { Exercise } from '../exercise.ts';
import type { ExerciseId } from '../ids.ts';
import { still, through } from '../movements.ts';

const pulling = [main('shoulder', 'pulling'), main('elbow', 'flexion'), carried('hand', 'grip')];
const rowing = [through('shoulder', 'flexion', -20, 90), through('elbow', 'flexion', 0, 110)];
/** From both arms overhead, which the shoulder reaches in either plane. */
const hanging = (overheadDegrees: number) => [
  through('shoulder', 'flexion', 0, overheadDegrees),
  through('shoulder', 'abduction', 0, overheadDegrees),
  through('elbow', 'flexion', 0, 130),
];

const leanBack = (id: ExerciseId<'back'>, title: string, fromVerticalDeg: number): Exercise => ({
  id,
  family: 'lean-back-row',
  title,
  methods: ['variation'],
  target: ['upper-back', 'lats'],
  indirect: ['biceps', 'forearms', 'trunk-back'],
  loads: [...pulling, carried('low-back', 'held straight'), carried('neck', 'held straight')],
  limb: 'arm',
  limbsAtOnce: 'both',
  equipment: ['two fixed handles'],
  position: 'leaning back',
  weightBearing: ['arms', 'legs'],
  range: rowing,
  cautions: ['anchor-strength', 'surface-slip', 'grip-strain', 'breath-holding'],
  setting: { kind: 'lean-back-row', fromVerticalDeg },
});

const row = {
  family: 'seated-row',
  target: ['upper-back', 'lats'],
  limb: 'arm',
  limbsAtOnce: 'both',
  weightBearing: [],
  range: rowing,
} as const;

const overheadPull = { ...row, family: 'overhead-pull', target: ['lats', 'upper-back'] } as const;

export const back: readonly Exercise[] = [
  leanBack('row-lean-back', 'Lean-back row, body 30° from upright', 30),
  leanBack('row-lean-back-further', 'Lean-back row, body 38° from upright', 38),
  leanBack('row-lean-back-half', 'Lean-back row, body 45° from upright', 45),
  leanBack('row-lean-back-low', 'Lean-back row, body 60° from upright', 60),
  {
    ...row,
    id: 'shoulder-blade-squeeze',
    family: 'shoulder-blade-hold',
    isHeld: true,
    title: 'Squeeze the shoulder blades together',
    methods: ['variation'],
    target: ['upper-back'],
    indirect: [],
    loads: [main('shoulder', 'drawing back'), carried('neck', 'held still')],
    equipment: ['none'],
    position: 'sitting',
    range: [still('shoulder', 'extension')],
    cautions: [],
  },
  {
    ...row,
    id: 'row-band-seated',
    title: 'Row with a band, sitting',
    methods: ['variation', 'low-load'],
    indirect: ['biceps', 'forearms'],
    loads: pulling,
    equipment: ['band', 'firm chair'],
    position: 'sitting',
    cautions: ['steady-seat', 'band-snap', 'grip-strain'],
  },
  {
    ...row,
    id: 'row-one-arm-weight',
    title: 'Row with a hand weight, leaning on a table',
    methods: ['variation', 'low-load'],
    indirect: ['biceps', 'forearms', 'trunk-back'],
    loads: [...pulling, carried('low-back', 'held bent forward')],
    limbsAtOnce: 'one',
    equipment: ['hand weight', 'heavy table'],
    position: 'bent forward',
    weightBearing: ['arms', 'legs'],
    cautions: ['weight-drop', 'low-back-bend', 'grip-strain'],
  },
  {
    ...overheadPull,
    id: 'pull-down-band',
    title: 'Pull a band down from above',
    methods: ['variation', 'low-load'],
    indirect: ['biceps', 'forearms'],
    loads: pulling,
    equipment: ['band', 'high anchor'],
    position: 'sitting',
    range: hanging(170),
    cautions: ['band-snap', 'overhead-arm', 'grip-strain'],
  },
  {
    ...overheadPull,
    id: 'pull-up-foot-assisted',
    title: 'Pull-up with the feet helping',
    methods: ['variation'],
    indirect: ['biceps', 'forearms', 'trunk-front'],
    loads: pulling,
    equipment: ['fixed bar', 'firm chair'],
    position: 'hanging, feet on a chair',
    weightBearing: ['arms', 'legs'],
    range: hanging(180),
    cautions: ['steady-seat', 'anchor-strength', 'overhead-arm', 'grip-strain', 'breath-holding'],
  },
  {
    ...overheadPull,
    id: 'pull-up',
    title: 'Pull-up',
    methods: ['variation'],
    indirect: ['biceps', 'forearms', 'trunk-front'],
    loads: pulling,
    equipment: ['fixed bar'],
    position: 'hanging',
    weightBearing: ['arms'],
    range: hanging(180),
    cautions: ['anchor-strength', 'overhead-arm', 'grip-strain', 'breath-holding'],
    setting: { kind: 'moved-mass', movement: 'pull-up', addedKg: 0 },
  },
];
