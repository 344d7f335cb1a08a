/** Every procedure, by whom it serves. */
import { accountRouter } from './account/account.ts';
import { adminCareRouter } from './admin/care.ts';
import { clinicDetailsRouter } from './admin/clinic-details.ts';
import { clinicSettingsRouter } from './admin/clinic-settings.ts';
import { firstDayRouter } from './admin/first-day.ts';
import { machinesRouter } from './admin/machines.ts';
import { programTokensRouter } from './admin/program-tokens.ts';
import { questionnairesRouter } from './admin/questionnaires.ts';
import { shortSignsRouter } from './admin/short-signs.ts';
import { sitesRouter } from './admin/sites.ts';
import { adminStaffRouter } from './admin/staff.ts';
import { bookingsRouter } from './clinician/bookings.ts';
import { calculationsRouter } from './clinician/calculations.ts';
import { correctionsRouter } from './clinician/corrections/corrections.ts';
import { draftsRouter } from './clinician/drafts.ts';
import { staffEntriesRouter } from './clinician/entries.ts';
import { careRouter } from './clinician/episode/care.ts';
import { consentsRouter } from './clinician/episode/consents.ts';
import { dangerRouter } from './clinician/episode/danger.ts';
import { distanceRouter } from './clinician/episode/distance.ts';
import { documentsRouter } from './clinician/episode/documents.ts';
import { episodesRouter } from './clinician/episode/episodes.ts';
import { handoverRouter } from './clinician/episode/handover.ts';
import { lettersRouter } from './clinician/episode/letters.ts';
import { preVisitsRouter } from './clinician/episode/pre-visits.ts';
import { protocolsRouter } from './clinician/episode/protocols.ts';
import { visitNotesRouter } from './clinician/episode/visit-notes.ts';
import { visitsRouter } from './clinician/episode/visits.ts';
import { groupHoursRouter } from './clinician/groups/group-hours.ts';
import { groupSessionsRouter } from './clinician/groups/group-sessions.ts';
import { importsRouter } from './clinician/imports/imports.ts';
import { incidentsRouter } from './clinician/incidents/incidents.ts';
import { learningRouter } from './clinician/learning/learning.ts';
import { clinicMachinesRouter } from './clinician/machines/machines.ts';
import { measurementsRouter } from './clinician/measurements.ts';
import { nutritionRouter } from './clinician/nutrition.ts';
import { homeQuestionsRouter } from './clinician/outcomes/home-questions.ts';
import { outcomesRouter } from './clinician/outcomes/outcomes.ts';
import { mergesRouter } from './clinician/patients/merges.ts';
import { peopleRouter } from './clinician/patients/people.ts';
import { phonesRouter } from './clinician/phones.ts';
import { prescriptionsRouter } from './clinician/prescriptions.ts';
import { recordFileRouter } from './clinician/record-file.ts';
import { inventedPeopleRouter } from './clinician/replay/invented-people.ts';
import { replayRouter } from './clinician/replay/replay.ts';
import { reviewRouter } from './clinician/review.ts';
import { rulesRouter } from './clinician/rules.ts';
import { screeningRouter } from './clinician/screening.ts';
import { teamRouter } from './clinician/team.ts';
import { templatesRouter } from './clinician/templates/templates.ts';
import { worklistRouter } from './clinician/worklist.ts';
import { exportsRouter, ownExportsRouter } from './papers/exports.ts';
import { ownPapersRouter, papersRouter } from './papers/papers.ts';
import { accessRouter } from './patient/access.ts';
import { patientConsentsRouter } from './patient/consents.ts';
import { entriesRouter } from './patient/entries.ts';
import { historyRouter } from './patient/history.ts';
import { patientMessagesRouter } from './patient/messages.ts';
import { ownNutritionRouter } from './patient/nutrition.ts';
import { ownPhonesRouter } from './patient/phones.ts';
import { preVisitRouter } from './patient/previsit.ts';
import { todayRouter } from './patient/today.ts';
import { programsRouter } from './programs/programs.ts';
import { receptionRouter } from './reception/reception.ts';
import { callerFactory, router } from './trpc.ts';

export const appRouter = router({
  clinician: router({
    worklist: worklistRouter,
    people: peopleRouter,
    merges: mergesRouter,
    screening: screeningRouter,
    measurements: measurementsRouter,
    nutrition: nutritionRouter,
    prescriptions: prescriptionsRouter,
    care: careRouter,
    corrections: correctionsRouter,
    bookings: bookingsRouter,
    outcomes: outcomesRouter,
    homeQuestions: homeQuestionsRouter,
    review: reviewRouter,
    team: teamRouter,
    phones: phonesRouter,
    entries: staffEntriesRouter,
    episodes: episodesRouter,
    consents: consentsRouter,
    preVisits: preVisitsRouter,
    visits: visitsRouter,
    letters: lettersRouter,
    visitNotes: visitNotesRouter,
    distance: distanceRouter,
    protocols: protocolsRouter,
    handover: handoverRouter,
    documents: documentsRouter,
    papers: papersRouter,
    exports: exportsRouter,
    recordFile: recordFileRouter,
    danger: dangerRouter,
    groupHours: groupHoursRouter,
    groupSessions: groupSessionsRouter,
    imports: importsRouter,
    incidents: incidentsRouter,
    machines: clinicMachinesRouter,
    shortSigns: shortSignsRouter,
    drafts: draftsRouter,
    templates: templatesRouter,
    calculations: calculationsRouter,
    inventedPeople: inventedPeopleRouter,
    learning: learningRouter,
    replay: replayRouter,
    rules: rulesRouter,
  }),
  programs: programsRouter,
  reception: receptionRouter,
  account: accountRouter,
  admin: router({
    staff: adminStaffRouter,
    sites: sitesRouter,
    machines: machinesRouter,
    programTokens: programTokensRouter,
    clinicSettings: clinicSettingsRouter,
    care: adminCareRouter,
    clinicDetails: clinicDetailsRouter,
    firstDay: firstDayRouter,
    questionnaires: questionnairesRouter,
  }),
  patient: router({
    today: todayRouter,
    entries: entriesRouter,
    history: historyRouter,
    access: accessRouter,
    consents: patientConsentsRouter,
    messages: patientMessagesRouter,
    nutrition: ownNutritionRouter,
    phones: ownPhonesRouter,
    preVisit: preVisitRouter,
    papers: ownPapersRouter,
    exports: ownExportsRouter,
  }),
});

export type AppRouter = typeof appRouter;
export const createCaller = callerFactory(appRouter);
