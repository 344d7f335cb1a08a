/** Tests that need hands on the patient are locked during an appointment at a distance. */

import { refusedWith } from '#api/errors.ts';
import { type HandsOnTest, lockedTest } from '#core/episode/remote-visit.ts';
import type { Access } from '#data/access.ts';
import { visitNow } from '#data/episode/visits.ts';

export const requireHandsOnTest = async (
  access: Access,
  patientId: string,
  test: HandsOnTest,
): Promise<void> => {
  const refused = lockedTest(await visitNow(access, patientId), test);
  if (refused.length > 0) throw refusedWith(refused);
};
