/** When the worklist speaks up. No source fixes these. */
import type { ClinicSetting } from '../sources/clinic-setting.ts';

export const worklistSettings: readonly ClinicSetting[] = [
  {
    id: 'worklist-missing-mornings',
    title: 'Days without a morning answer before the patient is listed',
    unit: 'd',
    min: 1,
    max: 14,
    whole: true,
    default: 3,
    why: 'Three days tell a forgotten evening from silence; fewer lists people who had a busy weekend.',
  },
  {
    id: 'covering-clinician-after-hours',
    title: 'Hours after which an unacknowledged urgent item passes to the covering clinician',
    unit: 'h',
    min: 1,
    max: 72,
    whole: true,
    default: 4,
    why: 'Half a working day. Longer leaves a warning sign with somebody who may be away; shorter interrupts two people for one call. Counted around the clock, not in monitoring hours.',
  },
];
