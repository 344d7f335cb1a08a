/** English, whole: every sentence that the core and the server have for a patient. */
import type { Language } from '../language.ts';
import { forms } from './forms.ts';
import { pages } from './pages.ts';
import { calendar } from './sentences/calendar.ts';
import { alwaysCautions, limits, unchecked } from './sentences/cautions-always.ts';
import { exerciseCautions } from './sentences/cautions-exercise.ts';
import { medicineCautions, screeningCautions } from './sentences/cautions-health.ts';
import { jointCautions } from './sentences/cautions-joint.ts';
import { methodCautions, occlusionChecks } from './sentences/cautions-method.ts';
import { consents } from './sentences/consents.ts';
import { danger } from './sentences/danger.ts';
import { decisions, leftOut, rules } from './sentences/decisions.ts';
import { doseChanges } from './sentences/dose-changes.ts';
import { armAndHand } from './sentences/exercises/arm-and-hand.ts';
import { back } from './sentences/exercises/back.ts';
import { bridges } from './sentences/exercises/bridges.ts';
import { chestAndShoulder } from './sentences/exercises/chest-and-shoulder.ts';
import { hand } from './sentences/exercises/hand.ts';
import { legRaises } from './sentences/exercises/leg-raises.ts';
import { lowerLeg } from './sentences/exercises/lower-leg.ts';
import { machines } from './sentences/exercises/machines.ts';
import { thigh } from './sentences/exercises/thigh.ts';
import { trunkAndNeck } from './sentences/exercises/trunk-and-neck.ts';
import { holds } from './sentences/holds.ts';
import { hours } from './sentences/hours.ts';
import { planPaper } from './sentences/papers/plan.ts';
import { recordPaper } from './sentences/papers/record.ts';
import { readMe } from './sentences/read-me.ts';
import { ready } from './sentences/ready.ts';
import { refusals } from './sentences/refusals.ts';
import { screeningDetails } from './sentences/screening-details.ts';
import { screeningQuestions } from './sentences/screening-questions.ts';
import { selfManagement } from './sentences/self-management.ts';

export const sentences = {
  exercises: {
    ...thigh,
    ...bridges,
    ...legRaises,
    ...lowerLeg,
    ...chestAndShoulder,
    ...back,
    ...armAndHand,
    ...hand,
    ...trunkAndNeck,
    ...machines,
  },
  cautions: {
    ...alwaysCautions,
    ...exerciseCautions,
    ...jointCautions,
    ...methodCautions,
    ...screeningCautions,
    ...medicineCautions,
  },
  unchecked,
  limits,
  'occlusion-checks': occlusionChecks,
  decisions,
  rules,
  'left-out': leftOut,
  holds,
  danger,
  'dose-changes': doseChanges,
  'screening-questions': screeningQuestions,
  'screening-details': screeningDetails,
  consents,
  refusals,
  ready,
  'self-management': selfManagement,
  'plan-paper': planPaper,
  'record-paper': recordPaper,
  hours,
  calendar,
  'read-me': readMe,
} as const satisfies Language['sentences'];

export const language: Language = { forms, pages, sentences };
