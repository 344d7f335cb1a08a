/**
 * The figures of the invented joint. Each says what it stands on: "abstract" and "table" were read there,
 * "memory" was not seen again, "computed" follows from read figures, "invented" stands on nothing but
 * the need for a value. Nobody's joint was measured: what an arm does here is a property of these figures.
 */

type Basis = 'abstract' | 'table' | 'memory' | 'computed' | 'invented';

export interface ModelSetting {
  readonly value: number;
  readonly unit: string;
  readonly basis: Basis;
  /** The study, or why this value was chosen. */
  readonly from: string;
}

const invented = (value: number, unit: string, from: string): ModelSetting => ({
  value,
  unit,
  basis: 'invented',
  from,
});

export const jointSettings = {
  diaryNoise: {
    value: 0.4,
    unit: '{score}',
    basis: 'abstract',
    from: 'Alghadir 2018, 121 with knee osteoarthritis: one rating against itself after 24 h strays by 0.48',
  },
  sessionRise: {
    value: 0.5,
    unit: '{score}',
    basis: 'abstract',
    from: 'Sandal 2016: pain rises within a session, and less over sixteen sessions',
  },
  sessionRiseFadesOver: invented(24, '{sessions}', 'The fall of that rise was read, its pace was not'),
  riseNearTolerance: invented(0.85, '1', 'Share of tolerance from which a session itself hurts more'),
  riseOverIt: invented(3, '{score}', 'Points for 100 % more than that share'),
  relief: {
    value: 0.8,
    unit: '{score}',
    basis: 'abstract',
    from: 'Sandal 2016 and Bryld 2025: 1.0 less in 12 to 16 weeks, some of it without any exercise',
  },
  reliefOver: {
    value: 10,
    unit: '{sessions}',
    basis: 'computed',
    from: 'Sandal 2016: 0.04 points a session over sixteen sessions; two thirds of the relief after ten',
  },
  overloadPain: invented(
    5,
    '{score}',
    'Points for 100 % over tolerance; no published dose-response was found',
  ),
  sameEvening: invented(0.35, '1', 'Share of them felt in the evening of the session'),
  nextMorning: invented(0.65, '1', 'Share of them that comes overnight'),
  clearsADay: invented(0.45, '1', 'Share of irritation gone by the next day'),
  flareFromIrritation: invented(
    0.035,
    '/d',
    'Flares a day for each point of irritation, beside those that come by themselves',
  ),
  toleranceInFlare: invented(0.8, '1', 'Share of tolerance left in a flare'),
  toleranceGain: invented(0.006, '1', 'Rise of tolerance by one session it took'),
  toleranceGainFrom: invented(0.6, '1', 'Share of tolerance under which a session raises it no further'),
  toleranceMost: invented(1.5, '1', 'Highest tolerance as a share of the first'),
  toleranceLostToCreep: invented(
    0.02,
    '1',
    'Share of tolerance that a point of creeping disease takes with it',
  ),
  easierInFlare: invented(
    0.55,
    '1',
    'Chance that somebody in a flare takes the easier session without being told',
  ),
  overdoneByASet: invented(0.5, '1', 'Share of overdone sessions with a set more; the others go to failure'),
  overdoneAfterTalk: invented(0.5, '1', 'Share of overdoing left once a clinician has spoken of it'),
  usualStiffness: invented(10, 'min', 'Morning stiffness outside flares'),
  flareStiffness: invented(25, 'min', 'Morning stiffness in a flare'),
  strengthASession: {
    value: 0.0082,
    unit: '1',
    basis: 'computed',
    from: 'Trials of 30 to 40 % of the maximum: 15 to 25 % in 12 weeks; a session at a time, before it levels off',
  },
  strengthMost: invented(0.35, '1', 'Gain toward which strength levels off'),
  fullStimulusReserve: invented(2, '{rep}', 'Repetitions in reserve up to which a set counts in full'),
  noStimulusReserve: invented(12, '{rep}', 'Repetitions in reserve from which only the least is left'),
  leastStimulus: invented(
    0.12,
    '1',
    'Stimulus of work far from failure; Bergamasco 2022 saw hardly a difference',
  ),
  mostStimulus: invented(1.15, '1', 'More sets add no more than this'),
  repetitionsToFailure: invented(
    17,
    '{rep}',
    'At the first load, so that the first dose leaves two in reserve',
  ),
  reserveMisjudged: {
    value: 0.7,
    unit: '{rep}',
    basis: 'memory',
    from: 'People misjudge repetitions in reserve by about one',
  },
  fieldLeftOut: {
    value: 0.015,
    unit: '1',
    basis: 'computed',
    from: 'Ono 2019: 85 % of questions answered, most of the rest left out whole',
  },
} as const satisfies Readonly<Record<string, ModelSetting>>;

/** The bare figures, for working with. */
export const figures = Object.fromEntries(
  Object.entries(jointSettings).map(([name, setting]) => [name, setting.value]),
) as { readonly [Name in keyof typeof jointSettings]: number };
