import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { proposedWording } from '#core/episode/consent.ts';
import { asTyped } from '#messages/text.ts';
import { cuffActs, measuredSetting, wrap } from './cuff-acts.ts';
import type { CareSetting } from './setting.ts';

let at: CareSetting;
let acts: ReturnType<typeof cuffActs>;
beforeEach(async () => {
  at = await measuredSetting();
  acts = cuffActs(at);
});
afterEach(() => at.store.close());

const site = { limb: 'leg', side: 'right' };
const homeEligible = async () => {
  const { patientId } = at;
  const watch = (day: number) =>
    at.clinician(day).clinician.visits.watch({
      patientId,
      session: {
        ...site,
        day: at.accessOn(day).day,
        supervisedThroughout: true,
        remoteReason: null,
        remark: null,
      },
    });
  await watch(0);
  await watch(1);
  const check = {
    ...site,
    releasesWithLeftHand: true,
    releasesWithRightHand: true,
    feelingIntact: true,
    knowsToRelease: true,
    wrapOpened: true,
    reason: 'No gauge at home; shown twice.',
  };
  await at.clinician(1).clinician.visits.checkHome({ patientId, check });
};

describe('agreement to occlusion', () => {
  it('is needed before it is proposed, kept or signed; nobody asked is not agreed', async () => {
    await expect(acts.saveDraft(true)).rejects.toThrow(/Consent has not been asked for/);
    await acts.agree('occlusion-supervised');
    const id = await acts.saveDraft(true);
    await at.patient(1).patient.consents.withdraw({ kind: 'occlusion-supervised' });
    await expect(acts.sign(id, 1)).rejects.toThrow(/Consent was withdrawn|not|newer|ended/);
  });

  it('to work with a clinician present is not agreement to work alone', async () => {
    await acts.agree('occlusion-supervised');
    await homeEligible();
    await expect(acts.saveDraft(false, 1)).rejects.toThrow(/cuff work at home, alone/);
    await acts.agree('occlusion-unsupervised');
    await expect(acts.saveDraft(false, 1)).resolves.toBeDefined();
  });

  it('taken back ends the exercise at once, tells the patient, and agreeing again brings nothing back', async () => {
    await acts.agree('occlusion-supervised');
    const signed = await acts.saveDraft(true);
    await acts.sign(signed);
    const waiting = await acts.saveDraft(true);
    expect((await at.patient().patient.today.get()).exercises).toHaveLength(2);
    const { ended } = await at.patient(1).patient.consents.withdraw({ kind: 'occlusion-supervised' });
    expect(ended).toBe(2);
    const today = await at.patient(1).patient.today.get();
    expect(today.exercises.map((one) => one.dose.method)).toEqual(['low-load']);
    expect(today.changes.map(({ en }) => en).join(' ')).toMatch(/withdrew your consent to the cuff/);
    await acts.agree('occlusion-supervised');
    expect((await at.patient(2).patient.today.get()).exercises).toHaveLength(1);
    const { versions } = await at.clinician(2).clinician.prescriptions.list({ patientId: at.patientId });
    const cuffed = versions.filter((row) => row.dose.method === 'occlusion');
    expect(cuffed.map(({ id }) => id).sort()).toEqual([signed, waiting].sort());
    expect(cuffed.every((row) => row.endReason?.startsWith('Consent withdrawn on'))).toBe(true);
  });

  it('to work alone taken back leaves work with a clinician present as it was', async () => {
    await acts.agree('occlusion-supervised');
    await acts.sign(await acts.saveDraft(true));
    await at.patient(1).patient.consents.withdraw({ kind: 'occlusion-unsupervised' });
    expect((await at.patient(1).patient.today.get()).exercises).toHaveLength(2);
  });
});

