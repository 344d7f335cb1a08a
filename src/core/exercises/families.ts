/**
 * Families of exercises. "computed": ordered by a figure from the person's own body; "listed": no
 * figure can be computed, so the order is common practice and no step size is shown.
 */
import { familiesOfHand } from './families-of-hand.ts';
import { familiesOfMachines } from './families-of-machines.ts';

export interface Family {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly order: 'computed' | 'listed';
}

export const families: readonly Family[] = [
  {
    id: 'sit-to-stand',
    title: 'Sit to stand',
    about: 'Standing up from a seat. The lower the seat, the harder for knee and hip, by measured ratios.',
    order: 'computed',
  },
  {
    id: 'squat',
    title: 'Squat and step',
    about: 'Bending and straightening the legs, ordered by the mass moved per working leg.',
    order: 'computed',
  },
  {
    id: 'knee-extension',
    title: 'Knee extension, sitting',
    about: 'Straightening the knee against gravity, ordered by knee moment.',
    order: 'computed',
  },
  {
    id: 'thigh-hold',
    title: 'Thigh holds',
    about: 'Tightening the thigh without movement. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'band-leg-push',
    title: 'Leg against a band, pushing',
    about: 'The force comes from the band, so calibrate it. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'knee-bend',
    title: 'Knee bending, standing',
    about: 'Bending the knee against gravity, ordered by knee moment.',
    order: 'computed',
  },
  {
    id: 'band-leg-pull',
    title: 'Leg against a band, pulling',
    about: 'The force comes from the band, so calibrate it.',
    order: 'listed',
  },
  {
    id: 'hip-hinge',
    title: 'Hip hinge',
    about: 'Bowing from the hips with a straight back. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'bridge',
    title: 'Bridges',
    about: 'Lifting the pelvis from lying, ordered by hip-extension moment per working leg.',
    order: 'computed',
  },
  {
    id: 'front-leg-raise',
    title: 'Leg raises to the front',
    about: 'Lifting the leg to the front, ordered by hip moment.',
    order: 'computed',
  },
  {
    id: 'side-leg-raise',
    title: 'Leg raises to the side',
    about: 'Lifting the leg to the side, ordered by hip moment.',
    order: 'computed',
  },
  {
    id: 'rear-leg-raise',
    title: 'Leg raises to the back',
    about: 'Lifting the leg to the back, ordered by hip moment.',
    order: 'computed',
  },
  {
    id: 'inner-thigh',
    title: 'Inner thigh',
    about: 'Drawing the legs together. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'inner-thigh-hold',
    title: 'Inner thigh, held',
    about: 'Pressing the knees together without movement.',
    order: 'listed',
  },
  {
    id: 'hip-turn-out',
    title: 'Turning the hip out',
    about: 'Opening the knees lying on the side. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'heel-raise',
    title: 'Heel raises',
    about: 'Rising on the balls of the feet, ordered by load per working leg.',
    order: 'computed',
  },
  {
    id: 'heel-raise-seated',
    title: 'Heel raise, sitting',
    about: 'Lifting the heel against a weight on the thigh.',
    order: 'listed',
  },
  {
    id: 'toe-raise',
    title: 'Toe raises',
    about: 'Lifting the front of the foot. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'push-up',
    title: 'Push-ups',
    about: 'From the wall down to the floor, ordered by the share of body weight on both hands together.',
    order: 'computed',
  },
  {
    id: 'chest-press',
    title: 'Chest presses',
    about: 'Pushing a band or weights away from the chest. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'overhead-press',
    title: 'Overhead presses',
    about: 'Pushing a band or weights overhead. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'front-arm-raise',
    title: 'Arm raises to the front',
    about: 'Lifting the arm to the front, ordered by shoulder moment.',
    order: 'computed',
  },
  {
    id: 'side-arm-raise',
    title: 'Arm raises to the side',
    about: 'Lifting the arm to the side, ordered by shoulder moment.',
    order: 'computed',
  },
  {
    id: 'arm-turn',
    title: 'Turning the arm out',
    about: 'Turning the upper arm against a hold or a band. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'arm-turn-hold',
    title: 'Turning the arm out, held',
    about: 'Pressing outwards without movement.',
    order: 'listed',
  },
  {
    id: 'lean-back-row',
    title: 'Lean-back rows',
    about: 'Pulling the leaning body to fixed handles, ordered by the measured share of body weight.',
    order: 'computed',
  },
  {
    id: 'seated-row',
    title: 'Rows with band or weight',
    about: 'Drawing the elbows back. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'overhead-pull',
    title: 'Pulling from above',
    about: 'From a band to the whole body. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'elbow-bend',
    title: 'Elbow bending',
    about: 'Curling a weight, ordered by elbow moment.',
    order: 'computed',
  },
  {
    id: 'elbow-straighten',
    title: 'Elbow straightening',
    about: 'Straightening the elbow against a weight, ordered by elbow moment.',
    order: 'computed',
  },
  {
    id: 'band-arm-bend',
    title: 'Elbow bending with a band',
    about: 'The force comes from the band, so calibrate it.',
    order: 'listed',
  },
  {
    id: 'band-arm-straighten',
    title: 'Elbow straightening with a band',
    about: 'The force comes from the band, so calibrate it.',
    order: 'listed',
  },
  {
    id: 'wrist-weight',
    title: 'Wrist with a weight',
    about: 'Bending the wrist up or back. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'grip',
    title: 'Grip',
    about: 'Closing the hand. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'finger-spread',
    title: 'Finger spreading',
    about: 'Opening the hand against a soft ring.',
    order: 'listed',
  },
  ...familiesOfHand,
  {
    id: 'trunk-front',
    title: 'Front of the trunk',
    about: 'Keeping the trunk still against arms and legs. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'belly-press',
    title: 'Low back pressed down',
    about: 'Pressing the low back down without movement.',
    order: 'listed',
  },
  {
    id: 'front-plank',
    title: 'Front of the trunk, held',
    about: 'Holding the body straight on the forearms. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'trunk-back',
    title: 'Back of the trunk',
    about: 'Holding or lifting the back. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'trunk-side',
    title: 'Side of the trunk',
    about: 'Holding the trunk sideways.',
    order: 'listed',
  },
  {
    id: 'neck-hold',
    title: 'Neck holds',
    about: 'Holding the head against light pressure. Order by common practice.',
    order: 'listed',
  },
  {
    id: 'shoulder-blade-hold',
    title: 'Shoulder blades, held',
    about: 'Pulling the shoulder blades together without moving the arms.',
    order: 'listed',
  },
  {
    id: 'chin-draw',
    title: 'Chin drawn in',
    about: 'Drawing the chin straight back.',
    order: 'listed',
  },
  ...familiesOfMachines,
];

export const familyById = (id: string): Family | undefined => families.find((family) => family.id === id);
