/**
 * Challenges: random, sealed under what they are for, good for five minutes and once. Nothing is
 * stored until one is answered, so that asking for many fills nothing.
 */
import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import type { UsedCodes } from '../used-codes.ts';

export const challengeMs = 300_000;

const sealOf = (key: Uint8Array, purpose: string, text: string): Buffer =>
  createHmac('sha256', key).update(`passkey challenge ${purpose} ${text}`).digest();

export const makeChallenge = (key: Uint8Array, purpose: string, now: number): string => {
  const text = `${now + challengeMs}.${randomBytes(24).toString('base64url')}`;
  return `${text}.${sealOf(key, purpose, text).toString('base64url')}`;
};

/** True once for each challenge of ours, while it is good. */
export const consumeChallenge = (
  key: Uint8Array,
  purpose: string,
  challenge: string,
  now: number,
  used: UsedCodes,
): boolean => {
  const [until = '', random = '', seal = ''] = challenge.split('.');
  const expected = sealOf(key, purpose, `${until}.${random}`);
  const given = Buffer.from(seal, 'base64url');
  if (given.length !== expected.length || !timingSafeEqual(given, expected)) return false;
  return now < Number(until) && used.consume('challenge', random, now);
};
