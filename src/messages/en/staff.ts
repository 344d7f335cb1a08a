import { words as account } from './staff/account.ts';
import { words as administration } from './staff/administration.ts';
import { words as measurements } from './staff/measurements.ts';
import { words as outcomes } from './staff/outcomes.ts';
import { words as patients } from './staff/patients.ts';
import { words as preVisit } from './staff/pre-visit.ts';
import { words as prescribing } from './staff/prescribing.ts';
import { words as programme } from './staff/programme.ts';
import { words as record } from './staff/record.ts';
import { words as review } from './staff/review.ts';
import { words as rules } from './staff/rules.ts';
import { words as screening } from './staff/screening.ts';
import { words as worklist } from './staff/worklist.ts';

/** Every word of the staff screens by place, for whoever reads them all; a screen imports its own. */
export const staff = {
  account,
  administration,
  measurements,
  outcomes,
  patients,
  'pre-visit': preVisit,
  prescribing,
  programme,
  record,
  review,
  rules,
  screening,
  worklist,
};
