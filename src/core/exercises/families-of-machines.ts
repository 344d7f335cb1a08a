/** Families of exercises on machines of the clinic. No figure can be computed: what a machine makes of its kilograms is not known. */
const machine = (id: string, title: string, about: string) => ({
  id,
  title,
  about: `${about} By the kilograms on the machine, which do not compare with another one.`,
  order: 'listed' as const,
});

export const familiesOfMachines = [
  machine('leg-press-machine', 'Leg press, machine', 'Pushing a plate away with the legs.'),
  machine('knee-extension-machine', 'Knee extension, machine', 'Straightening the knee against a pad.'),
  machine('leg-curl-machine', 'Leg curl, machine', 'Bending the knee against a pad.'),
  machine('chest-press-machine', 'Chest press, machine', 'Pushing handles away in front of the chest.'),
  machine('cable-row', 'Row, cable', 'Pulling a handle towards the body.'),
  machine('cable-pull-down', 'Pull-down, cable', 'Pulling a bar down from above.'),
];
