/**
 * Figures of the second model of people. "row n" is a published figure, listed with its source in
 * tests/simulation/second-model; everything else is invented, and says so.
 */

/** Ratings and scatter, points of 0–10. */
export const ratings = {
  /** row 10: one rating against itself after a day, SEM 0.48, the rounding to whole numbers (1/√12) taken out. */
  diaryNoise: 0.38,
  /** row 4 (from memory there): likeness of a day to the day before, 0.3–0.5. */
  likeness: 0.4,
  /** row 2 (from memory there): 1.2–1.4 within a person, with flares and the noise of the diary in it. */
  scatter: 1.05,
  /** rows 1, 7: people differ reliably in their scatter. By how much is invented (log-SD). */
  scatterDiffers: 0.25,
  /** row 5: more scatter where the level is higher. Share for each point over 3: invented. */
  scatterByLevel: 0.06,
  /** row 3: half of the series trend. A slow wave; height and length in days invented. */
  wave: 0.3,
  waveDays: [40, 90],
  /** Evening against morning of one day: invented. */
  eveningScatter: 0.5,
} as const;

/** Flares by themselves. */
export const flares = {
  /** rows 11, 12: 0.059 and 0.076–0.078 a person-week; their middle, over the weeks not already in one. */
  perWeek: 0.072,
  /** row 11: median 5 days, quartiles 3 and 8; the log-SD from the quartiles, ln(8/3)/1.349. */
  medianDays: 5,
  logSpreadDays: 0.727,
  /** row 12: 2 or more over usual for 2 days or more. The mean above these 2 is invented. */
  leastDays: 2,
  leastHeight: 2,
  meanOverLeast: 1,
  /** row 12: pain falls within 2 days, then slowly. The shares are invented. */
  fullDays: 2,
  laterShare: 0.7,
  lastShare: 0.4,
  /** Between rows 14 (0.07 a week, computed from "54–57 % more than one in 6 months") and 13 (2–3 times as many). */
  inflammatoryPerWeek: 0.1,
  /** row 14: under a week 57 %, one to two weeks 13 %, the rest longer. The longest, 42 days, is invented. */
  inflammatoryDays: [
    { share: 0.57, from: 1, to: 6 },
    { share: 0.13, from: 7, to: 13 },
    { share: 0.3, from: 14, to: 42 },
  ],
  /** rows 14, 16: higher than in osteoarthritis; by how much is invented. */
  inflammatoryMeanOverLeast: 1.5,
  /** row 12: swelling on 50 against 35 % of days; the difference is what "more than usual" can show. */
  swelling: 0.15,
  swellingElse: 0.02,
  /** Share of its first days on which a person calls a flare one: invented (row 9: days are called unlike they feel). */
  noticedFirstDay: 0.6,
  noticed: 0.9,
  stiffnessMinutes: 15,
  stiffnessInFlare: 40,
} as const;

/** What load does to the joint. All invented: no published figure says it (the note under row 28). */
export const tissue = {
  /** The joint counts a kilogram more than a repetition. */
  loadPower: 1.5,
  /** Load equal to the capacity brings about a point at its height; it grows with the cube. */
  power: 3,
  /** The most one session can bring. */
  most: 6,
  /** Capacity of a usual joint as a multiple of the first session. */
  capacity: 1.45,
  capacityDiffers: 0.2,
  /** Of what is on its way, the share that arrives each night, and of what has come the share that stays. */
  arrives: 0.7,
  stays: 0.55,
  /** Felt in the evening of the session already. */
  sameEvening: 0.25,
  /** Capacity gained in a session done at capacity (log), its highest; fades back with these days. rows 20, 21: loads up by 67–166 % in 10 weeks were borne. */
  gain: 0.03,
  gainFadesDays: 60,
  /** Points of soreness and of flare make the joint easier to irritate (log of capacity for each point, up to 4). */
  irritable: 0.1,
  irritableTo: 4,
  /** Strain gathers over about this many days and makes a flare more likely with its square, a day. */
  strainDays: 12,
  flareByStrain: 0.0008,
  /** Pain in a session over the evening's, at capacity. row 19: about half a point with the first loads, less later. */
  during: 0.7,
  /** row 20: after a session pain is a little lower than before. */
  after: -0.15,
  /** row 19, 20, 28: about 1 point less after 8–12 weeks of sessions borne; row 24: hardly by dose. Days of habit invented. */
  relief: 2.1,
  reliefSessions: 14,
  reliefFadesDays: 40,
  /** row 10: less than this cannot be told from nothing. */
  discernible: 0.48,
} as const;

/** Strength. */
export const muscle = {
  /** rows 29–31: 21–26 % in 12 weeks of hard work, in 36 sessions. */
  gain: 0.0125,
  /** row 31: a third fewer repetitions hardly matter; rows 29, 33: light loads do. */
  halfEffort: 0.8,
  /** No gain beyond this share: invented. */
  ceiling: 0.6,
  trainabilityDiffers: 0.3,
  /** Lost a day without work: invented. */
  fades: 0.0004,
  /** Repetitions to failure = this × (1RM / load − 1): Epley 1985, from memory. */
  epley: 30,
  /** Left in reserve with the first dose, and less for each further set: invented. */
  firstReserve: [1, 6],
  setFatigue: 0.06,
  reserveMisjudged: 1.2,
} as const;

/** What people do and leave out. */
export const conduct = {
  /** row 36: 85 % answered, whatever the pain. */
  morningsMissing: 0.15,
  /** row 38: 58 of 90 days usable. */
  morningsMissingForgetful: 0.36,
  /** Spread between people, and more likely after a day left out: invented (row 39: some miss far more). */
  missingDiffers: 0.6,
  missingAgain: 0.18,
  fieldMissing: 0.02,
  /** row 40: 90 % of sessions in weeks 0–2, 65 % in weeks 10–12, whatever the pain. */
  sessionsMissed: 0.1,
  sessionsMissedLater: 0.35,
  laterFromDay: 70,
  sessionsMissedForgetful: 0.1,
  /** Pain this much over usual makes some take the easier session of their own accord: invented. */
  ownEasierFrom: 2,
  ownEasier: 0.15,
  overdoes: 0.05,
  overdoesEager: 0.35,
  /** More repetitions in each set, or one more set: invented. */
  extraRepetitions: 0.25,
  saysExtra: 0.7,
  afterTalk: 1 / 3,
} as const;
