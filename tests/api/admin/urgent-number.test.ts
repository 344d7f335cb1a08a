/** The number patients ring when nobody answers at the clinic: a field of the clinic of its own. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type CareSetting, careSetting } from '../episode/setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const shown = async () => {
  const { clinic } = await at.patient().patient.today.get();
  return [clinic.emergencyNumber, clinic.urgentNumber];
};

const enter = (value: string) =>
  at.administrator().admin.clinicDetails.enter({ detail: 'urgent-number', value, seen: null });

describe('the urgent number', () => {
  it('is on the phone the emergency number until the clinic has entered one, and then that one', async () => {
    expect((await at.administrator().admin.clinicDetails.get()).texts).toMatchObject({
      'emergency-number': '112',
      'urgent-number': null,
    });
    expect(await shown()).toEqual(['112', '112']);
    await enter(' 116 117 ');
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
      await expect(enter(urgentNumber)).rejects.toThrow();
      expect(await shown()).toEqual(['112', '112']);
    },
  );
});
