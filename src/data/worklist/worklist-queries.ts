/** What the worklist looks at beside the plan. */
import { stripFrom } from '#core/worklist/strip.ts';
import { retestRows } from '../assessment/retest-plans.ts';
import { newestCoveringClinician } from '../clinic/covering-clinicians.ts';
import type { Asked } from '../database/read-together.ts';
import { morningRows } from '../entries/logs.ts';
import { newestOtherJoint, newestReported } from '../entries/reported-news.ts';
import { baselineRowsOf } from '../patients/baselines.ts';
import { clinicRow } from '../patients/people.ts';
import { newestPreVisitRow } from '../screening/pre-visits.ts';
import { itemsOfPatient } from './items-of-patient.ts';
import { newestProposalRows } from './patient-state.ts';
import { singleFacts } from './single-facts.ts';

export const worklistQueries: readonly Asked[] = [
  ...[
    singleFacts,
    newestProposalRows,
    retestRows,
    newestReported,
    newestOtherJoint,
    newestPreVisitRow,
    newestCoveringClinician,
    baselineRowsOf,
    clinicRow,
    itemsOfPatient,
  ].map((query) => ({ query })),
  { query: morningRows, values: ({ day }) => ({ since: stripFrom(day) }) },
];
