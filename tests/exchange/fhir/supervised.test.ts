/** Whose words a session is, where a clinician stood beside it. */
import { expect, it } from 'vitest';
import { provenances } from '#exchange/fhir/resources/trail.ts';
import type { PersonRecord } from '#exchange/person-record.ts';
import { by } from '../rows/begin.ts';
import { work } from '../rows/work.ts';
import { wholeRecord } from '../whole-record.ts';

const agentsOf = (sessions: readonly object[]) => {
  const record = wholeRecord();
  const other = { id: 'sign-in-2', name: 'Bo Halse', role: 'clinician' as const, patientId: null };
  const made = provenances({
    ...record,
    signIns: new Map([...record.signIns, ['sign-in-2', other]]),
    rows: {
      ...work,
      signature: [],
      correction: [],
      training_session: sessions,
    } as unknown as PersonRecord['rows'],
  });
  return made.map(({ target, agent }) => [
    target[0]?.reference,
    ...agent.map(({ who }) => who.reference ?? who.display),
  ]);
};
const [first, second] = work.training_session;
const supervised = { enteredAs: 'clinic-supervised' };

it('a supervised session has who entered it as its author, and so has what was corrected or confirmed since', () => {
  const [[, ...one], [, ...two]] = agentsOf([
    { ...first, ...supervised, enteredBy: by },
    { ...second, ...supervised, enteredBy: 'sign-in-2' },
  ]) as [string[], string[]];
  expect(one).toEqual([`Practitioner/${by}`, `Practitioner/${by}`]);
  expect(two).toEqual([`Practitioner/${by}`, 'Practitioner/sign-in-2']);
});

it('a session that was told by phone is the words of the patient, whoever typed it', () => {
  const [[, author, enterer]] = agentsOf([first!]) as [string[]];
  expect(author).toMatch(/^Patient/);
  expect(enterer).toBe(`Practitioner/${by}`);
});
