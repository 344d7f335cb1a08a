/** Every procedure, by whom it serves. */
import { accountRouter } from './account/account.ts';
import { choicesRouter } from './admin/choices.ts';
import { sitesRouter } from './admin/sites.ts';
import { adminStaffRouter } from './admin/staff.ts';
import { accessRouter } from './patient/access.ts';
import { entriesRouter } from './patient/entries.ts';
import { historyRouter } from './patient/history.ts';
import { todayRouter } from './patient/today.ts';
import { calculationsRouter } from './staff/calculations.ts';
import { careRouter } from './staff/care.ts';
import { measurementsRouter } from './staff/measurements.ts';
import { peopleRouter } from './staff/people.ts';
import { phonesRouter } from './staff/phones.ts';
import { prescriptionsRouter } from './staff/prescriptions.ts';
import { reviewRouter } from './staff/review.ts';
import { screeningRouter } from './staff/screening.ts';
import { teamRouter } from './staff/team.ts';
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
    review: reviewRouter,
    team: teamRouter,
    phones: phonesRouter,
    calculations: calculationsRouter,
  }),
  account: accountRouter,
  admin: router({ staff: adminStaffRouter, sites: sitesRouter, choices: choicesRouter }),
  patient: router({
    today: todayRouter,
    entries: entriesRouter,
    history: historyRouter,
    access: accessRouter,
  }),
});

export type AppRouter = typeof appRouter;
export const createCaller = callerFactory(appRouter);
