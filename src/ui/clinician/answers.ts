/**
 * What the clinic's procedures answer, by the screen that shows it: the values as the server holds
 * them. All are plain data, so that what a browser receives is the same.
 */
import type { createCaller } from '#api/root.ts';

type Staff = ReturnType<typeof createCaller>['clinician'];
// biome-ignore lint/suspicious/noExplicitAny: the inputs are the procedures' own; only the answer is read here.
type Answer<P extends (...input: any[]) => Promise<unknown>> = Awaited<ReturnType<P>>;

export type WorklistAnswer = Answer<Staff['worklist']['list']>;
export type WorklistLine = WorklistAnswer['lines'][number];
export type WorklistItem = WorklistLine['item'];
export type Strip = NonNullable<WorklistLine['strip']>;
export type WorklistItemKind = WorklistItem['kind'];
export type Letters = Answer<Staff['letters']['list']>;
export type Letter = Answer<Staff['letters']['get']>;
export type Imports = Answer<Staff['imports']['list']>;
export type LookedThrough = Answer<Staff['imports']['check']>;
export type VisitNotes = Answer<Staff['visitNotes']['list']>;
export type ProtocolAnswer = Answer<Staff['protocols']['list']>[number];
export type NutritionAnswer = Answer<Staff['nutrition']['get']>;
export type EarlierDoses = Answer<Staff['review']['earlierDoses']>;
export type PatientLine = Answer<Staff['people']['list']>['patients'][number];
export type Patient = Answer<Staff['people']['get']>;
export type PatientBarAnswer = Answer<Staff['people']['bar']>;
export type NextStep = NonNullable<PatientBarAnswer['next']>;
export type AddedPatient = Answer<Staff['people']['create']>;
export type PatientDetails = Answer<Staff['people']['details']>;
export type ScreeningFormAnswer = Answer<Staff['screening']['sheet']>;
export type Recorded = Answer<Staff['measurements']['list']>[number];
export type Prescriptions = Answer<Staff['prescriptions']['list']>;
export type Version = Prescriptions['versions'][number];
export type Proposed = Answer<Staff['prescriptions']['propose']>;
export type Choice = Answer<Staff['prescriptions']['choices']>[number];
export type ClinicTemplate = Answer<Staff['templates']['list']>[number];
export type ProposedTemplate = NonNullable<Answer<Staff['templates']['proposed']>>;
export type ProgrammeAnswer = Answer<Staff['prescriptions']['programme']>;
export type ApprovedAhead = Answer<Staff['care']['list']>['preApprovals'][number];
export type GroupHourLine = Answer<Staff['groupHours']['list']>[number];
export type GroupHourAnswer = Answer<Staff['groupHours']['get']>;
type PersonOfHour = Answer<Staff['groupSessions']['people']>[number];
export type GroupPerson = Extract<PersonOfHour, { name: string }>;
export type ClosedPerson = Extract<PersonOfHour, { name: null }>;
export type IncidentAnswer = Answer<Staff['incidents']['list']>[number];
export type MachineAnswer = Answer<ReturnType<typeof createCaller>['admin']['machines']['list']>[number];
export type RulesTable = Answer<Staff['rules']['list']>;
export type RulesFollowed = Answer<Staff['rules']['followed']>;
export type ReplaySettings = Answer<Staff['replay']['settings']>;
export type WhatIfOfPatient = Answer<Staff['replay']['ofPatient']>;
export type ClinicFiguresAnswer = Answer<Staff['learning']['get']>;
export type KnownThenAnswer = Answer<Staff['replay']['knownThen']>;
export type KnownThen = NonNullable<KnownThenAnswer['known']>;
export type InventedPeople = Answer<Staff['inventedPeople']['get']>;
export type SettingsTried = Answer<Staff['inventedPeople']['trySettings']>;
export type TrialRow = InventedPeople['models'][number]['rows'][number];
export type SummaryAnswer = Answer<Staff['review']['summary']>;
export type ReviewAnswer = Answer<Staff['review']['get']>;
export type Decision = ReviewAnswer['decisions'][number];
export type WhatWouldChangeAnswer = Answer<Staff['review']['whatWouldChange']>;
export type Response = ReviewAnswer['responses'][number];
export type Proposal = ReviewAnswer['proposals'][number];
export type CourseAnswer = Answer<Staff['outcomes']['get']>;
export type HomeQuestionsAnswer = Answer<Staff['homeQuestions']['get']>;
export type AskedAtHome = HomeQuestionsAnswer['asked'][number];
export type WorklistGroups = Answer<Staff['worklist']['groups']>;
export type WorklistFilters = Answer<Staff['worklist']['filters']>;
export type Consents = Answer<Staff['consents']['list']>;
export type Consent = Consents['kinds'][number];
export type HomeEligibility = Answer<Staff['visits']['homeEligibility']>;
export type CareAnswer = Answer<Staff['care']['list']>;
export type DangerAnswer = Answer<Staff['danger']['get']>;
export type EnteredRow = Answer<Staff['corrections']['entries']>[number];
export type Correction = Answer<Staff['corrections']['list']>[number];
export type NewPlan = Answer<Staff['corrections']['planOnceSeen']>;
export type CalculationRow = Answer<Staff['calculations']['list']>[number];