describe('the words of an agreement', () => {
  it('a consent to the proposed words is never one to the clinic’s words of the same number', async () => {
    const { wordingVersion } = proposedWording;
    await at.patient().patient.consents.give({ kind: 'sharing', ...proposedWording });
    for (let version = 1; version <= wordingVersion; version += 1) {
      const text = `The clinic’s own words, number ${version}.`;
      await at.administrator().admin.care.writeWording({ kind: 'sharing', text });
    }
    await expect(at.patient().patient.consents.give({ kind: 'sharing', ...proposedWording })).rejects.toThrow(
      /wording has changed/,
    );
    await at.patient().patient.consents.give({ kind: 'sharing', wordingSource: 'clinic', wordingVersion });
    const { rows } = await at.clinician().clinician.consents.list({ patientId: at.patientId });
    expect(rows.map((row) => [row.wordingSource, row.wordingVersion])).toEqual([
      ['proposed', wordingVersion],
      ['clinic', wordingVersion],
    ]);
  });

  it('are the clinic’s, by version; until it writes them they are shown as a proposal', async () => {
    const before = (await at.patient().patient.consents.get()).kinds.find((one) => one.kind === 'sharing');
    expect(before).toMatchObject({ ...proposedWording, isProposal: true });
    const text = 'We may tell your doctor how it goes.';
    expect(await at.administrator().admin.care.writeWording({ kind: 'sharing', text })).toBe(1);
    const after = (await at.patient().patient.consents.get()).kinds.find((one) => one.kind === 'sharing');
    expect(after).toMatchObject({
      wordingSource: 'clinic',
      wordingVersion: 1,
      isProposal: false,
      text: asTyped(text),
    });
  });

  it('that changed while the page was open are read again first; the version agreed to is kept', async () => {
    await at.administrator().admin.care.writeWording({ kind: 'sharing', text: 'The first words of ours.' });
    await at.administrator().admin.care.writeWording({ kind: 'sharing', text: 'The second words of ours.' });
    await expect(
      at.patient().patient.consents.give({ kind: 'sharing', wordingSource: 'clinic', wordingVersion: 1 }),
    ).rejects.toThrow(/wording has changed/);
    await expect(
      at.clinician().clinician.consents.record({
        patientId: at.patientId,
        kind: 'sharing',
        act: 'given',
        wordingSource: 'clinic',
        wordingVersion: 1,
      }),
    ).rejects.toThrow(/newer wording/);
    await at.patient().patient.consents.give({ kind: 'sharing', wordingSource: 'clinic', wordingVersion: 2 });
    const { rows } = await at.clinician().clinician.consents.list({ patientId: at.patientId });
    expect(rows).toMatchObject([
      { kind: 'sharing', act: 'given', wordingSource: 'clinic', wordingVersion: 2 },
    ]);
  });

  it('stand beside the clinic’s monitoring hours, and nobody watches before it was agreed', async () => {
    const before = await at.patient().patient.consents.get();
    expect(before).toMatchObject({
      monitoringHours: {
        en: 'Monday to Friday, 9:00 to 17:00',
        de: 'Montag bis Freitag, 9:00 bis 17:00 Uhr',
      },
      isMonitored: false,
    });
    await at.patient().patient.consents.give({ kind: 'remote-monitoring', ...proposedWording });
    expect((await at.patient().patient.consents.get()).isMonitored).toBe(true);
  });
});

describe('a cuff at home', () => {
  it('opens by recorded facts only, limb by limb', async () => {
    await acts.agree('occlusion-supervised');
    await acts.agree('occlusion-unsupervised');
    await expect(acts.saveDraft(false)).rejects.toThrow(/Record the conditions for work at home/);
    await homeEligible();
    const gate = await at.clinician(1).clinician.visits.homeEligibility({ patientId: at.patientId });
    const open = gate.limbs.filter((one) => one.wrap.length === 0);
    expect(open.map(({ limb, side }) => [limb, side])).toEqual([['leg', 'right']]);
    await expect(acts.saveDraft(false, 1)).resolves.toBeDefined();
  });

  it('that was closed again after it was kept is not signed', async () => {
    await acts.agree('occlusion-supervised');
    await acts.agree('occlusion-unsupervised');
    await homeEligible();
    const id = await acts.saveDraft(false, 1);
    const check = {
      ...site,
      releasesWithLeftHand: false,
      releasesWithRightHand: true,
      feelingIntact: true,
      knowsToRelease: true,
      wrapOpened: true,
      reason: 'Left wrist in a splint.',
    };
    await at.clinician(2).clinician.visits.checkHome({ patientId: at.patientId, check });
    await expect(acts.sign(id, 2)).rejects.toThrow(/unaided with either hand/);
  });

  it('tick boxes sent with the request are not a field any more', async () => {
    await acts.agree('occlusion-supervised');
    await expect(
      at.clinician().clinician.prescriptions.propose({
        patientId: at.patientId,
        request: { ...wrap(false), home: { observedSessions: 9 } },
      }),
    ).rejects.toThrow(/not known here/);
  });

  it('a wrap is not opened without a reason', async () => {
    const check = {
      ...site,
      releasesWithLeftHand: true,
      releasesWithRightHand: true,
      feelingIntact: true,
      knowsToRelease: true,
      wrapOpened: true,
      reason: null,
    };
    await expect(
      at.clinician().clinician.visits.checkHome({ patientId: at.patientId, check }),
    ).rejects.toThrow(/reason for allowing an elastic wrap/);
  });
});
