/** What other programs may ask. */
import { router } from '../trpc.ts';
import { listMornings, listSessions } from './entries.ts';
import { listDecisions, listMeasurements } from './findings.ts';
import { listPeople } from './people.ts';
import { planInForce } from './plans.ts';
import { readWorklist } from './worklist.ts';

export const programsRouter = router({
  people: listPeople,
  plan: planInForce,
  sessions: listSessions,
  mornings: listMornings,
  measurements: listMeasurements,
  decisions: listDecisions,
  worklist: readWorklist,
});
