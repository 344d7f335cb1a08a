/** Language and unit chosen on this phone, from its cookies. */
import 'server-only';
import { cookies } from 'next/headers';
import { type Chosen, chosenFrom } from '#ui/patient/preferences/chosen.ts';

export const chosenOnPhone = async (): Promise<Chosen> => {
  const kept = await cookies();
  return chosenFrom((name) => kept.get(name)?.value);
};
