/** Every procedure, by whom it serves. */
import { entriesRouter } from './patient/entries.ts';
import { historyRouter } from './patient/history.ts';
import { todayRouter } from './patient/today.ts';
import { calculationsRouter } from './staff/calculations.ts';
import { careRouter } from './staff/care.ts';
import { measurementsRouter } from './staff/measurements.ts';
import { peopleRouter } from './staff/people.ts';
import { prescriptionsRouter } from './staff/prescriptions.ts';
import { reviewRouter } from './staff/review.ts';
import { screeningRouter } from './staff/screening.ts';
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
    calculations: calculationsRouter,
  }),
  patient: router({ today: todayRouter, entries: entriesRouter, history: historyRouter }),
});

export type AppRouter = typeof appRouter;
export const createCaller = callerFactory(appRouter);
