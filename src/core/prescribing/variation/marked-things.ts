/**
 * What carries a number in an exercise. The catalogue says it as equipment; the phone words a dose by this and carries
 * no catalogue, so it stands here once more, and a test holds the two against each other.
 */
export type MarkedThing = 'putty' | 'ring' | 'band';

const exercisesWith: Readonly<Record<MarkedThing, readonly string[]>> = {
  band: [
    ...['leg-press-band', 'knee-extension-band', 'knee-bend-band', 'clam-band', 'toe-raise-band'],
    ...['chest-press-band', 'overhead-press-band', 'arm-turn-out-band', 'row-band-seated'],
    ...['pull-down-band', 'curl-band', 'press-down-band'],
  ],
  putty: [...['putty-squeeze', 'putty-hook', 'putty-tip-pinch', 'putty-key-pinch', 'putty-finger-spread']],
  ring: ['finger-spread', 'thumb-out-ring', 'finger-straighten-ring'],
};

const thingOf: ReadonlyMap<string, MarkedThing> = new Map(
  (['band', 'putty', 'ring'] as const).flatMap((thing) =>
    exercisesWith[thing].map((exerciseId) => [exerciseId, thing] as const),
  ),
);

/** What the number stands on; null where nothing of the exercise carries one. */
export const markedThing = (exerciseId: string): MarkedThing | null => thingOf.get(exerciseId) ?? null;
