/** The papers at the end of care, from the record through the procedures. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { allNo } from '#tests/support/working-patient.ts';
import { type CareSetting, careSetting, change, episode, inCare, kneeRequest } from './setting.ts';

describe('the papers at the end of care', () => {
  let at: CareSetting;
  beforeEach(async () => {
    at = await careSetting();
  });
  afterEach(() => at.store.close());

  it('are not put together while care goes on, after a death, or for an episode that does not exist', async () => {
    const { patientId } = at;
    const episodeId = await inCare(at);
    const { clinician: staff } = at.clinician(10);
    expect(await staff.documents.get({ patientId, episodeId })).toBeNull();
    expect(await staff.documents.get({ patientId, episodeId: 'none' })).toBeNull();
    await staff.episodes.change({ patientId, change: change(episodeId, 'died', '2026-03-12') });
    expect(await staff.documents.get({ patientId, episodeId })).toBeNull();
  });

  it('after a discharge name the exercise that was in force until then, who signed it and who closed', async () => {
    const { patientId } = at;
    const episodeId = await inCare(at);
    const { clinician: staff } = at.clinician(10);
    await staff.episodes.change({ patientId, change: change(episodeId, 'discharged', '2026-03-12') });
    const documents = await at.clinician(30).clinician.documents.get({ patientId, episodeId });
    expect(documents?.selfManagement?.from).toEqual([documents?.facts.clinic.name, expect.any(String)]);
    expect(documents?.facts).toMatchObject({
      from: '2026-03-02',
      end: { on: '2026-03-12', state: 'discharged', by: 'clinician-a' },
      careGoesOn: false,
      lines: [{ itemId: at.item.itemId, atEnd: true, last: { signedName: 'clinician-a' } }],
      log: { sessions: 0, plannedDays: null, mornings: 0, daysWithoutMorning: 10 },
    });
  });

  it('show an exercise that ended before the discharge as ended', async () => {
    const { patientId } = at;
    const episodeId = await inCare(at);
    const { prescriptionId } = at.item;
    await at.clinician(5).clinician.prescriptions.end({ patientId, prescriptionId, reason: 'Done with it.' });
    await at
      .clinician(10)
      .clinician.episodes.change({ patientId, change: change(episodeId, 'discharged', '2026-03-12') });
    const documents = await at.clinician(30).clinician.documents.get({ patientId, episodeId });
    expect(documents?.facts.lines).toMatchObject([{ atEnd: false, last: { endedOn: '2026-03-07' } }]);
  });

  it('of a second episode begin with what was signed anew on a line taken up again, and leave those of the first as they were', async () => {
    const { patientId } = at;
    const firstId = await inCare(at);
    const discharged = (episodeId: string, on: string) => change(episodeId, 'discharged', on);
    await at
      .clinician(10)
      .clinician.episodes.change({ patientId, change: discharged(firstId, '2026-03-12') });
    const before = await at.clinician(11).clinician.documents.get({ patientId, episodeId: firstId });
    const { clinician: staff } = at.clinician(20);
    const secondId = await staff.episodes.open({ patientId, episode, reason: 'Pain is back.' });
    await staff.episodes.change({ patientId, change: change(secondId, 'active', '2026-03-22') });
    await staff.screening.record({ patientId, screening: allNo() });
    const { itemId } = at.item;
    const prescriptionId = await staff.prescriptions.saveDraft({
      patientId,
      request: { ...kneeRequest, percent: 30 },
      itemId,
    });
    await at.clinician(21).clinician.prescriptions.sign({ patientId, prescriptionId });
    await at
      .clinician(30)
      .clinician.episodes.change({ patientId, change: discharged(secondId, '2026-04-01') });
    const later = at.clinician(31).clinician.documents;
    const second = await later.get({ patientId, episodeId: secondId });
    expect(second?.facts.lines.map((line) => [line.first.signedOn, line.last.signedOn, line.atEnd])).toEqual([
      ['2026-03-23', '2026-03-23', true],
    ]);
    const first = await later.get({ patientId, episodeId: firstId });
    expect(first?.facts.lines).toEqual(before?.facts.lines);
    expect(first?.facts.lines[0]?.last.signedOn).toBe('2026-03-02');
  });
});
