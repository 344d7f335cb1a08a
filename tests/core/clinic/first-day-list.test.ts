/** What a new clinic settles before its first patient: each job under each condition. */
import { describe, expect, it } from 'vitest';
import { type ClinicStart, type FirstDayJob, firstDayList } from '#core/clinic/first-day-list.ts';

const ready: ClinicStart = {
  name: 'Harbour Clinic',
  phone: '020 913 0140',
  urgentNumber: '116 117',
  monitoringHours: [{ days: ['Mon'], from: '08:00', to: '12:00' }],
  coveringClinician: { name: 'Piotr', isActive: true },
  clinicians: 2,
  ownWordings: 7,
  wordings: 7,
};
const job = (name: FirstDayJob['job'], start: Partial<ClinicStart>): FirstDayJob =>
  firstDayList({ ...ready, ...start }).find((one) => one.job === name)!;

describe('the first-day list', () => {
  it('has nothing open once all of it is settled', () => {
    expect(firstDayList(ready).filter(({ isDone }) => !isDone)).toEqual([]);
  });

  it.each([
    [{ urgentNumber: null }, ['urgent-number']],
    [{ urgentNumber: ' ' }, ['urgent-number']],
    [{ name: '', phone: '' }, ['name', 'phone']],
  ])('names the numbers of the clinic that are missing: %o', (start, missing) => {
    expect(job('clinic-numbers', start)).toMatchObject({ isDone: false, missing });
  });

  it('leaves the monitoring hours open while there are none', () => {
    expect(job('monitoring-hours', { monitoringHours: [] }).isDone).toBe(false);
  });

  it.each([
    [0, false],
    [1, false],
    [2, true],
    [3, true],
  ])('asks for a second clinician until two can sign in: %i', (clinicians, isDone) => {
    expect(job('second-clinician', { clinicians }).isDone).toBe(isDone);
  });

  it.each([
    [null, 'nobody', false],
    [{ name: 'Piotr', isActive: false }, 'left', false],
    [{ name: 'Piotr', isActive: true }, 'named', true],
  ])('a covering clinician is named only while that person can sign in: %o', (named, state, isDone) => {
    expect(job('covering-clinician', { coveringClinician: named })).toMatchObject({ state, isDone });
  });

  it.each([
    [0, false],
    [6, false],
    [7, true],
  ])('the consent wording is done when every one is the clinic’s own: %i of 7', (ownWordings, isDone) => {
    expect(job('consent-wording', { ownWordings }).isDone).toBe(isDone);
  });
});
