/** The engine on the calculation desk: one set of facts in, the four answers out, choices at their defaults. */
import { type AnyCalculation, calculation } from '../calculations/calculation.ts';
import { answer, type Refusal } from '../outcome.ts';
import type { Citation } from '../sources/citation.ts';
import { decide } from './decide.ts';
import { factFields } from './facts/fact-fields.ts';
import { type Facts, factsSinceVersion2, wholeFacts } from './facts/facts.ts';
import { rulesOf } from './rules/table.ts';
import { engineDefaults, engineVersions, newestVersion, underVersion } from './settings.ts';

/** Each source once, in the order in which the table first leans on it. */
const citations: readonly Citation[] = [
  ...new Map(
    rulesOf(newestVersion).flatMap((rule) =>
      rule.citations.map((citation) => [citation.source, citation] as const),
    ),
  ).values(),
];

const exampleFacts: Facts = {
  ...factsSinceVersion2,
  usualPainRise: 0,
  painBefore: 1,
  painDuring: 2,
  painAfter: 2,
  painTwoHours: 1,
  painNextMorning: 1,
  usualPain: 1,
  usualPainTop: 1,
  painCeiling: 5,
  morningPainMean7: 1,
  previousMorningOverTop: false,
  previousPeakEight: false,
  swelling: 'none',
  usualSwelling: 'none',
  effusion: 'zero',
  effusionRun: 0,
  usualEffusion: 'zero',
  stiffnessMinutes: 10,
  usualStiffnessMinutes: 10,
  flareDays: 0,
  inflammatoryArthritis: false,
  otherJointsFlared: 0,
  fatigueRise: 0,
  redFlags: [],
  repetitionsDonePercent: 100,
  stopReason: 'none',
  reserveShortfall: 0,
  prescribedReserve: 2,
  sessionsOnTarget: 2,
  missedSessions14: 0,
  plannedSessions14: 6,
  gapDays: 2,
  extraPainRelief: false,
  treatmentChangeDays: null,
  overdone: false,
  gaveWay: false,
  baselineAgeDays: 10,
  baselineLatched: false,
  symptomSignal: false,
};

const bandWithin = (facts: Pick<Facts, 'usualPain' | 'usualPainTop'>): readonly Refusal[] => {
  const { usualPain, usualPainTop } = facts;
  if (usualPain === null || usualPainTop === null) return [];
  if (usualPainTop >= usualPain && usualPainTop <= usualPain + 2) return [];
  return [
    {
      field: 'input.facts.usualPainTop',
      code: 'inconsistent',
      reason: `The top of usual pain lies from usual pain to usual pain + 2 (${usualPain} to ${usualPain + 2}).`,
    },
  ];
};

const decideRow = calculation({
  id: 'decide',
  title: 'Decision on the prescription, for one joint',
  area: 'engine',
  input: [
    { name: 'facts', kind: 'record', fields: factFields },
    {
      name: 'engineVersion',
      kind: 'integer',
      unit: '1',
      min: engineVersions[0],
      max: newestVersion,
      optional: true,
      about: `Version of the rules; ${newestVersion} where it is not given`,
    },
  ],
  result: [
    { name: 'decision', unit: '', about: 'pause, ease-back, hold or progress' },
    { name: 'largestStep', unit: '', about: 'repetitions or load; null unless progress' },
    { name: 'today', unit: '', about: 'none, rest-this-joint, bad-day or as-planned' },
    { name: 'contact', unit: '', about: 'emergency, same-day, routine or none' },
    { name: 'reasons', unit: '', about: 'every rule that fired, in the order of the table' },
  ],
  citations,
  consistent: ({ facts }) => bandWithin(facts),
  calculate: ({ facts, engineVersion = newestVersion }) => {
    const version = engineVersions.find((one) => one === engineVersion) ?? newestVersion;
    const absent = version >= 2 ? Object.keys(factsSinceVersion2).filter((name) => !(name in facts)) : [];
    return answer(decide(wholeFacts(facts), underVersion(engineDefaults, version)), [
      {
        code: 'clinician-decides',
        text: `Rules version ${version}, clinic choices at their defaults. The engine advises; a licensed clinician and local rules decide.`,
      },
      ...(absent.length === 0
        ? []
        : [
            {
              code: 'facts-not-given',
              text: `Not given, so no rule could speak of them: ${absent.join(', ')}.`,
            },
          ]),
    ]);
  },
  example: { facts: exampleFacts, engineVersion: newestVersion },
});

export const engineRows: readonly AnyCalculation[] = [decideRow];
