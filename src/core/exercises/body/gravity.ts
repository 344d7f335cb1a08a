/** Standard acceleration of free fall, m/s², by which a mass becomes a weight in every statics model here. */
export const gravity = 9.80665;

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const degrees = (angle: number): number => (angle * 180) / Math.PI;
