/** Exercises of the hand, each alone: which is harder than which nobody knows. */
const alone = (id: string, title: string, about: string) => ({ id, title, about, order: 'listed' as const });

export const familiesOfHand = [
  alone('putty-squeeze', 'Putty, whole hand', 'Closing the hand on putty.'),
  alone('putty-hook', 'Putty, hook', 'Bending the fingertips into putty.'),
  alone('putty-tip-pinch', 'Putty, tip pinch', 'Thumb and fingertip on putty.'),
  alone('putty-key-pinch', 'Putty, key pinch', 'Thumb against the side of the finger on putty.'),
  alone('putty-finger-spread', 'Putty, spreading', 'Opening the hand inside putty.'),
  alone('thumb-out-ring', 'Thumb out, ring', 'Moving the thumb out against a soft ring.'),
  alone(
    'finger-straighten-ring',
    'Finger straightening, ring',
    'Straightening the fingers against a soft ring.',
  ),
  alone('wrist-thumb-side-lift', 'Wrist to the thumb side, weight', 'Lifting the thumb side of the hand.'),
  alone('palm-turn', 'Palm turning, weight', 'Turning the forearm with a weight in the hand.'),
  alone('thumb-out-hold', 'Thumb out, held', 'Pressing the thumb out without movement.'),
  alone(
    'index-side-hold',
    'Index finger to the side, held',
    'Pressing the index finger to the thumb side without movement.',
  ),
  alone('tip-pinch-hold', 'Tip pinch, held', 'Thumb and fingertip pressed in a round O.'),
  alone('towel-grip-hold', 'Grip, held', 'Closing the hand on a towel without movement.'),
  alone('palm-press-hold', 'Wrist bending, held', 'Pressing the palm down without movement.'),
  alone(
    'back-of-hand-press-hold',
    'Wrist straightening, held',
    'Pressing the back of the hand up without movement.',
  ),
];
