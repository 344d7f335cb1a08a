import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { proposedWording } from '#core/episode/consent.ts';
import { cuffActs, measuredSetting } from './cuff-acts.ts';
import type { CareSetting } from './setting.ts';

let at: CareSetting;
let acts: ReturnType<typeof cuffActs>;
beforeEach(async () => {
  at = await measuredSetting();
  acts = cuffActs(at);
});
afterEach(() => at.store.close());

const treatment = (act: 'given' | 'refused' | 'withdrawn') =>
  at.clinician().clinician.consents.record({
    patientId: at.patientId,
    kind: 'treatment',
    act,
    ...proposedWording,
  });
const idsInForce = async () => {
  const { patientId } = at;
  const { inForce } = await at.clinician().clinician.prescriptions.list({ patientId });
  return inForce.map(({ id }) => id);
};

describe('consent to treatment', () => {
  it('not asked yet is named and blocks nothing', async () => {
    const { kinds } = await at.clinician().clinician.consents.list({ patientId: at.patientId });
    expect(kinds.find(({ kind }) => kind === 'treatment')?.state).toBe('not-asked');
    await acts.agree('occlusion-supervised');
    await expect(acts.sign(await acts.saveDraft(true))).resolves.toBeDefined();
  });

  it.each([
    ['refused', /Consent was refused: assessment and treatment/],
    ['withdrawn', /Consent was withdrawn: assessment and treatment/],
  ] as const)('%s lets nothing be proposed, saved or signed', async (act, words) => {
    await acts.agree('occlusion-supervised');
    const waiting = await acts.saveDraft(true);
    await treatment(act);
    await expect(acts.saveDraft(true)).rejects.toThrow(words);
    await expect(acts.sign(waiting)).rejects.toThrow(words);
    await treatment('given');
    await expect(acts.sign(waiting)).resolves.toBeDefined();
  });

  it('refused rests every exercise on the phone and ends none; given again, the same exercises go on', async () => {
    const before = await idsInForce();
    expect(before.length).toBeGreaterThan(0);
    const { ended } = await at.patient().patient.consents.refuse({ kind: 'treatment', ...proposedWording });
    expect(ended).toBe(0);
    expect(await idsInForce()).toEqual(before);
    const today = await at.patient().patient.today.get();
    expect(today.exercises.map((one) => one.today)).toEqual(before.map(() => 'rest-this-joint'));
    await at.patient().patient.consents.give({ kind: 'treatment', ...proposedWording });
    const again = await at.patient().patient.today.get();
    expect(again.exercises.map((one) => one.today)).not.toContain('rest-this-joint');
  });
});

describe('a refusal', () => {
  it('is recorded by the clinician with its reason, and shown as refused to both', async () => {
    await at.clinician().clinician.consents.record({
      patientId: at.patientId,
      kind: 'record-keeping',
      act: 'refused',
      reason: 'Wants to think about it.',
      ...proposedWording,
    });
    const mine = await at.patient().patient.consents.get();
    expect(mine.kinds.find(({ kind }) => kind === 'record-keeping')?.state).toBe('refused');
    const { rows } = await at.clinician().clinician.consents.list({ patientId: at.patientId });
    expect(rows).toMatchObject([{ act: 'refused', reason: 'Wants to think about it.' }]);
  });

  it('of keeping a record ends nothing by itself', async () => {
    await at.patient().patient.consents.refuse({ kind: 'record-keeping', ...proposedWording });
    const today = await at.patient().patient.today.get();
    expect(today.exercises.map((one) => one.today)).not.toContain('rest-this-joint');
  });

  it('of the cuff is told as refused, and ends the exercise like a withdrawal', async () => {
    await acts.agree('occlusion-supervised');
    await acts.sign(await acts.saveDraft(true));
    const { ended } = await at
      .patient()
      .patient.consents.refuse({ kind: 'occlusion-supervised', ...proposedWording });
    expect(ended).toBe(1);
    await expect(acts.saveDraft(true)).rejects.toThrow(/Consent was refused/);
  });
});
