/** The short question about warning signs: asked of nobody before a clinician of the clinic has approved its words. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type CareSetting, careSetting } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

describe('the words of the short question', () => {
  it('stand unapproved at first, in every language and in full, and no phone is given the short question', async () => {
    const state = await at.clinician().clinician.shortSigns.state();
    expect(state).toMatchObject({ wording: 1, act: null, isApproved: false, mayAct: true });
    expect(state.families).toHaveLength(10);
    for (const family of state.families) {
      expect(family.en.length).toBeGreaterThan(10);
      expect(family.de).not.toBe(family.en);
    }
    expect((await at.patient().patient.today.get()).shortSignsUntil).toBeNull();
  });

  it('are approved and withdrawn by a clinician; each act stays, with who, when and which wording', async () => {
    await at.clinician().clinician.shortSigns.approve();
    const approved = await at.clinician().clinician.shortSigns.state();
    expect(approved).toMatchObject({ isApproved: true, act: { act: 'approved', wording: 1 } });
    await at.clinician().clinician.shortSigns.withdraw();
    const withdrawn = await at.clinician().clinician.shortSigns.state();
    expect(withdrawn).toMatchObject({ isApproved: false, act: { act: 'withdrawn', wording: 1 } });
    const rows = at.store.writer.client
      .prepare('SELECT act, wording, by_name AS by FROM short_signs_approval ORDER BY rowid')
      .all() as { act: string; wording: number; by: string }[];
    expect(rows.map(({ act, wording }) => [act, wording])).toEqual([
      ['approved', 1],
      ['withdrawn', 1],
    ]);
    expect(rows.every(({ by }) => by.length > 0)).toBe(true);
    expect(() => at.store.writer.client.prepare('DELETE FROM short_signs_approval').run()).toThrow();
  });

  it('are seen by an administrator, who approves nothing', async () => {
    const state = await at.administrator().clinician.shortSigns.state();
    expect(state.mayAct).toBe(false);
    await expect(at.administrator().clinician.shortSigns.approve()).rejects.toThrow();
  });
});
