import { words as access } from './staff/access.ts';
import { words as appointments } from './staff/appointments.ts';
import { words as calculations } from './staff/calculations.ts';
import { words as care } from './staff/care.ts';
import { words as clinic } from './staff/clinic.ts';
import { words as corrections } from './staff/corrections.ts';
import { words as danger } from './staff/danger.ts';
import { words as dataEntry } from './staff/data-entry.ts';
import { words as documents } from './staff/documents.ts';
import { words as episode } from './staff/episode.ts';
import { words as firstVisit } from './staff/first-visit.ts';
import { words as handover } from './staff/handover.ts';
import { words as worklist } from './staff/worklist.ts';

/** Every word of the staff screens by place, for whoever reads them all; a screen imports its own. */
export const staff = {
  access,
  appointments,
  calculations,
  care,
  clinic,
  corrections,
  danger,
  'data-entry': dataEntry,
  documents,
  episode,
  'first-visit': firstVisit,
  handover,
  worklist,
};
