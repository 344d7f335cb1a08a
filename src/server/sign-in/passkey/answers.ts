/**
 * What a device answers when a passkey is made or used, verified by the WebAuthn library (W3C Web Authentication,
 * level 2, sections 7.1 and 7.2). Who made the device is not asked. Ours is what the library leaves to its
 * caller: the challenge, a page inside somebody else's, and how long an RSA key is.
 */
import type {
  AuthenticationResponseJSON,
  RegistrationResponseJSON,
  WebAuthnCredential,
} from '@simplewebauthn/server';

/** Where this product is: a passkey answers only there. */
export interface PasskeyPlace {
  readonly origin: string;
  readonly host: string;
}

/** Null where the address is a number: browsers bind passkeys to names only. */
export const passkeyPlace = (origin: string): PasskeyPlace | null => {
  const { hostname } = new URL(origin);
  return /^[\d.]+$|^\[/.test(hostname) ? null : { origin, host: hostname };
};

/** As numbers that a browser is asked with (COSE: ES256, EdDSA, RS256). */
export const algorithms: readonly number[] = [-7, -8, -257];

const leastRsaBytes = 256;

/** Takes the challenge that was answered, as the text that was given out; true when it was ours and is good. */
export type TakeChallenge = (challenge: string) => Promise<boolean> | boolean;

/** Read on first use: a clinic without passkeys never loads it. */
const library = () => import('@simplewebauthn/server');
const helpers = () => import('@simplewebauthn/server/helpers');

const expected = (place: PasskeyPlace, take: TakeChallenge) => ({
  expectedChallenge: (sent: string) => take(Buffer.from(sent, 'base64url').toString('utf8')),
  expectedOrigin: place.origin,
  expectedRPID: place.host,
  requireUserVerification: true,
});

/** The library throws what it refuses; to us a refusal is an answer. */
const orRefused = async <T>(verified: () => Promise<T | null>): Promise<T | null> => {
  try {
    return await verified();
  } catch {
    return null;
  }
};

const isInsideAnother = async (clientDataJSON: string): Promise<boolean> => {
  const { decodeClientDataJSON } = await helpers();
  return decodeClientDataJSON(clientDataJSON).crossOrigin === true;
};

/**
 * No statement about the maker is asked for, and one with certificates is not read: the library would ask the
 * addresses in them whether they were withdrawn, and those are whatever was sent.
 */
const namesNoMaker = async (attestationObject: string): Promise<boolean> => {
  const { decodeAttestationObject } = await helpers();
  const statement = decodeAttestationObject(Uint8Array.from(Buffer.from(attestationObject, 'base64url')));
  const format = statement.get('fmt');
  return format === 'none' || (format === 'packed' && statement.get('attStmt').get('x5c') === undefined);
};

const isLongEnough = async (publicKey: Uint8Array<ArrayBuffer>): Promise<boolean> => {
  const { cose, decodeCredentialPublicKey } = await helpers();
  const key = decodeCredentialPublicKey(publicKey);
  if (!cose.isCOSEPublicKeyRSA(key)) return true;
  return (key.get(cose.COSEKEYS.n)?.length ?? 0) >= leastRsaBytes;
};

export interface MadePasskey {
  readonly id: string;
  /** COSE key, base64url. */
  readonly publicKey: string;
  readonly counter: number;
}

/** A passkey just made for this place by a person who proved it to the device; null where it is not one. */
export const madePasskey = (
  response: RegistrationResponseJSON,
  place: PasskeyPlace,
  take: TakeChallenge,
): Promise<MadePasskey | null> =>
  orRefused(async () => {
    const { clientDataJSON, attestationObject } = response.response;
    if ((await isInsideAnother(clientDataJSON)) || !(await namesNoMaker(attestationObject))) return null;
    const { verifyRegistrationResponse } = await library();
    const { verified, registrationInfo } = await verifyRegistrationResponse({
      response,
      ...expected(place, take),
      supportedAlgorithmIDs: [...algorithms],
    });
    if (!verified || !(await isLongEnough(registrationInfo.credential.publicKey))) return null;
    const { id, publicKey, counter } = registrationInfo.credential;
    return { id, publicKey: Buffer.from(publicKey).toString('base64url'), counter };
  });

/** How often the known passkey says it was used, where the answer is its own; null where it is not. */
export const usedPasskey = (
  response: AuthenticationResponseJSON,
  { id, publicKey, counter }: MadePasskey,
  place: PasskeyPlace,
  take: TakeChallenge,
): Promise<number | null> =>
  orRefused(async () => {
    if (await isInsideAnother(response.response.clientDataJSON)) return null;
    const { verifyAuthenticationResponse } = await library();
    const credential: WebAuthnCredential = {
      id,
      publicKey: Uint8Array.from(Buffer.from(publicKey, 'base64url')),
      counter,
    };
    const { verified, authenticationInfo } = await verifyAuthenticationResponse({
      response,
      credential,
      ...expected(place, take),
    });
    return verified ? authenticationInfo.newCounter : null;
  });
