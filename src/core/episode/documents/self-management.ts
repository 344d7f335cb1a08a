/**
 * The sheet for the patient at the end of care, in plain words: what was in force, with its easier
 * session, the own values of each joint as a clinician set them, warning signs and whom to ring.
 *
 * Work with a cuff is left out on purpose: its pressure and its screening need somebody who asks again.
 * That is a choice of this project. The sheet promises nothing. What is not on record but advice in the
 * clinic's name is kept apart from it, so that a clinician reads it before the sheet is handed over.
 */
import { type RedFlag, redFlagClasses } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Baseline } from '#core/record/record.ts';
import { dayInWords, figure, jointInWords } from '#core/review/plain-words.ts';
import type { DocumentFacts, DocumentItem } from './document-facts.ts';
import { type CareDocument, type DocumentPart, headOf, sentence } from './document-words.ts';

export interface PatientWords {
  readonly title: (dose: Dose) => string;
  /** What to do, one line of the dose after the other. */
  readonly dose: (dose: Dose) => readonly string[];
  readonly flag: (flag: RedFlag) => string;
}

const suspendedWords: Readonly<Record<NonNullable<DocumentItem['suspended']>, string>> = {
  'everything-rests': 'Everything rested when your care ended.',
  'joint-rests': 'This joint rested when your care ended.',
  'easier-only': 'When your care ended, only the easier session was planned for this.',
};

const ringFirst = 'Do not do this before you have rung the clinic.';

const oneExercise = ({ last, suspended }: DocumentItem, words: PatientWords): DocumentPart => {
  const { dose, badDay } = last;
  const signed = `Signed by ${last.signedName} on ${dayInWords(last.signedOn)}.`;
  if (suspended === 'everything-rests' || suspended === 'joint-rests')
    return { title: words.title(dose), lines: [suspendedWords[suspended], signed], advice: [ringFirst] };
  const easier = `The easier session, for a bad day: ${words.dose(badDay).join('; ')}.`;
  const often = `${dose.sessionsPerWeek} times a week.`;
  const plan =
    suspended === 'easier-only'
      ? [suspendedWords[suspended], easier, often]
      : [`${words.dose(dose).join('; ')}.`, often, easier];
  const cautions = last.cautions.map(({ patientText }) => sentence(patientText));
  return { title: words.title(dose), lines: [...plan, ...cautions, signed] };
};

const exerciseParts = ({ lines }: DocumentFacts, words: PatientWords): readonly DocumentPart[] => {
  const inForce = lines.filter(({ atEnd }) => atEnd);
  const doable = inForce.filter(({ last }) => last.dose.method !== 'occlusion');
  const title = 'Your exercises on the last day of care';
  return [
    ...(doable.length === 0 ? [{ title, lines: ['No exercise to do without the cuff was in force.'] }] : []),
    ...doable.map((item) => oneExercise(item, words)),
    ...(doable.length < inForce.length
      ? [
          {
            title: 'Work with the cuff or wrap',
            lines: ['It ended with your care and is not on this sheet.'],
            advice: ['Do not use the cuff or wrap before you have asked a clinician.'],
          },
        ]
      : []),
  ];
};

const valuesOf = (baseline: Baseline): readonly string[] => [
  baseline.usualPain === null
    ? 'No usual pain was set.'
    : baseline.usualPainTop === null
      ? `Your usual pain, 0 to 10: ${figure(baseline.usualPain)}.`
      : `Your usual pain, 0 to 10: ${figure(baseline.usualPain)}, up to ${figure(baseline.usualPainTop)}.`,
  `Your own ceiling for pain, 0 to 10: ${figure(baseline.acceptablePainLimit)}.`,
  `Your usual morning stiffness: ${figure(baseline.usualStiffnessMinutes)} minutes. Your usual swelling: ${baseline.usualSwelling}.`,
  `Set by ${baseline.setBy} on ${dayInWords(baseline.setOn)}.`,
];

const jointPart = (joint: Joint, facts: DocumentFacts): DocumentPart => {
  const baseline = facts.baselines.find((row) => row.joint === joint);
  const title = `Your ${jointInWords(joint)}`;
  if (!baseline)
    return {
      title,
      lines: ['No usual values were set for it.'],
      advice: [`Ask the clinic how to read it: ${facts.clinic.phone}.`],
    };
  return {
    title,
    lines: [
      ...valuesOf(baseline),
      ...(baseline.dueForReview ? ['Your mornings had lain well under these values.'] : []),
    ],
    advice: [
      ...(baseline.dueForReview ? ['Ask the clinic whether these values still fit.'] : []),
      `If pain goes over your ceiling, stop. Ring the clinic before the next session: ${facts.clinic.phone}.`,
      `If a morning is worse than your usual values, do not do more. Ring the clinic if it is so again the next morning.`,
    ],
  };
};

const signParts = ({ clinic }: DocumentFacts, words: PatientWords): readonly DocumentPart[] => {
  const list = (flags: readonly RedFlag[]) => flags.map((flag) => sentence(words.flag(flag)));
  return [
    { title: `Stop and ring ${clinic.emergencyNumber} at once`, lines: list(redFlagClasses.emergency) },
    {
      title: `Stop and speak with a clinician the same day: ${clinic.phone}`,
      lines: list(redFlagClasses['same-day']),
      advice: [`If you reach nobody there, do not wait: ring ${clinic.emergencyNumber}.`],
    },
    { title: `Stop and ring the clinic: ${clinic.phone}`, lines: list(redFlagClasses.routine) },
  ];
};

const supervisedPart = ({ clinic, end, careGoesOn }: DocumentFacts): DocumentPart => ({
  title: 'Who is there for you',
  lines: [
    `This care ended on ${dayInWords(end.on)}.`,
    ...(careGoesOn
      ? [
          `You have other care at ${clinic.name} that goes on.`,
          sentence(`Times at which the clinic looks at what you send: ${clinic.monitoringHours}`),
          'Nobody looks at other times.',
        ]
      : ['Nobody watches what you send any more, and nothing changes your exercises for you.']),
    `${clinic.name}: ${clinic.phone}. Emergency: ${clinic.emergencyNumber}.`,
    'This sheet repeats what is in your record. What your clinician tells you stands above it.',
  ],
});

export const selfManagementOf = (facts: DocumentFacts, words: PatientWords): CareDocument => ({
  ...headOf(facts),
  title: 'What to do on your own',
  parts: [
    ...exerciseParts(facts, words),
    ...facts.episode.followedJoints.map((joint) => jointPart(joint, facts)),
    ...signParts(facts, words),
    supervisedPart(facts),
  ],
});
