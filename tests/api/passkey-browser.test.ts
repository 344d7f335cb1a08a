/**
 * What a browser really sends: recorded from Chromium with its virtual device (CTAP2, resident key,
 * person verified) at http://localhost:3114, where this product made the passkey and was signed in to.
 */
import { describe, expect, it } from 'vitest';
import { madePasskey, passkeyPlace, usedPasskey } from '#server/sign-in/passkey/answers.ts';

const place = passkeyPlace('http://localhost:3114')!;
const elsewhere = passkeyPlace('http://localhost:3115')!;
const bytes = (text: string) => Buffer.from(text, 'base64url');

const made = {
  clientData: bytes(
    'eyJ0eXBlIjoid2ViYXV0aG4uY3JlYXRlIiwiY2hhbGxlbmdlIjoiTVRjNU5UWXhORGM0TWpneU5pNXdRbGhqU1hkUWVGQldPVzkxUkhZNE9XcDBjbEJXZDNKbWQxbHNXVTlVVWk1VlIzUkxaRFYyVEZOTmFEVTRRbmx5YTNNeWRFc3pXak5DYzJOeVFrOXpObk53VFhwd2NFVjVkbW80Iiwib3JpZ2luIjoiaHR0cDovL2xvY2FsaG9zdDozMTE0IiwiY3Jvc3NPcmlnaW4iOmZhbHNlfQ',
  ),
  authenticatorData: bytes(
    'SZYN5YgOjGh0NBcPZHZgW4_krrmihjLHmVzzuoMdl2NFAAAAAQECAwQFBgcIAQIDBAUGBwgAIFDWZKMWfSzcn4whkbMMzQ2XzP2kNlfKKQTYCBz5MGbVpQECAyYgASFYIJ0p2lwvxPQUs7G__p8FERSafNTmifHor0M8oPGBVIgeIlggtdesYULbgjJkqz-VcK_S3f1BxandALjnPh3lP8eOb2Y',
  ),
};
const used = {
  id: 'UNZkoxZ9LNyfjCGRswzNDZfM_aQ2V8opBNgIHPkwZtU',
  clientData: bytes(
    'eyJ0eXBlIjoid2ViYXV0aG4uZ2V0IiwiY2hhbGxlbmdlIjoiTVRjNU5UWXhORGM0TlRBek1pNTJSM2cyY1ZGU05tVjJiVXBwUTFWUlVqZDFNMWN5U0dKT1EwNTJMVzlQU0M1TlZIUXRXbXQ2Vm5KSlNtbDRSR2xpYjNKUlVUaDVSamRrTVRoU1JFcFBUMjVqYWtGR1lUUnlaMjVSIiwib3JpZ2luIjoiaHR0cDovL2xvY2FsaG9zdDozMTE0IiwiY3Jvc3NPcmlnaW4iOmZhbHNlLCJvdGhlcl9rZXlzX2Nhbl9iZV9hZGRlZF9oZXJlIjoiZG8gbm90IGNvbXBhcmUgY2xpZW50RGF0YUpTT04gYWdhaW5zdCBhIHRlbXBsYXRlLiBTZWUgaHR0cHM6Ly9nb28uZ2wveWFiUGV4In0',
  ),
  authenticatorData: bytes('SZYN5YgOjGh0NBcPZHZgW4_krrmihjLHmVzzuoMdl2MFAAAAAg'),
  signature: bytes(
    'MEUCICOL91WP7h2HoW4UE9Hni6RrnRnejLdLNaj2V1JfQvmzAiEAwPmQfJA61kun3UiY2HkUe8Yy8_d7NX1jZyWNeEGLuys',
  ),
};

const text = (of: Buffer) => of.toString('base64url');
const named = { id: used.id, rawId: used.id, type: 'public-key', clientExtensionResults: {} } as const;

/** Format “none”: fmt, an empty statement and the recorded data, which is all there is of it (RFC 8949). */
const attestation = (data: Buffer) =>
  Buffer.concat([
    Buffer.from('a363666d74646e6f6e656761747453746d74a068617574684461746158', 'hex'),
    Buffer.from([data.length]),
    data,
  ]);

const challenges: string[] = [];
const take = (challenge: string) => {
  challenges.push(challenge);
  return true;
};
const make = (over: Partial<typeof made> = {}, at = place, taken: (of: string) => boolean = take) => {
  const { clientData, authenticatorData } = { ...made, ...over };
  const response = {
    clientDataJSON: text(clientData),
    attestationObject: text(attestation(authenticatorData)),
  };
  return madePasskey({ ...named, response }, at, taken);
};
const known = async () => (await make())!;
const use = async (over: Partial<typeof used> = {}, at = place, counter = 1) => {
  const { clientData, authenticatorData, signature } = { ...used, ...over };
  const response = {
    clientDataJSON: text(clientData),
    authenticatorData: text(authenticatorData),
    signature: text(signature),
  };
  return usedPasskey({ ...named, response }, { ...(await known()), counter }, at, take);
};

describe('a passkey of a real browser', () => {
  it('is read when made: the id it is known by, its first count, the challenge it answers', async () => {
    expect(await make()).toMatchObject({ id: used.id, counter: 1 });
    expect(challenges.at(-1)).toMatch(/^1795614782826\.pBXc/);
  });

  it('is read when used: the count has gone up and the signature holds', async () => {
    expect(await use()).toBe(2);
    expect(challenges.at(-1)).toMatch(/^1795614785032\.vGx6/);
  });

  it('does not hold at another address, for another purpose, or for a challenge that is not ours', async () => {
    expect(await make({}, elsewhere)).toBeNull();
    expect(await use({}, elsewhere)).toBeNull();
    expect(await make({ clientData: used.clientData })).toBeNull();
    expect(await use({ clientData: made.clientData })).toBeNull();
    expect(await make({}, place, () => false)).toBeNull();
  });

  it('does not hold with a bit of what is signed changed', async () => {
    const flipped = (of: Buffer, bit: number) => {
      const copy = Buffer.from(of);
      copy[bit >> 3]! ^= 1 << (bit & 7);
      return copy;
    };
    const holds: string[] = [];
    for (const part of ['authenticatorData', 'clientData'] as const)
      for (let bit = 0; bit < used[part].length * 8; bit += part === 'clientData' ? 29 : 5)
        if ((await use({ [part]: flipped(used[part], bit) })) !== null) holds.push(`${part} ${bit}`);
    expect(holds).toEqual([]);
  });

  it.each([
    ['under the last', 3],
    ['at the last', 2],
  ])('does not hold with a count %s known', async (_, counter) => {
    expect(await use({}, place, counter)).toBeNull();
  });

  it('cut short before the end of its id it is refused, not a fault', async () => {
    // The last byte of the id stands at 87: 37 fixed, 16 for the maker, 2 for the length, 32 of id.
    for (let at = 0; at < 87; at += 1)
      expect(await make({ authenticatorData: made.authenticatorData.subarray(0, at) })).toBeNull();
  });
});
