/** What is recorded binds the doses already signed, in the same transaction. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { screeningWith } from '#tests/core/screening/answers.ts';
import { twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { workingPatient } from '#tests/support/working-patient.ts';

const now = Date.parse('2026-03-03T09:00:00Z');

describe('after signing', () => {
  let store: Store;
  let patientId: string;
  let work: ReturnType<typeof workingPatient>;
  beforeEach(async () => {
    store = freshStore();
    ({ patientId } = await twoClinics(store));
    work = workingPatient(store, patientId);
    await work.signed();
  });
  afterEach(() => store.close());

  const clinician = () => work.clinicianAt(now).clinician;
  const exercise = async () => (await work.patientAt(now + 60_000).patient.today.get()).exercises[0]!;
  const stopped = async () => {
    const { lines } = await clinician().worklist.list({});
    return lines
      .flatMap(({ item, others }) => [item, ...others])
      .filter(({ kind }) => kind === 'dose-stopped')
      .map(({ sentence }) => sentence);
  };
  const handled = (dose: { readonly method: string }): number => (dose as { loadKg?: number }).loadKg ?? 0;
  const limit = (more: Record<string, unknown>) => ({
    joint: 'right-knee',
    kind: 'load-limit',
    limitKg: 1.5,
    from: '2026-03-03',
    to: null,
    author: 'Dr Vance',
    remark: null,
    ...more,
  });

  it('a load limit leaves no load over it on the phone, says so there and lists it to the clinician', async () => {
    const before = handled((await exercise()).dose);
    expect(before).toBeGreaterThan(1.5);
    await clinician().care.addLimit({ patientId, limit: limit({}) });
    const { dose, badDay, today } = await exercise();
    expect([handled(dose), handled(badDay)].every((kg) => kg <= 1.5)).toBe(true);
    expect(today).not.toBe('as-planned');
    const { changes } = await work.patientAt(now + 60_000).patient.today.get();
    expect(changes.map(({ en }) => en).join(' ')).toMatch(/There is a limit/);
    expect((await stopped()).join(' ')).toContain('Limit of 1.5 kg set by Dr Vance.');
  });

  it('a limit at the load signed changes nothing but that it is told', async () => {
    const before = await exercise();
    await clinician().care.addLimit({ patientId, limit: limit({ limitKg: handled(before.dose) }) });
    const { cautions, ...after } = await exercise();
    const { cautions: _before, ...same } = before;
    expect(after).toEqual(same);
    expect(cautions.map(({ text }) => text.en).join(' ')).toMatch(
      /limit for your right knee: a load of [\d.]+ kg at most/,
    );
    expect(await stopped()).toEqual([]);
  });

  it('a limit entered ahead is listed and binds from its day on, with no write in between', async () => {
    await clinician().care.addLimit({ patientId, limit: limit({ from: '2026-03-05' }) });
    const onDay = async (day: string) => {
      const at = Date.parse(`${day}T09:00:00Z`);
      const { lines } = await work.clinicianAt(at).clinician.worklist.list({});
      const kinds = lines.flatMap(({ item, others }) => [item, ...others]).map(({ kind }) => kind);
      const [shown] = (await work.patientAt(at).patient.today.get()).exercises;
      return [kinds.includes('dose-stopped'), shown?.today !== 'as-planned'];
    };
    expect([await onDay('2026-03-04'), await onDay('2026-03-05')]).toEqual([
      [false, false],
      [true, true],
    ]);
  });

  it('a dose that was eased back to the limit at once is listed until a clinician has signed one anew', async () => {
    const day = 24 * 60 * 60_000;
    await work.didSession(now - day, { before: 2, during: 2, after: 2 });
    await work.answeredMorning(now - 60_000, 2);
    const signedLoad = handled((await exercise()).dose);
    await clinician().care.addLimit({ patientId, limit: limit({ limitKg: signedLoad - 1 }) });
    expect(handled((await exercise()).dose)).toBe(signedLoad - 1);
    expect((await stopped()).join(' ')).toMatch(/eased back from what was signed.*Dr Vance/);
  });

  it('two limits that are exceeded are two items, each with its author', async () => {
    await clinician().care.addLimit({ patientId, limit: limit({}) });
    await clinician().care.addLimit({ patientId, limit: limit({ limitKg: 1, author: 'Dr Amsel' }) });
    expect((await stopped()).map((sentence) => /Dr \w+/.exec(sentence)?.[0]).sort()).toEqual([
      'Dr Amsel',
      'Dr Vance',
    ]);
  });

  it('an answer that contraindicates the method rests the exercise at once and lists it', async () => {
    const { sheetVersion, answers } = screeningWith([{ item: 'told-to-hold-off', answer: 'yes' }]);
    await clinician().screening.record({ patientId, screening: { sheetVersion, answers } });
    expect((await exercise()).today).toBe('rest-this-joint');
    expect(await stopped()).toHaveLength(1);
  });

  it('the list is written in the transaction of what was recorded: rebuilt, it is the same', async () => {
    await clinician().care.addLimit({ patientId, limit: limit({}) });
    const rows = () =>
      store.reader.client.prepare('SELECT key, kind, facts FROM worklist_item ORDER BY key').all();
    const kept = rows();
    const { rebuildWorklist } = await import('#data/worklist/worklist-items.ts');
    const { accessOf } = await import('#tests/support/clinic.ts');
    await rebuildWorklist(accessOf(store, 'a', 'clinician-a', now, 'Clinician A'));
    expect(rows()).toEqual(kept);
  });
});
