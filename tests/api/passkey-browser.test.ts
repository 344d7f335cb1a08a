/**
 * What a browser really sends: recorded from Chromium with its virtual device (CTAP2, resident key,
 * person verified) at http://localhost:3114, where this product made the passkey and was signed in to.
 */
import { describe, expect, it } from 'vitest';
import {
  answeredChallenge,
  authenticatorData,
  isSigned,
  passkeyPlace,
  publicKeyFrom,
} from '#server/sign-in/passkey/signed.ts';

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
  publicKey:
    'MFkwEwYHKoZIzj0CAQYIKoZIzj0DAQcDQgAEnSnaXC_E9BSzsb_-nwURFJp81OaJ8eivQzyg8YFUiB6116xhQtuCMmSrP5Vwr9Ld_UHFqd0AuOc-HeU_x45vZg',
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

describe('a passkey of a real browser', () => {
  it('is read when made: the id it is known by, its first count, a key of a kind we take', () => {
    expect(authenticatorData(made.authenticatorData, place)).toEqual({ counter: 1, passkeyId: used.id });
    expect(publicKeyFrom(made.publicKey)?.asymmetricKeyType).toBe('ec');
    expect(answeredChallenge(made.clientData, 'webauthn.create', place)).toMatch(/^1795614782826\.pBXc/);
  });

  it('is read when used: the count has gone up and the signature holds', () => {
    expect(authenticatorData(used.authenticatorData, place)).toEqual({ counter: 2, passkeyId: null });
    expect(answeredChallenge(used.clientData, 'webauthn.get', place)).toMatch(/^1795614785032\.vGx6/);
    expect(isSigned(made.publicKey, used.authenticatorData, used.clientData, used.signature)).toBe(true);
  });

  it('does not hold at another address, for another purpose, or with any one bit changed', () => {
    expect(answeredChallenge(used.clientData, 'webauthn.get', elsewhere)).toBeNull();
    expect(answeredChallenge(used.clientData, 'webauthn.create', place)).toBeNull();
    expect(answeredChallenge(made.clientData, 'webauthn.get', place)).toBeNull();
    const flipped = (of: Buffer, bit: number) => {
      const copy = Buffer.from(of);
      copy[bit >> 3]! ^= 1 << (bit & 7);
      return copy;
    };
    const holds: number[] = [];
    for (let bit = 0; bit < used.authenticatorData.length * 8; bit += 1) {
      if (isSigned(made.publicKey, flipped(used.authenticatorData, bit), used.clientData, used.signature))
        holds.push(bit);
    }
    for (let bit = 0; bit < used.clientData.length * 8; bit += 7) {
      if (isSigned(made.publicKey, used.authenticatorData, flipped(used.clientData, bit), used.signature))
        holds.push(bit);
    }
    expect(holds).toEqual([]);
  });

  it('cut short at any length it is refused, not a fault', () => {
    for (let length = 0; length < 37; length += 1) {
      expect(authenticatorData(made.authenticatorData.subarray(0, length), place)).toBeNull();
    }
    // The last byte of the id stands at 87: 37 fixed, 16 for the maker, 2 for the length, 32 of id.
    expect(authenticatorData(made.authenticatorData.subarray(0, 86), place)?.passkeyId).toBeNull();
    expect(authenticatorData(made.authenticatorData.subarray(0, 87), place)?.passkeyId).toBe(used.id);
  });
});
