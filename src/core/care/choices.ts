/** What no source fixes in the care around a dose. */
import type { ClinicChoice } from '../clinic-choice.ts';

export const careChoices: readonly ClinicChoice[] = [
  {
    id: 'deputy-after-hours',
    title: 'Hours after which danger nobody has acknowledged passes to the deputy',
    unit: 'h',
    min: 1,
    max: 72,
    whole: true,
    default: 4,
    why: 'Half a working day. Longer leaves a warning sign with somebody who may be away; shorter interrupts two people for one call. Counted around the clock, not in cover hours.',
  },
];
