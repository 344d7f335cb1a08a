/** What every page of the front desk starts from. */
import 'server-only';
import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { runtime, zoneOf } from '#server/runtime.ts';
import { today } from '#ui/clinician/when.ts';

export const receptionPage = async () => {
  const person = await requirePerson('reception');
  const { reception } = await serverCaller();
  const at = runtime();
  const clock = { zone: await zoneOf(at, person.clinicId), now: at.clock.now() };
  return { person, reception, clock, day: today(clock) };
};
