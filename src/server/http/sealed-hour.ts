/** What was answered in a group hour without signal: opened here, and sent the way of the hour's own page. */
import { Problem } from '#api/errors.ts';
import type { Person } from '#api/person.ts';
import type { createCaller } from '#api/root.ts';
import { decrypted, type EncryptedBody, isEncrypted } from '../phone-entries.ts';
import type { Runtime } from '../runtime.ts';

interface HourBody extends EncryptedBody {
  readonly hourId: string;
  readonly patientId: string;
}

const isShort = (value: unknown): value is string =>
  typeof value === 'string' && value.length > 0 && value.length <= 64;

export const isOfHour = (body: unknown): body is HourBody =>
  isEncrypted(body) &&
  'hourId' in body &&
  isShort(body.hourId) &&
  'patientId' in body &&
  isShort(body.patientId);

/** It counts as supervised by who took the hour along, so nobody else sends it. */
export const sendOfHour = async (
  at: Runtime,
  person: Person | null,
  caller: ReturnType<typeof createCaller>,
  body: HourBody,
) => {
  if (!person) throw new Problem('signed-out', 'Sign in again. The answers are kept on this tablet.');
  const { hourId, patientId } = body;
  const opened = decrypted(at.keys, person.clinicId, patientId, body);
  if (!opened) throw new Problem('refused', 'These answers could not be read.');
  const { takenBy, ...entry } = opened.entry as { takenBy?: unknown; entryId: string; day: string };
  if (takenBy !== person.userId)
    throw new Problem(
      'not-yours',
      'Somebody else took this hour along. They are sent once that person signs in.',
    );
  return caller.clinician.groupSessions.send({ hourId, patientId, entry });
};
