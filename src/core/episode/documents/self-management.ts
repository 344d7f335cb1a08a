/**
 * The sheet for the patient at the end of care, or before it: what is in force, with its easier session, the own values
 * of each joint as a clinician set them, warning signs and whom to ring. Here it is parts in order, each
 * line by its key with what stands in it; the words are those of the language it is printed in.
 *
 * Work with a cuff is left out on purpose: its pressure and its screening need somebody who asks again.
 * That is a choice of this project. The sheet promises nothing. What is not on record but advice in the
 * clinic's name is kept apart from it, so that a clinician reads it before the sheet is handed over.
 */
import { type RedFlag, redFlagClasses, redFlagOfCuff } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline } from '#core/record/record.ts';
import { urgentNumberOf } from '../urgent-number.ts';
import type { DocumentFacts, DocumentItem } from './document-facts.ts';
import type { SelfManagement, SheetLine, SheetPart } from './sheet-line.ts';

/** At most one decimal; never more precise than what was logged. */
const rounded = (value: number): number => Math.round(value * 10) / 10;

const part = (
  title: SheetLine,
  lines: readonly SheetLine[],
  advice: readonly SheetLine[] = [],
): SheetPart => ({ title, lines, advice });

const suspendedNow = {
  'everything-rests': 'everything-rests-now',
  'joint-rests': 'joint-rests-now',
  'easier-only': 'easier-only-now',
} as const;

const oneExercise = ({ last, suspended }: DocumentItem, isOver: boolean): SheetPart => {
  const { dose, badDay } = last;
  const title = { key: 'exercise', exerciseId: dose.exerciseId } as const;
  const signed = { key: 'signed', name: last.signedName, day: last.signedOn } as const;
  const why = suspended && { key: isOver ? suspended : suspendedNow[suspended] };
  if (why && suspended !== 'easier-only') return part(title, [why, signed], [{ key: 'ring-first' }]);
  const easier = { key: 'easier', dose: badDay } as const;
  const often = { key: 'weekly', count: dose.sessionsPerWeek } as const;
  const plan: readonly SheetLine[] =
    why === null ? [{ key: 'dose', dose }, often, easier] : [why, easier, often];
  const cautions = last.cautions.map((caution): SheetLine => ({ key: 'caution', caution }));
  return part(title, [...plan, ...cautions, signed]);
};

const exerciseParts = ({ lines, end }: DocumentFacts): readonly SheetPart[] => {
  const isOver = end !== null;
  const inForce = lines.filter(({ atEnd }) => atEnd);
  const doable = inForce.filter(({ last }) => last.dose.method !== 'occlusion');
  return [
    ...(doable.length === 0
      ? [
          part({ key: isOver ? 'exercises' : 'exercises-now' }, [
            { key: isOver ? 'none-without-cuff' : 'none-without-cuff-now' },
          ]),
        ]
      : []),
    ...doable.map((item) => oneExercise(item, isOver)),
    ...(doable.length < inForce.length
      ? [
          part(
            { key: 'cuff' },
            [{ key: isOver ? 'cuff-ended' : 'cuff-left-out' }],
            [{ key: isOver ? 'cuff-ask-first' : 'cuff-after-care' }],
          ),
        ]
      : []),
  ];
};

const usualPain = ({ usualPain: value, usualPainTop: top }: Baseline): SheetLine => {
  if (value === null) return { key: 'no-usual-pain' };
  return top === null
    ? { key: 'usual-pain', value: rounded(value) }
    : { key: 'usual-pain-span', value: rounded(value), top: rounded(top) };
};

const valuesOf = (baseline: Baseline): readonly SheetLine[] => [
  usualPain(baseline),
  { key: 'pain-limit', value: rounded(baseline.acceptablePainLimit) },
  {
    key: 'usual-morning',
    minutes: rounded(baseline.usualStiffnessMinutes),
    swelling: baseline.usualSwelling,
  },
  baseline.tightenedFrom === undefined
    ? { key: 'set-by', name: baseline.setBy, day: baseline.setOn }
    : { key: 'followed-mornings', day: baseline.setOn },
];

const jointPart = (joint: Joint, { baselines, clinic }: DocumentFacts): SheetPart => {
  const { phone } = clinic;
  const baseline = baselines.find((row) => row.joint === joint);
  const title = { key: 'joint', joint } as const;
  if (!baseline) return part(title, [{ key: 'no-usual-values' }], [{ key: 'ask-how-to-read', phone }]);
  const isTooHigh = baseline.dueForReview;
  return part(
    title,
    [...valuesOf(baseline), ...(isTooHigh ? [{ key: 'values-too-high' } as const] : [])],
    [
      ...(isTooHigh ? [{ key: 'ask-whether-values-fit' } as const] : []),
      { key: 'over-pain-limit', phone },
      { key: 'worse-morning' },
    ],
  );
};

const signParts = ({ clinic, lines }: DocumentFacts): readonly SheetPart[] => {
  const { phone, emergencyNumber: number } = clinic;
  const hasCuff = lines.some(({ atEnd, last }) => atEnd && last.dose.method === 'occlusion');
  const list = (flags: readonly RedFlag[]) =>
    flags
      .filter((flag) => hasCuff || flag !== redFlagOfCuff)
      .map((flag): SheetLine => ({ key: 'flag', flag }));
  return [
    part({ key: 'ring-emergency', number }, list(redFlagClasses.emergency)),
    part({ key: 'speak-same-day', phone }, list(redFlagClasses['same-day']), [
      { key: 'nobody-there', number: urgentNumberOf(clinic) },
    ]),
    part({ key: 'ring-clinic', phone }, list(redFlagClasses.routine)),
  ];
};

const supervisedPart = ({ clinic, end, careGoesOn }: DocumentFacts): SheetPart => {
  const { name, phone, emergencyNumber: number, monitoringHours: hours } = clinic;
  return part({ key: 'who-is-there' }, [
    end === null ? { key: 'care-goes-on' } : { key: 'care-ended', day: end.on },
    ...(end !== null && careGoesOn ? [{ key: 'other-care', clinic: name } as const] : []),
    ...(careGoesOn
      ? ([{ key: 'hours', hours }, { key: 'outside-hours' }] as const)
      : [{ key: 'nobody-reads' } as const]),
    { key: 'clinic', clinic: name, phone, number },
    { key: 'clinician-first' },
  ]);
};

/** null for those who were handed to others: they get the new clinic's word. */
export const selfManagementOf = (facts: DocumentFacts): SelfManagement | null => {
  const { clinic, patient, end, episode } = facts;
  if (end !== null && end.state !== 'discharged') return null;
  return {
    from: clinic.name,
    telephone: { key: 'telephone', phone: clinic.phone },
    about: { key: 'about', name: patient.name, day: patient.birthDay },
    title: { key: 'title' },
    parts: [
      ...exerciseParts(facts),
      ...episode.followedJoints.map((joint) => jointPart(joint, facts)),
      ...signParts(facts),
      supervisedPart(facts),
    ],
  };
};
