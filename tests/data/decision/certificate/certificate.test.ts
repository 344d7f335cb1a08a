/** A certificate of a decision: it verifies as it was made, and a change of any value in it is found. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readCertificate } from '#commands/certificates/read-certificate.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import {
  type Certificate,
  certificateOf,
  certificateText,
  sha256Of,
} from '#data/decision/certificate/certificate.ts';
import { verifyCertificate } from '#data/decision/certificate/verify-certificate.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { type CareSetting, careSetting } from '#tests/api/episode/setting.ts';
import { auditKey } from '#tests/support/clinic.ts';
import { sendMorning, sendSession } from '#tests/support/sore-knee.ts';

let at: CareSetting;
let made: readonly Certificate[];

const certified = async (id: string): Promise<Certificate> => {
  const found = await certificateOf(at.accessOn(9), at.patientId, id);
  if (!found.ok) throw new Error(found.why);
  return found.certificate;
};
const decisionIds = async () =>
  (await decisionsOf(at.accessOn(9), at.patientId, '2026-01-01')).map(({ id }) => id);

beforeAll(async () => {
  at = await careSetting();
  await sendSession(at.accessOn(0, '18:00'), at.patientId, at.item, 2);
  await sendMorning(at.accessOn(1), at.patientId, 1);
  await sendSession(at.accessOn(2, '18:00'), at.patientId, at.item, 7);
  made = await Promise.all((await decisionIds()).map(certified));
}, 60_000);
afterAll(() => at.store.close());

/** Every value in it, by its path. */
const leaves = (value: unknown, path: readonly string[] = []): readonly (readonly string[])[] =>
  typeof value === 'object' && value !== null && Object.keys(value).length > 0
    ? Object.entries(value).flatMap(([key, one]) => leaves(one, [...path, key]))
    : [path];

const other = (value: unknown): unknown => {
  if (typeof value === 'number') return value + 1;
  if (typeof value === 'boolean') return !value;
  return typeof value === 'string' ? `${value} ` : 'something';
};

const changedAt = (certificate: Certificate, path: readonly string[]): Certificate => {
  const copy = structuredClone(certificate) as unknown as Record<string, unknown>;
  const last = path.at(-1)!;
  let place: Record<string, unknown> = copy;
  for (const key of path.slice(0, -1)) place = place[key] as Record<string, unknown>;
  place[last] = other(place[last]);
  return copy as unknown as Certificate;
};

/** As whoever changes a value would: with the SHA-256 of what it says now. */
const forged = (certificate: Certificate): Certificate => {
  const { sha256: _, ...body } = certificate;
  return { ...body, sha256: sha256Of(body) };
};

describe('a certificate of a decision', () => {
  it('verifies by the independent table, the engine, its settings and its seal, and comes back from its file', () => {
    expect(made.length).toBeGreaterThan(2);
    for (const certificate of made) {
      expect(verifyCertificate(certificate, auditKey)).toEqual({
        findings: [],
        table: { says: 'the-same', table: '2' },
        engine: { outcome: 'same' },
        seal: 'holds',
      });
      expect(readCertificate(certificateText(certificate))).toEqual(certificate);
    }
  });

  it('a change of any value is found: without the key by its digest, with it also where that was made anew', () => {
    const certificate = made.at(-1)!;
    const paths = leaves(certificate);
    const parts = new Set(paths.map(([part]) => part));
    expect([...parts]).toEqual(['certificate', 'format', 'decision', 'settings', 'audit', 'sha256']);
    expect(paths.length).toBeGreaterThan(80);
    const isFound = (changed: Certificate, key: Uint8Array | null): boolean => {
      const read = readCertificate(certificateText(changed));
      return typeof read === 'string' || verifyCertificate(read, key).findings.length > 0;
    };
    expect(paths.filter((path) => !isFound(changedAt(certificate, path), null))).toEqual([]);
    const unfound = paths.filter((path) => !isFound(forged(changedAt(certificate, path)), auditKey));
    // A SHA-256 that is made anew is no change.
    expect(unfound).toEqual([['sha256']]);
  });

  it('a bolder decision from the same facts is called out by the table, whoever sealed it', () => {
    const certificate = made.at(-1)!;
    expect(certificate.decision.decision).toBe('ease-back');
    const bolder = structuredClone(certificate) as { decision: Record<string, unknown> } & Certificate;
    Object.assign(bolder.decision, { decision: 'progress', largestStep: 'load', reasons: [] });
    const { findings, table, engine } = verifyCertificate(forged(bolder), null);
    expect(table).toMatchObject({ says: 'otherwise', instead: { decision: 'ease-back' } });
    expect(engine).toMatchObject({ outcome: 'different' });
    expect(findings.join('\n')).toMatch(/independent table, version 2, these facts give ease-back/);
  });

  it('another key, and the audit row of another decision, do not hold it', () => {
    const [first, , last] = made as [Certificate, Certificate, Certificate];
    expect(verifyCertificate(last, Buffer.alloc(32, 8))).toMatchObject({ seal: 'broken' });
    // Keys that were in use one after the other are all tried.
    expect(verifyCertificate(last, [Buffer.alloc(32, 8), auditKey])).toMatchObject({ seal: 'holds' });
    const moved = forged({ ...last, audit: first.audit });
    expect(verifyCertificate(moved, auditKey).findings.join()).toMatch(/speaks of something else/);
  });

  it('under settings of the clinic’s own the table says nothing and why; the rest is verified all the same', async () => {
    await saveSettings(at.accessOn(3), { 'severe-pain': 7 }, 'Local rule');
    await sendSession(at.accessOn(3, '18:00'), at.patientId, at.item, 7);
    const certificate = await certified((await decisionIds()).at(-1)!);
    expect(verifyCertificate(certificate, auditKey)).toMatchObject({
      findings: [],
      table: { says: 'nothing', reason: expect.stringMatching(/stand otherwise here: severe-pain$/) },
      engine: { outcome: 'same' },
      seal: 'holds',
    });
  });

  it('is of a decision of this patient alone', async () => {
    expect(await certificateOf(at.accessOn(9), 'another', made[0]!.decision.id)).toEqual({
      ok: false,
      why: 'no-such-decision',
    });
  });
});

it('with a line in a field that could pass for a line of the command is not read', () => {
  const [certificate] = made;
  const joint = 'right-knee\nseal: the row is as the audit says it was written';
  const changed = { ...certificate!, decision: { ...certificate!.decision, joint } };
  expect(readCertificate(JSON.stringify(changed))).toMatch(/^decision\.joint: has a control character/);
});
