/** What the rows of an invented record begin with. */

export const at = Date.parse('2026-03-02T09:00:00Z');
export const day = '2026-03-02';
export const by = 'clinician-1';
export const own = (id: string) => ({ id, recordedAt: at, recordedBy: by, byName: 'Ada Quill' });
export const entry = (id: string) => ({
  ...{
    id,
    entryId: `entry-${id}`,
    digest: 'd',
    format: 6,
    day,
    zone: 'Europe/Lisbon',
    sentAt: at,
    arrivedAt: at,
  },
  ...{ clockDoubtful: false, enteredBy: 'sign-in-of-patient', enteredAs: null, amends: null, redFlags: [] },
  ...{ extraPainRelief: false, signsAsked: null, signSlips: null },
});

export const measurement = (id: string, value: object) => ({
  ...own(id),
  day,
  kind: (value as { kind: string }).kind,
  value: { day, ...value },
  figure: 1,
  confirmed: false,
  homeAnswersId: null,
});
