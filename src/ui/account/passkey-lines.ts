/** Passkeys as the page of one's own sign-in shows them. */
import type { PasskeysSectionProps } from './passkeys-section.tsx';
import { systemMoment } from './system-moment.ts';

interface Saved {
  readonly id: string;
  readonly name: string;
  readonly madeAt: number;
  readonly lastUsedAt: number | null;
}

export const passkeyLines = (rows: readonly Saved[], zone: string): PasskeysSectionProps['passkeys'] =>
  rows.map(({ id, name, madeAt, lastUsedAt }) => ({
    id,
    name,
    made: systemMoment(madeAt, zone),
    lastUsed: lastUsedAt === null ? null : systemMoment(lastUsedAt, zone),
  }));
