/** A value that was not taken in person says so wherever it stands. */
import type { AtDistance } from '#core/assessment/measurements/at-distance.ts';
import { say } from '#messages/en/staff/measurements.ts';

export const withDistance = ({ atDistance }: AtDistance, value: string): string =>
  atDistance ? say(`by-${atDistance}`, { value }) : value;
