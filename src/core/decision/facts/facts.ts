/** The facts the engine decides on, for one joint at one evaluation. Every field is present. */
import type { Effusion, NotApplicable, StopReason, Swelling } from '#core/record/record.ts';

export const redFlagClasses = {
  emergency: [
    'chest-pain',
    'breathlessness',
    'fainting',
    'severe-headache-or-vision',
    'saddle-or-bladder-change',
    'face-speech-or-one-sided-weakness',
  ],
  'same-day': [
    'hot-swollen-joint',
    'calf-pain-swelling',
    'dark-urine',
    'unexplained-fever',
    'cannot-bear-weight-or-deformity',
    'persistent-limb-change-after-release',
    'neck-pain-with-limb-symptoms',
    'new-weakness',
    'fall-with-injury',
  ],
  routine: ['locked-joint'],
} as const;
export type RedFlag = (typeof redFlagClasses)[keyof typeof redFlagClasses][number];
/** Asked only of people who have a cuff prescribed: nobody else can have the sign. */
export const redFlagOfCuff: RedFlag = 'persistent-limb-change-after-release';
export const redFlags: readonly RedFlag[] = Object.values(redFlagClasses).flat();

export interface Facts {
  readonly painBefore: number | null;
  readonly painDuring: number | null;
  readonly painAfter: number | null;
  readonly painTwoHours: number | null | NotApplicable;
  readonly painNextMorning: number | null;
  /**
   * First morning answered after the one that was left out: null = none answered; "not-applicable" = the next
   * morning was answered, or the clinic lets no later morning speak for it.
   */
  readonly painLaterMorning: number | null | NotApplicable;
  readonly usualPain: number | null;
  readonly usualPainTop: number | null;
  readonly painCeiling: number;
  readonly morningPainMean7: number | null;
  readonly previousMorningOverTop: boolean;
  readonly previousPeakEight: boolean;
  /** One of the two answered mornings before the session, at most a week back, lay 2 or more over the top of usual pain. */
  readonly twoOverBefore: boolean;
  /** Answered mornings in a row, up to the newest, over the top of usual pain. */
  readonly morningsOverTop: number;
  /** Usual pain was told at a first visit and no diary has shown it yet. */
  readonly usualPainProvisional: boolean;
  /** Usual pain now over the one this plan began with; null without a usual pain. */
  readonly usualPainRise: number | null;
  /** Asked against usual since format 4 of the entries: no more, a little, clearly or far more than usual. */
  readonly swelling: Swelling | null | NotApplicable;
  /** "none" where the swelling was asked against usual. */
  readonly usualSwelling: 'none' | 'slight';
  readonly effusion: Effusion | NotApplicable;
  readonly effusionRun: number;
  readonly usualEffusion: 'zero' | 'trace' | '1+';
  readonly stiffnessMinutes: number | null | NotApplicable;
  readonly usualStiffnessMinutes: number;
  readonly flareDays: number;
  readonly inflammatoryArthritis: boolean;
  readonly otherJointsFlared: number;
  readonly fatigueRise: number | null;
  readonly redFlags: readonly RedFlag[] | null;
  readonly repetitionsDonePercent: number | null;
  readonly stopReason: StopReason;
  readonly reserveShortfall: number;
  readonly prescribedReserve: number;
  readonly sessionsOnTarget: number;
  readonly missedSessions14: number;
  readonly plannedSessions14: number;
  readonly gapDays: number;
  readonly extraPainRelief: boolean;
  readonly treatmentChangeDays: number | null;
  readonly overdone: boolean;
  readonly gaveWay: boolean;
  readonly baselineAgeDays: number;
  readonly baselineLatched: boolean;
  readonly symptomSignal: boolean;
}

/** Facts that version 2 of the rules brought; decisions stored before it have none of them. */
export const factsSinceVersion2 = {
  painLaterMorning: 'not-applicable',
  twoOverBefore: false,
  morningsOverTop: 0,
  usualPainProvisional: false,
  usualPainRise: null,
} as const satisfies Partial<Facts>;
type FactSinceVersion2 = keyof typeof factsSinceVersion2;

/** Facts as stored or handed over, of which those of version 2 may be absent; none of them is read as a symptom. */
export type FactsOfAnyVersion = Omit<Facts, FactSinceVersion2> & Partial<Pick<Facts, FactSinceVersion2>>;

const sinceVersion2 = Object.keys(factsSinceVersion2) as readonly FactSinceVersion2[];

const isWhole = (facts: FactsOfAnyVersion): facts is Facts =>
  sinceVersion2.every((name) => facts[name] !== undefined);

/** Whole facts are handed back as they are: a copy of all of them costs more than a decision. */
export const wholeFacts = (facts: FactsOfAnyVersion): Facts =>
  isWhole(facts) ? facts : { ...factsSinceVersion2, ...facts };
