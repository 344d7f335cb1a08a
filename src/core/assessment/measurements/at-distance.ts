/** How something was measured that was not measured by hand: by whom the patient was seen or heard at a distance. */
export const distanceWays = ['video', 'telephone'] as const;
export type DistanceWay = (typeof distanceWays)[number];

export interface AtDistance {
  /** null or left out = in person, or nobody has said. */
  readonly atDistance?: DistanceWay | null;
}

/** Kept beside a reading, so that whoever reads it knows. */
export const distanceOf = ({ atDistance }: AtDistance): { readonly atDistance?: DistanceWay } =>
  atDistance ? { atDistance } : {};

/** Of several that make one reading: only where all were taken so. */
export const distanceOfAll = ([first, ...others]: readonly AtDistance[]): AtDistance =>
  first && others.every(({ atDistance }) => atDistance === first.atDistance) ? distanceOf(first) : {};
