/** The context of one request: who is signed in and what they may reach. */
import type { ApiContext } from '#api/context.ts';
import { accessFor, type Runtime } from '../runtime.ts';
import { personOf } from '../sign-in/person.ts';

export const contextFor = async (
  at: Runtime,
  headers: Headers,
  observe?: ApiContext['observe'],
): Promise<ApiContext> => {
  const person = await personOf(at, headers);
  return {
    person,
    access: person ? await accessFor(at, person) : null,
    clockOffset: at.clock.offset(),
    observe,
  };
};
