/** The incidents by command are the file of the page, nobody named in it, and that it was made is written down. */
import { readFileSync, statSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';
import { run as incidents } from '#commands/exchange/incidents.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { addPatient } from '#data/patients/people.ts';
import { openRuntime, type Runtime } from '#server/runtime.ts';
import { asAdministrator, asClinician } from '#tests/support/callers.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { freshFile } from '#tests/support/store.ts';

let at: Runtime;
let to: string;
const access = () => ({ ...accessOf(at.store, 'a', 'clinician-a'), auditKey: at.keys.audit });
beforeEach(async () => {
  at = openRuntime(readEnvironment({ DATABASE_FILE: freshFile() }));
  to = freshFile();
  await clinicNamed(at.store, 'a');
  const person = { givenName: 'Zephyrine', familyName: 'Person', birthDay: '1958-06-01', phone: null };
  const patientId = await addPatient(access(), person);
  const incident = {
    ...{ when: '2026-03-01', kind: 'near-miss', happened: 'The cuff was too tight, "again"' },
    ...{ doneAtOnce: 'Let it off', wouldPrevent: null, told: null },
  };
  await asClinician(access()).clinician.incidents.record({ incident, patientId });
});
afterEach(() => at.store.close());
const asked = (...args: readonly string[]) => runHere(incidents, [...args], { DATABASE_FILE: at.store.file });

describe('the incidents of a clinic by command', () => {
  it('are what an administrator’s page hands on, byte for byte, and their owner’s alone', async () => {
    expect(await asked('--to', to)).toMatchObject({ code: 0 });
    const text = readFileSync(to, 'utf8');
    expect(text).toBe(await asAdministrator(access()).clinician.incidents.file());
    expect(text).toContain('""again""');
    expect(text).not.toContain('Zephyrine');
    expect(statSync(to).mode & 0o077).toBe(0);
  });

  it('stand in the audit as read, and the chain holds', async () => {
    await asked('--to', to, '--clinic', 'a');
    const rows = at.store.reader.client
      .prepare("SELECT actor_id AS actor FROM audit WHERE subject = 'incident-file'")
      .all();
    expect(rows).toEqual([{ actor: 'incidents' }]);
    expect(await verifyChain(at.store, at.keys.audit, 'a')).toMatchObject({ ok: true });
  });

  it('are never written over anything, and of two clinics one has to be named', async () => {
    await clinicNamed(at.store, 'b');
    expect(await asked('--to', to)).toMatchObject({
      code: 2,
      problem: expect.stringMatching(/--clinic: .*a.*b/),
    });
    expect(await asked('--to', to, '--clinic', 'c')).toMatchObject({ code: 2 });
    expect(await asked('--to', to, '--clinic', 'b')).toMatchObject({ code: 0 });
    expect(await asked('--to', to, '--clinic', 'b')).toMatchObject({
      code: 2,
      problem: expect.stringContaining('there already'),
    });
  });

  it.each([[[]], [['--to']], [['--from', 'x']]])(
    'asked for as %j ends with 2 and how to ask',
    async (args) => {
      expect(await asked(...args)).toMatchObject({ code: 2, problem: expect.stringContaining('Usage') });
    },
  );
});
