/** What a clinic decides about the patient's day. No source fixes these. */
import type { ClinicSetting } from '#core/sources/clinic-setting.ts';

export const programmeSettings = [
  {
    id: 'ask-two-hours',
    title: 'Ask for the pain two hours after a session (1) or not (0)',
    unit: '1',
    min: 0,
    max: 1,
    whole: true,
    default: 0,
    why: 'The next morning decides. One more question a session is one more that may stay open, and an open one holds the load.',
  },
  {
    id: 'late-morning-days',
    title: 'Days after which a forgotten morning check may still be given',
    unit: 'd',
    min: 0,
    max: 3,
    whole: true,
    default: 1,
    why: 'Yesterday is remembered; the day before is guessed. A later answer is kept and shown, and counts as missing.',
  },
  {
    id: 'gap-first-session',
    title:
      'First session after a break (the days of rule A2): the easier one (0) or a call to the clinic first (1)',
    unit: '1',
    min: 0,
    max: 1,
    whole: true,
    default: 0,
    why: 'Tolerance to load is lost before strength is. The easier session is signed for days like that; with 1 nothing is done until the dose is written anew.',
  },
  {
    id: 'old-page-days',
    title: 'Days for which a phone without signal may go on by the last page it was given',
    unit: 'd',
    min: 0,
    max: 14,
    whole: true,
    default: 3,
    why: 'The clinic may have eased or stopped the dose meanwhile. Longer keeps somebody training in a valley; shorter asks for a call sooner.',
  },
  {
    id: 'whole-sign-list',
    title:
      'Ask for warning signs by the whole list every time (1) or, where its words are approved, by the short question on most days (0)',
    unit: '1',
    min: 0,
    max: 1,
    whole: true,
    default: 0,
    why: 'A list of fifteen read three times a day is soon not read. The whole one is asked before the first session, after a sign, after a change of method and after seven days all the same, and is one press away.',
  },
  {
    id: 'same-muscle-rest-days',
    title: 'Days between two days of work for the same muscle, below which the week is named as crowded',
    unit: 'd',
    min: 1,
    max: 3,
    whole: true,
    default: 2,
    why: 'Two means one day off between. It names a conflict and stops nothing.',
  },
  {
    id: 'exercise-change-seconds',
    title: 'Time counted for changing from one exercise to the next',
    unit: 's',
    min: 0,
    max: 300,
    whole: true,
    default: 60,
    why: 'Sore hands change a weight slowly. Only the estimated length of a session rests on it.',
  },
  {
    id: 'longest-session-minutes',
    title: 'Estimated length of a session above which it is named as long',
    unit: 'min',
    min: 15,
    max: 120,
    whole: true,
    default: 45,
    why: 'A session at home that takes much longer is left out first on a bad week.',
  },
] as const satisfies readonly ClinicSetting[];

export type ProgrammeSettingId = (typeof programmeSettings)[number]['id'];
