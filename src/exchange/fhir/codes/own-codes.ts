/**
 * The codes of this product, for what no free code system names. Published with each export as a CodeSystem, so
 * that whoever reads one needs nothing else. A code is never given another meaning.
 */
import { measures } from '#core/assessment/measures/registry.ts';
import { equationIds } from '#core/assessment/strength/equations/all.ts';
import { pauseCauses } from '#core/danger/danger.ts';
import { decisions } from '#core/decision/answers.ts';
import { redFlags } from '#core/decision/facts/facts.ts';
import { ruleById } from '#core/decision/rules/table.ts';
import { careEventKinds } from '#core/episode/care-event.ts';
import { consentKinds, consentTitles } from '#core/episode/consent.ts';
import { exercises } from '#core/exercises/catalogue.ts';
import { methods } from '#core/prescribing/methods.ts';
import { screeningAnswers } from '#core/screening/screening.ts';
import { tradeNames } from '#messages/trade-names.ts';
import { doseDetails } from './dose-details.ts';

type Row = readonly [code: string, display: string];

const spaced = (word: string): string => word.replaceAll('-', ' ');
const each = (prefix: string, words: readonly string[], display = spaced): readonly Row[] =>
  words.map((word) => [`${prefix}.${word}`, display(word)]);

const fieldWords = (name: string): string => name.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);

const ofMeasures: readonly Row[] = measures.flatMap(({ kind, title, fields }) => [
  [`measure.${kind}`, title] as const,
  ...fields.map(
    (field) =>
      [
        `measure.${kind}.${field.name}`,
        `${title}: ${'about' in field && field.about ? field.about : fieldWords(field.name)}`,
      ] as const,
  ),
]);

const ofEntries: readonly Row[] = [
  ['pain.before', 'Pain before the session, 0 to 10'],
  ['pain.during', 'Pain during the session, 0 to 10'],
  ['pain.after', 'Pain after the session, 0 to 10'],
  ['pain.two-hours', 'Pain two hours after the session, 0 to 10'],
  ['pain.morning', 'Pain in the morning, 0 to 10'],
  ['morning.stiffness', 'Morning stiffness'],
  ['morning.swelling', 'Swelling in the morning'],
  ['morning.flare', 'Flare said by the patient'],
  ['morning.fatigue', 'Tiredness in the morning, 0 to 10'],
  ['session.full', 'Exercise session as planned'],
  ['session.bad-day', 'Easier exercise session'],
  ['session.test', 'Exercise session that is a test'],
  ['session.gave-way', 'The joint gave way'],
  ['session.muscle-burn', 'Burning of the muscle under a cuff, 0 to 10'],
  ['session.cuff-discomfort', 'Discomfort of the cuff, 0 to 10'],
  ['supervised-session', 'Exercise session with a cuff, supervised by a clinician'],
  ['set', 'One set of an exercise'],
  ['set.number', 'Number of the set'],
  ['set.repetitions', 'Repetitions done'],
  ['set.load', 'Load lifted'],
  ['set.reserve', 'Repetitions in reserve'],
  ['set.stop-reason', 'Why the set was stopped'],
  ['effusion', 'Stroke test of the knee'],
  ['baseline', 'Usual values of a joint, set by a clinician'],
  ['baseline.pain', 'Usual pain, 0 to 10'],
  ['baseline.pain-top', 'Top of the usual pain, 0 to 10'],
  ['baseline.pain-limit', 'Acceptable pain limit, 0 to 10'],
  ['baseline.stiffness', 'Usual morning stiffness'],
  ['baseline.swelling', 'Usual swelling'],
  ['baseline.effusion', 'Usual stroke test'],
  ['baseline.fatigue', 'Usual tiredness, 0 to 10'],
  ['screening', 'Screening before loading'],
  ['clearance', 'Clearance of a finding of the screening'],
  ['visit-note', 'Note of a contact'],
  ['message', 'Message'],
  ['contact-attempt', 'Attempt to speak with the patient about a warning sign'],
  ['imported', 'Imported from a file of another system; not recorded at this clinic'],
  ['imported.session', 'Session, imported'],
  ['imported.exercise', 'Exercise of an imported session, as the file names it'],
  ['imported.sets', 'Sets of an imported session'],
  ['imported.morning', 'Answers of a morning, imported'],
  ['imported.pain', 'Pain from 0 to 10, imported'],
  ['one-rep-max', 'One-repetition maximum, estimated by an equation'],
];

const limits: readonly Row[] = each(
  'limit',
  ['weight-bearing', 'range', 'load-limit', 'no-impact', 'none'],
  (kind) => (kind === 'none' ? 'No limit' : `Limit: ${spaced(kind)}`),
);

const ofCare: readonly Row[] = [
  ...each('consent', consentKinds, (kind) => consentTitles[kind as keyof typeof consentTitles]),
  ...each('answer', screeningAnswers),
  ...each('sign', redFlags, (flag) => `Warning sign: ${spaced(flag)}`),
  ['sign.other', 'Warning sign named by a clinician'],
  ...each('pause', pauseCauses, (cause) => `Pause: ${spaced(cause)}`),
  ...limits,
  ...each('event', careEventKinds),
];

const ofPlan: readonly Row[] = [
  ...each('method', methods),
  ...exercises.map(({ id }) => [`exercise.${id}`, tradeNames[id as keyof typeof tradeNames]] as const),
  ...doseDetails.map(({ code, about }) => [`dose.${code}`, about] as const),
  ...each('decision', decisions),
  ...each('rule', [...ruleById.keys()], (id) => `Rule ${id}`),
  ...each('equation', equationIds),
];

const ofTrail: readonly Row[] = [
  ...each('audit', ['read', 'write', 'sign-in', 'sign-out', 'refused', 'other']),
  ['trail.entered-for', 'Entered by the clinic for the patient'],
  ['trail.signed', 'Written and signed'],
  ['trail.corrected', 'Marked as entered in error'],
  ['trail.exported', 'Handed on as a file'],
];

export const ownCodes: ReadonlyMap<string, string> = new Map([
  ...ofMeasures,
  ...ofEntries,
  ...ofCare,
  ...ofPlan,
  ...ofTrail,
]);
