/**
 * Choices tried on invented people to go past version 2, each off as delivered, and the set that a clinic switches
 * on together as "version 3". The table of rules stays that of version 2. Nothing of it was seen in a person.
 */
import type { ClinicSetting, SettingValues } from '../sources/clinic-setting.ts';

const count = { unit: '1', whole: true } as const;

export const version3Settings = [
  {
    id: 'swap-rise',
    title: 'Points over usual pain from which pain before the session swaps it',
    ...count,
    min: 1,
    max: 2,
    default: 1,
    why: 'Under a score of 5 nothing is swapped. At 1 people whose usual pain is high were given the easier session for ordinary scatter; 2 exceeds the error of a rating in knee osteoarthritis.',
  },
  {
    id: 'swap-once',
    title: 'Pain before a session swaps that session alone',
    ...count,
    min: 0,
    max: 1,
    default: 0,
    why: 'Without it the next session is easier as well, whatever is answered before it. Pain is asked again before each session.',
  },
  {
    id: 'tolerated-sessions',
    title: 'Sessions without a complaint that make a dose a tolerated one',
    ...count,
    min: 1,
    max: 3,
    default: 1,
    why: 'One good session can be luck. Back to a dose leads only from a tolerated one.',
  },
  {
    id: 'flare-easier-days',
    title: 'Days of a flare in which the easier session stands in for a cut (0 = none)',
    unit: 'd',
    whole: true,
    min: 0,
    max: 7,
    default: 0,
    why: 'Three of four flares in knee osteoarthritis last eight days or less. A cut outlasts them; the easier session ends with them.',
  },
  {
    id: 'tolerated-cut-rise',
    title: 'Points over usual, on two of three mornings, for a cut of a tolerated dose (0 = cut at once)',
    ...count,
    min: 0,
    max: 3,
    default: 0,
    why: 'A dose the joint has borne is not cut for one sore day. Severe pain, swelling, a broken-off session and long flares cut at once as before.',
  },
] as const satisfies readonly ClinicSetting[];

/** What "version 3" sets; everything else stays as the clinic has it. */
export const version3: SettingValues = {
  'engine-version': 2,
  'repetition-step': 1,
  'swap-rise': 2,
  'swap-once': 1,
  'tolerated-sessions': 2,
  'flare-easier-days': 7,
  'tolerated-cut-rise': 2,
};
