/** What no source fixes in occlusion work. */
import type { ClinicSetting } from '#core/sources/clinic-setting.ts';

export const occlusionSettings: readonly ClinicSetting[] = [
  {
    id: 'occlusion-pressure-valid-days',
    title: 'Days for which a measured limb occlusion pressure may be used',
    unit: 'd',
    min: 1,
    max: 84,
    whole: true,
    default: 28,
    why: 'No source gives an age. Limb size, swelling and blood pressure change over weeks; shorter measures more often.',
  },
  {
    id: 'occlusion-readings-differ-mmhg',
    title: 'Largest difference between the two readings of one measurement',
    unit: 'mm[Hg]',
    min: 5,
    max: 30,
    whole: true,
    default: 15,
    why: 'Retests lay about 5 mmHg lower on average; a larger gap says that one reading went wrong.',
  },
  {
    id: 'occlusion-systolic-change-mmhg',
    title: 'Change of resting systolic pressure after which occlusion pressure is measured again',
    unit: 'mm[Hg]',
    min: 10,
    max: 30,
    whole: true,
    default: 20,
    why: 'Systolic pressure is a part of every estimate; no source fixes how much change matters.',
  },
  {
    id: 'occlusion-circumference-change-cm',
    title: 'Change of limb circumference after which occlusion pressure is measured again',
    unit: 'cm',
    min: 1,
    max: 5,
    default: 2,
    why: 'Circumference is the strongest single part of several estimates; swelling counts as well as muscle.',
  },
  {
    id: 'wrap-tightness-target',
    title: 'Target tightness of an elastic wrap',
    unit: '{score}',
    min: 3,
    max: 7,
    whole: true,
    default: 7,
    why: 'Seven of ten is the felt moderate tightness of the studies; a clinic may ask for less, never more.',
  },
];
