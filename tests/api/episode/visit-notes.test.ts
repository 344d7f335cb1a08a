/** Notes: signed once, never edited, searched, and marked where they were wrong. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type CareSetting, careSetting, firstDay } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const staff = () => at.clinician().clinician;
const of = () => ({ patientId: at.patientId });
const day = () => firstDay;
const note = (over: object = {}) => ({
  contact: 'clinic',
  day: day(),
  subjective: null,
  objective: null,
  assessment: null,
  plan: null,
  text: 'Came with her daughter.',
  ...over,
});
const write = (over: object = {}) => staff().visitNotes.record({ ...of(), note: note(over) });
const list = async (wanted = '') => (await staff().visitNotes.list({ ...of(), wanted })).notes;

describe('a note', () => {
  it('stands with who wrote it, when, how and of which day', async () => {
    await write({ contact: 'telephone', plan: 'Ring on Friday.' });
    expect(await list()).toMatchObject([
      { contact: 'telephone', day: day(), plan: 'Ring on Friday.', byName: 'clinician-a' },
    ]);
  });

  it('is found by its words; how many there are in all is said', async () => {
    await write();
    await write({ text: null, objective: 'Knee cool, no effusion.' });
    expect(await list('effusion knee')).toHaveLength(1);
    expect((await staff().visitNotes.list({ ...of(), wanted: 'hip' })).all).toBe(2);
  });

  it('that says nothing, or is of tomorrow, is refused by the name of its field, and nothing is kept', async () => {
    await expect(write({ text: null })).rejects.toThrow(/at least one heading/);
    await expect(write({ day: '2199-01-01' })).rejects.toThrow(/today or earlier/);
    await expect(write({ text: 'x'.repeat(4001) })).rejects.toThrow(/4000/);
    expect(await list()).toEqual([]);
  });

  it('that was wrong stays on record as entered in error, and another stands in its place', async () => {
    const subjectId = await write();
    await staff().corrections.enterInError({
      ...of(),
      subject: 'note',
      subjectId,
      reason: 'Another patient’s note.',
      replacement: note({ text: 'Came alone.' }),
    });
    expect((await list()).map(({ text }) => text)).toEqual(['Came alone.']);
    const entries = await staff().corrections.entries({ ...of(), subject: 'note' });
    expect(entries.find(({ id }) => id === subjectId)?.enteredInError?.reason).toBe(
      'Another patient’s note.',
    );
  });
});
