/** The number patients ring when nobody answers at the clinic: a field of the clinic of its own. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { urgentNumberInWords } from '#core/episode/urgent-number.ts';
import { type CareSetting, careSetting } from './episode/setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const shown = async () => {
  const { clinic } = await at.patient().patient.today.get();
  return [clinic.emergencyNumber, clinic.urgentNumber];
};

describe('the urgent number', () => {
  it('is on the phone the emergency number until the clinic has entered one, and then that one', async () => {
    expect(await at.administrator().admin.care.numbers()).toEqual({
      emergencyNumber: '112',
      urgentNumber: null,
    });
    expect(await shown()).toEqual(['112', '112']);
    await at.administrator().admin.care.enterUrgentNumber({ urgentNumber: ' 116 117 ' });
    expect(await shown()).toEqual(['112', '116\u00a0117']);
    for (const page of [
      await at
        .patient()
        .patient.preVisit.questions()
        .then(({ clinic }) => clinic),
      await at.patient().patient.messages.get(),
      await at.patient().patient.consents.get(),
    ])
      expect(page.urgentNumber).toBe('116 117');
  });

  it.each(['', 'the doctor', '+', '1'.repeat(31)])(
    'that is no telephone number is refused and changes nothing: “%s”',
    async (urgentNumber) => {
      await expect(at.administrator().admin.care.enterUrgentNumber({ urgentNumber })).rejects.toThrow();
      expect(await shown()).toEqual(['112', '112']);
    },
  );

  it('that is missing is said on the administration page, with what to enter and what stands meanwhile', () => {
    const said = (urgentNumber: string | null) =>
      urgentNumberInWords({ emergencyNumber: '112', urgentNumber });
    expect(said(null)).toContain('Enter the number patients ring when nobody answers at the clinic.');
    expect(said(null)).toContain('the emergency number, 112');
    expect(said('116 117')).toContain('Patients are told to ring 116 117');
  });
});
