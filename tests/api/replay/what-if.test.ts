/** A look back as a clinician asks for it: of one person, of the clinic, and what is refused. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addStaff } from '#data/accounts/staff.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import type { Store } from '#data/database/store.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { asClinician } from '#tests/support/callers.ts';
import { accessOf, type Setting, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs } from '#tests/support/working-patient.ts';

let store: Store;
let setting: Setting;
const at = (day: number) => accessOf(store, 'a', 'clinician-a', start + day * dayMs);
const replay = () => asClinician(at(6)).clinician.replay;

beforeAll(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  const item = await signedExercise(setting.clinician, setting.patientId);
  for (const [day, pain] of [2, 6, 7, 8].entries()) await sendSession(at(day), setting.patientId, item, pain);
}, 60_000);
afterAll(() => store.close());

const limit = { joints: { 'right-knee': { acceptablePainLimit: 7 } } };

describe('what if', () => {
  it('of one person counts bolder and more cautious apart and lists each day with the rules that differ', async () => {
    const found = await replay().ofPatient({ patientId: setting.patientId, moved: limit });
    expect(found).toMatchObject({ differing: 2, bolder: 2, moreCautious: 0, other: 0, patients: 1 });
    expect(found.bolderTo).toEqual({ pause: 0, 'ease-back': 0, hold: 2, progress: 0 });
    expect(found.lines.map(({ day, before, after, rules }) => [day, before, after, rules])).toEqual([
      [at(1).day, 'ease-back', 'hold', ['P2']],
      [at(2).day, 'ease-back', 'hold', ['P2']],
    ]);
    expect(found.weeks).toHaveLength(12);
  });

  it('of the clinic names whose days they are, and a stranger’s clinic has none of them', async () => {
    const moved = { 'severe-pain': 7 };
    const found = await replay().everybody({ moved, job: 'one' });
    expect(found).toMatchObject({ differing: 2, moreCautious: 2, other: 0, patients: 1 });
    // After a 7 that counts as severe, the 8 on the next day is the second one running.
    expect(found.lines.map(({ name, day, after, rules }) => [name, day, after, rules])).toEqual([
      // The same decision, and the clinic called.
      ['Test Person', at(2).day, 'ease-back', ['P1']],
      ['Test Person', at(3).day, 'pause', ['P1x']],
    ]);
    const stranger = asClinician(setting.stranger).clinician.replay;
    expect(await stranger.everybody({ moved, job: 'one' })).toMatchObject({ looked: 0, differing: 0 });
    expect(await replay().progress({ job: 'one' })).toBeNull();
  });

  it('of the clinic keeps who belongs to another care team out of the days, and says how many it left out', async () => {
    const restricted = (day: number, to: 0 | 1) =>
      saveSettings(at(day), { 'care-team-restriction': to }, 'Large clinic');
    const moved = { 'severe-pain': 7 };
    expect(await replay().everybody({ moved, job: 'open' })).toMatchObject({ closed: 0 });
    const taker = { name: 'Ada Verrin', email: 'ada@test.invalid', administers: false } as const;
    const colleague = (await addStaff(at(4), { ...taker, role: 'clinician' }))!.userId;
    await setTeamMember(at(4), setting.patientId, colleague, true);
    await restricted(4, 1);
    const found = await replay().everybody({ moved, job: 'closed' });
    expect(found).toMatchObject({ moreCautious: 2, lines: [], closed: 1 });
    expect(JSON.stringify(found)).not.toMatch(new RegExp(`Person|${setting.patientId}`));
    const within = asClinician({ ...at(6), actorId: colleague }).clinician.replay;
    expect(await within.everybody({ moved, job: 'within' })).toMatchObject({
      closed: 0,
      lines: [{ name: 'Test Person' }, { name: 'Test Person' }],
    });
    await restricted(5, 0);
  });

  it('offers settings that decide and none that only shape a dose, each as it stands', async () => {
    const offered = new Map((await replay().settings()).map(({ id, value }) => [id as string, value]));
    expect(offered.get('severe-pain')).toBe(8);
    expect(
      ['ease-floor-percent', 'load-step-percent', 'in-band-steps'].filter((id) => offered.has(id)),
    ).toEqual([]);
  });

  it.each([
    [{ 'severe-pain': 70 }, /at most 9/],
    [{ 'no-such': 7 }, /not a setting of the decision rules/],
    [{}, /Name a setting/],
    [{ 'severe-pain': 'x' }, /"Pain that eases the dose back and calls the clinic" is a number/],
    [
      { joints: { 'right-knee': { acceptablePainLimit: 4 } } },
      /right knee: "Acceptable pain limit" is at least 5/,
    ],
    [{ joints: { 'right-knee': { usualPain: 1.5 } } }, /right knee: "Usual pain" is a whole number/],
  ])('%j is refused with how to put it right', async (moved, words) => {
    await expect(replay().ofPatient({ patientId: setting.patientId, moved })).rejects.toThrow(words);
    await expect(replay().everybody({ moved, job: 'one' })).rejects.toThrow(words);
  });
});
