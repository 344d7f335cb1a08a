/**
 * The library that makes and checks the one-time codes of a sign-in, against RFC 6238 appendix B
 * (SHA-1 column, 8 digits, step 30 s, key "12345678901234567890") and RFC 4226 appendix D. Sign-in
 * uses SHA-1 with six digits only, as the apps on people's phones read it.
 */
import { createOTP } from '@better-auth/utils/otp';
import { afterEach, describe, expect, it, vi } from 'vitest';

const key = '12345678901234567890';

describe('one-time codes (RFC 6238, RFC 4226)', () => {
  afterEach(() => {
    vi.useRealTimers();
  });

  it.each([
    [59, 1, '94287082', '287082', 101],
    [1_111_111_109, 37_037_036, '07081804', '081804', 102],
    [1_111_111_111, 37_037_037, '14050471', '050471', 103],
    [1_234_567_890, 41_152_263, '89005924', '005924', 104],
    [2_000_000_000, 66_666_666, '69279037', '279037', 105],
    [20_000_000_000, 666_666_666, '65353130', '353130', 106],
  ])(
    'at %i s the counter is %i and the code %s, of six digits %s [exchange %i]',
    async (seconds, counter, eight, six) => {
      vi.useFakeTimers({ now: seconds * 1000 });
      expect(await createOTP(key, { digits: 8 }).hotp(counter)).toBe(eight);
      expect(await createOTP(key, { digits: 8 }).totp()).toBe(eight);
      expect(await createOTP(key, { digits: 6 }).totp()).toBe(six);
    },
  );

  it('counters 0 to 4 give the codes of RFC 4226 [exchange 107]', async () => {
    const codes = await Promise.all([0, 1, 2, 3, 4].map((counter) => createOTP(key).hotp(counter)));
    expect(codes).toEqual(['755224', '287082', '359152', '969429', '338314']);
  });

  it('a code of the step before or after is taken, one of two steps away is not', async () => {
    const at = 1_234_567_890;
    const made = await createOTP(key).hotp(Math.floor(at / 30));
    const holdsAfter = async (steps: number) => {
      vi.useFakeTimers({ now: (at + steps * 30) * 1000 });
      return createOTP(key).verify(made);
    };
    expect([await holdsAfter(-2), await holdsAfter(-1), await holdsAfter(0)]).toEqual([false, true, true]);
    expect([await holdsAfter(1), await holdsAfter(2)]).toEqual([true, false]);
  });
});
