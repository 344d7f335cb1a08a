/**
 * Families of exercises. "computed": ordered by a figure from the person's own body; "listed": no
 * figure can be computed, so the order is common practice and no step size is shown.
 */
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
    id: 'push-up',
    title: 'Push-ups',
    about: 'From the wall down to the floor, ordered by the share of body weight on both hands together.',
    order: 'computed',
  },
  {
    id: 'bridge',
    title: 'Bridges',
    about: 'Lifting the pelvis from lying, ordered by hip-extension moment per working leg.',
    order: 'computed',
  },
  {
    id: 'heel-raise',
    title: 'Heel raises',
    about: 'Rising on the balls of the feet, ordered by load per working leg.',
    order: 'computed',
  },
  {
    id: 'knee-extension',
    title: 'Knee extension, sitting',
    about: 'Straightening the knee against gravity, ordered by knee moment.',
    order: 'computed',
  },
  {
    id: 'front-leg-raise',
    title: 'Leg raises to the front',
    about: 'Lifting the leg while lying on the back, ordered by hip moment.',
    order: 'computed',
  },
  {
    id: 'side-leg-raise',
    title: 'Leg raises to the side',
    about: 'Lifting the leg while lying on the side, ordered by hip moment.',
    order: 'computed',
  },
  {
    id: 'lean-back-row',
    title: 'Lean-back rows',
    about: 'Pulling the leaning body to fixed handles, ordered by the measured share of body weight.',
    order: 'computed',
  },
  {
    id: 'elbow-bend',
    title: 'Elbow bending',
    about: 'Curling a weight, ordered by elbow moment without the weight.',
    order: 'computed',
  },
  {
    id: 'elbow-straighten',
    title: 'Elbow straightening',
    about: 'Straightening the elbow against a weight, ordered by elbow moment without the weight.',
    order: 'computed',
  },
  {
    id: 'leg-press-band',
    title: 'Leg press with a band',
    about: 'Pushing the foot away against a band. The force comes from the band, so it has to be calibrated.',
    order: 'listed',
  },
];
