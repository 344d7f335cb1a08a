/** A secret that a device, a program or an address carries: made once, shown once, and kept here as a digest. */
import { createHash, randomBytes } from 'node:crypto';

const secretBytes = 32;

/** 43 letters of base64url: 256 random bits. */
export const makeSecret = (): string => randomBytes(secretBytes).toString('base64url');

/** So many bits need no slow hash: nobody can try them one after the other. */
export const secretDigest = (secret: string): string => createHash('sha256').update(secret).digest('hex');
