/** Every procedure, by whom it serves. */
import { accountRouter } from './account/account.ts';
import { adminCareRouter } from './admin/care.ts';
import { clinicSettingsRouter } from './admin/choices.ts';
import { sitesRouter } from './admin/sites.ts';
import { adminStaffRouter } from './admin/staff.ts';
import { accessRouter } from './patient/access.ts';
import { patientConsentsRouter } from './patient/consents.ts';
import { entriesRouter } from './patient/entries.ts';
import { historyRouter } from './patient/history.ts';
import { patientMessagesRouter } from './patient/messages.ts';
import { preVisitRouter } from './patient/previsit.ts';
import { todayRouter } from './patient/today.ts';
import { bookingsRouter } from './staff/bookings.ts';
import { calculationsRouter } from './staff/calculations.ts';
import { careRouter } from './staff/care.ts';
import { consentsRouter } from './staff/consents.ts';
import { draftsRouter } from './staff/drafts.ts';
import { staffEntriesRouter } from './staff/entries.ts';
import { episodesRouter } from './staff/episodes.ts';
import { handoverRouter } from './staff/handover.ts';
import { measurementsRouter } from './staff/measurements.ts';
import { outcomesRouter } from './staff/outcomes.ts';
import { documentsRouter } from './staff/papers.ts';
import { peopleRouter } from './staff/people.ts';
import { phonesRouter } from './staff/phones.ts';
import { preVisitsRouter } from './staff/pre-visits.ts';
import { prescriptionsRouter } from './staff/prescriptions.ts';
import { recordFileRouter } from './staff/record-file.ts';
import { reviewRouter } from './staff/review.ts';
import { rulesRouter } from './staff/rules.ts';
import { screeningRouter } from './staff/screening.ts';
import { teamRouter } from './staff/team.ts';
import { templatesRouter } from './staff/templates.ts';
import { visitsRouter } from './staff/visits.ts';
import { worklistRouter } from './staff/worklist.ts';
import { callerFactory, router } from './trpc.ts';

export const appRouter = router({
  staff: router({
    worklist: worklistRouter,
    people: peopleRouter,
    screening: screeningRouter,
    measurements: measurementsRouter,
    prescriptions: prescriptionsRouter,
    care: careRouter,
    bookings: bookingsRouter,
    outcomes: outcomesRouter,
    review: reviewRouter,
    team: teamRouter,
    phones: phonesRouter,
    entries: staffEntriesRouter,
    episodes: episodesRouter,
    consents: consentsRouter,
    preVisits: preVisitsRouter,
    visits: visitsRouter,
    handover: handoverRouter,
    documents: documentsRouter,
    recordFile: recordFileRouter,
    drafts: draftsRouter,
    templates: templatesRouter,
    calculations: calculationsRouter,
    rules: rulesRouter,
  }),
  account: accountRouter,
  admin: router({
    staff: adminStaffRouter,
    sites: sitesRouter,
    clinicSettings: clinicSettingsRouter,
    care: adminCareRouter,
  }),
  patient: router({
    today: todayRouter,
    entries: entriesRouter,
    history: historyRouter,
    access: accessRouter,
    consents: patientConsentsRouter,
    messages: patientMessagesRouter,
    preVisit: preVisitRouter,
  }),
});

export type AppRouter = typeof appRouter;
export const createCaller = callerFactory(appRouter);
