/** Rows of measurements, usual values and events. */
import { day, measurement, own } from './begin.ts';

export const measured = {
  measurement: [
    measurement('m-weight', { kind: 'body-mass', massKg: 71.5 }),
    measurement('m-height', { kind: 'stature', statureCm: 165 }),
    measurement('m-bp', { kind: 'blood-pressure', systolicMmhg: 126, diastolicMmhg: 78, position: 'seated' }),
    measurement('m-grip-r', { kind: 'grip', side: 'right', forceKg: 24 }),
    measurement('m-grip-l', { kind: 'grip', side: 'left', forceKg: 22 }),
    measurement('m-arm', {
      kind: 'limb-circumference',
      limb: 'arm',
      side: 'right',
      site: 'mid-upper arm',
      circumferenceCm: 31,
    }),
    measurement('m-abi', {
      kind: 'ankle-brachial-index',
      side: 'left',
      dorsalisPedisMmhg: 120,
      posteriorTibialMmhg: 118,
      brachialMmhg: [122, 124],
    }),
    measurement('m-rtf', {
      kind: 'repetitions-to-failure',
      exerciseId: 'knee-extension-seated',
      side: 'right',
      loadKg: 8,
      repetitions: 8,
    }),
    {
      ...measurement('m-own', { kind: 'patient-chosen-activity', activity: 'Stairs', score: 4 }),
      homeAnswersId: 'home-1',
    },
  ],
  effusion_test: [{ ...own('effusion-1'), joint: 'right-knee', day, grade: '1+' }],
  baseline: [
    {
      ...own('baseline-1'),
      joint: 'right-knee',
      usualPain: null,
      usualPainTop: null,
      acceptablePainLimit: 5,
      usualStiffnessMinutes: 10,
      usualSwelling: 'none',
      usualEffusion: 'zero',
      usualFatigue: null,
      setOn: day,
      reason: 'First visit',
    },
  ],
  care_event: [
    {
      ...own('event-1'),
      day,
      kind: 'steroid-course',
      joint: null,
      lastDay: '2026-03-09',
      courseForm: 'taper',
      remark: 'By the GP',
    },
  ],
  medicine_change: [{ eventId: 'event-1', act: null, medicineClass: 'steroid' }],
};
