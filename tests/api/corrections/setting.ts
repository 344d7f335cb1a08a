/** A patient with one signed exercise of 4 kg, and what is asked of every correction. */
import { screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import { type CareSetting, firstDay } from '#tests/api/episode/setting.ts';

export const reason = 'Typed on the wrong line.';

export const sheetWith = (yes: readonly string[]) => ({
  sheetVersion: screeningSheetVersion,
  answers: screeningItems.map(({ id }) => ({
    item: id,
    answer: yes.includes(id) ? ('yes' as const) : ('no' as const),
  })),
});

export const pressureOf = (systolicMmhg: number, diastolicMmhg: number, day = firstDay) => ({
  kind: 'blood-pressure',
  day,
  systolicMmhg,
  diastolicMmhg,
  position: 'seated',
});

export const baselineOf = (over: object = {}) => ({
  joint: 'right-knee',
  usualPain: 3,
  usualPainTop: 4,
  acceptablePainLimit: 6,
  usualStiffnessMinutes: 15,
  usualSwelling: 'slight',
  usualEffusion: 'trace',
  reason: 'Asked and agreed.',
  ...over,
});

type Subject = Parameters<
  ReturnType<CareSetting['clinician']>['clinician']['corrections']['entries']
>[0]['subject'];

export const correctionsAt = (at: CareSetting) => {
  const { patientId } = at;
  const of = (day = 0, time = '09:00') => at.clinician(day, time).clinician.corrections;
  return {
    /** Id of the newest entry of a subject. */
    newest: async (subject: Subject) => (await of().entries({ patientId, subject }))[0]!.id,
    correct: (subject: Subject, subjectId: string, replacement?: object, day?: number, time?: string) =>
      of(day, time).enterInError({ patientId, subject, subjectId, reason, replacement, confirmed: true }),
    seen: (correctionId: string, day?: number, time?: string) =>
      of(day, time).acknowledgePlan({ patientId, correctionId }),
    list: () => of().list({ patientId }),
  };
};
