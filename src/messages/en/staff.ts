import { words as access } from './staff/access.ts';
import { words as account } from './staff/account.ts';
import { words as clinicDetails } from './staff/administration/clinic.ts';
import { words as figures } from './staff/administration/figures.ts';
import { words as firstDay } from './staff/administration/first-day.ts';
import { words as incidents } from './staff/administration/incidents.ts';
import { words as machines } from './staff/administration/machines.ts';
import { words as programs } from './staff/administration/programs.ts';
import { words as settings } from './staff/administration/settings.ts';
import { words as administration } from './staff/administration.ts';
import { words as appointments } from './staff/appointments.ts';
import { words as calculations } from './staff/calculations.ts';
import { words as care } from './staff/care.ts';
import { words as clinic } from './staff/clinic.ts';
import { words as corrections } from './staff/corrections.ts';
import { words as danger } from './staff/danger.ts';
import { words as dataEntry } from './staff/data-entry.ts';
import { words as documents } from './staff/documents.ts';
import { words as distance } from './staff/episode/distance.ts';
import { words as nutrition } from './staff/episode/nutrition.ts';
import { words as protocol } from './staff/episode/protocol.ts';
import { words as treatment } from './staff/episode/treatment.ts';
import { words as visitNotes } from './staff/episode/visit-notes.ts';
import { words as episode } from './staff/episode.ts';
import { words as imports } from './staff/exchange/imports.ts';
import { words as firstVisit } from './staff/first-visit.ts';
import { words as groupHour } from './staff/groups/hour.ts';
import { words as groupHours } from './staff/groups/hours.ts';
import { words as sealedHour } from './staff/groups/sealed.ts';
import { words as handover } from './staff/handover.ts';
import { words as measurements } from './staff/measurements.ts';
import { words as outcomes } from './staff/outcomes.ts';
import { words as letters } from './staff/papers/letters.ts';
import { words as patients } from './staff/patients.ts';
import { words as preVisit } from './staff/pre-visit.ts';
import { words as templates } from './staff/prescribing/templates.ts';
import { words as workbench } from './staff/prescribing/workbench.ts';
import { words as prescribing } from './staff/prescribing.ts';
import { words as programme } from './staff/programme.ts';
import { words as reception } from './staff/reception/reception.ts';
import { words as nextStep } from './staff/record/next-step.ts';
import { words as summary } from './staff/record/summary.ts';
import { words as record } from './staff/record.ts';
import { words as chart } from './staff/review/chart.ts';
import { words as decisions } from './staff/review/decisions.ts';
import { words as facts } from './staff/review/facts.ts';
import { words as followed } from './staff/review/followed.ts';
import { words as knownThen } from './staff/review/known-then.ts';
import { words as proof } from './staff/review/proof.ts';
import { words as whatIf } from './staff/review/what-if.ts';
import { words as whatWouldChange } from './staff/review/what-would-change.ts';
import { words as review } from './staff/review.ts';
import { words as rules } from './staff/rules.ts';
import { words as screening } from './staff/screening.ts';
import { words as worklist } from './staff/worklist.ts';

/** Every word of the staff screens by place, for whoever reads them all; a screen imports its own. */
export const staff = {
  access,
  account,
  administration,
  'administration/clinic': clinicDetails,
  'administration/figures': figures,
  'administration/programs': programs,
  'administration/first-day': firstDay,
  'administration/incidents': incidents,
  'administration/machines': machines,
  'administration/settings': settings,
  appointments,
  calculations,
  care,
  clinic,
  corrections,
  danger,
  'data-entry': dataEntry,
  documents,
  episode,
  'exchange/imports': imports,
  'first-visit': firstVisit,
  'groups/hour': groupHour,
  'groups/hours': groupHours,
  'groups/sealed': sealedHour,
  handover,
  measurements,
  outcomes,
  'papers/letters': letters,
  patients,
  'pre-visit': preVisit,
  prescribing,
  'prescribing/templates': templates,
  'prescribing/workbench': workbench,
  programme,
  record,
  review,
  'episode/treatment': treatment,
  'episode/visit-notes': visitNotes,
  'episode/nutrition': nutrition,
  'episode/distance': distance,
  'episode/protocol': protocol,
  'reception/reception': reception,
  'record/next-step': nextStep,
  'review/chart': chart,
  'review/decisions': decisions,
  'review/facts': facts,
  'review/followed': followed,
  'review/known-then': knownThen,
  'review/proof': proof,
  'review/what-if': whatIf,
  'review/what-would-change': whatWouldChange,
  rules,
  screening,
  'record/summary': summary,
  worklist,
};
