/**
 * How much pain is too much, at any time of the session. For joints followed with a whole 0–10 score.
 * The zones come from tendon and knee pain and were carried to osteoarthritis of hip and knee; they
 * do not say where pain comes from, and no source here speaks of a person whose usual pain is over 5.
 */
import type { Facts } from '../facts/facts.ts';
import type { EngineSettingValues } from '../settings.ts';
import { type Derived, type Rule, reaches } from './rule.ts';

/** Knee osteoarthritis trial: the session is swapped from this score on. */
const swapScore = 5;
/** Load is raised only below this score. */
const raiseBelow = 5;
/** Rise over the usual band that exceeds measurement error and matters to people. */
const importantRise = 2;

const severe = { decision: 'ease-back', today: 'bad-day', contact: 'same-day' } as const;

const farOverUsual = (
  facts: Facts,
  { peak, usual }: Derived,
  settings: EngineSettingValues,
  mornings: readonly (number | null | 'not-applicable')[],
): boolean =>
  peak !== null &&
  (peak >= settings['pause-pain'] ||
    (peak >= settings['pause-rise-pain'] && peak - usual >= settings['pause-rise']) ||
    mornings.some((pain) =>
      reaches(pain, Math.max(settings['pause-morning-pain'], usual + settings['pause-repeat-rise'])),
    ) ||
    (peak >= settings['severe-pain'] &&
      facts.previousPeakEight &&
      peak - usual >= settings['pause-repeat-rise']));

const farOverUsualInWords = (morning: string, settings: EngineSettingValues): string =>
  `highest pain ${settings['pause-pain']}; or ${settings['pause-rise-pain']} or more and ${settings['pause-rise']} over usual; ` +
  `or ${morning} ${settings['pause-morning-pain']} or more and ${settings['pause-repeat-rise']} over usual; ` +
  `or ${settings['severe-pain']} or more twice running and ${settings['pause-repeat-rise']} over usual`;

export const painRules = [
  {
    id: 'P1',
    title: 'Severe pain',
    effect: severe,
    effectFor: (facts, { peak, usual }, settings) =>
      facts.usualPain !== null && peak !== null && peak - usual < settings['urgent-rise']
        ? { ...severe, contact: 'routine' }
        : severe,
    condition: (_facts, { peak }, settings) => reaches(peak, settings['severe-pain']),
    observes: ['peak', 'usualPain'],
    threshold: (settings) =>
      `highest pain ${settings['severe-pain']} or more; the call can wait for the week under ${settings['urgent-rise']} over a known usual pain`,
    restsOn: 'clinic-choice',
    citations: [
      { source: 'thieme-2021', locator: 'grouping of scores, 8–10', mark: 'seen' },
      {
        source: 'alghadir-2018',
        locator: 'detectable change 1.33',
        mark: 'seen',
        remark: 'On whole scores a rise of 2 exceeds the error in knee osteoarthritis.',
      },
    ],
    settings: ['severe-pain', 'urgent-rise'],
    version1: {
      effectFor: undefined,
      observes: ['peak'],
      threshold: (settings) => `highest pain ${settings['severe-pain']} or more`,
      settings: ['severe-pain'],
    },
  },
  {
    id: 'P1x',
    title: 'Severe pain far over usual, or twice running',
    effect: { decision: 'pause', today: 'none', contact: 'same-day' },
    condition: (facts, derived, settings) =>
      farOverUsual(facts, derived, settings, [facts.painNextMorning, facts.painLaterMorning]),
    observes: ['peak', 'painNextMorning', 'painLaterMorning', 'previousPeakEight', 'usualPain'],
    threshold: (settings) => farOverUsualInWords('next or later morning', settings),
    restsOn: 'clinic-choice',
    citations: [],
    settings: [
      'pause-pain',
      'pause-rise-pain',
      'pause-rise',
      'pause-morning-pain',
      'pause-repeat-rise',
      'severe-pain',
    ],
    version1: {
      condition: (facts, derived, settings) =>
        farOverUsual(facts, derived, settings, [facts.painNextMorning]),
      observes: ['peak', 'painNextMorning', 'previousPeakEight', 'usualPain'],
      threshold: (settings) => farOverUsualInWords('next morning', settings),
    },
  },
  {
    id: 'P2',
    title: 'Pain over the personal ceiling',
    effect: { decision: 'ease-back', today: 'bad-day' },
    condition: (facts, { peak }) => peak !== null && peak > facts.painCeiling,
    observes: ['peak', 'painCeiling'],
    threshold: () => 'highest pain over the personal ceiling, 5 unless a clinician set 6 or 7',
    restsOn: 'source',
    citations: [
      {
        source: 'ageberg-2010',
        locator: 'methods, abstract: 0–2, over 2 to 5, over 5',
        mark: 'seen',
        remark: 'Over 5 counted as high risk in 76 people with severe hip or knee osteoarthritis.',
      },
    ],
    settings: [],
  },
  {
    id: 'P3',
    title: 'Pain before the session',
    effect: { decision: 'hold', today: 'bad-day' },
    condition: (facts, { top }) => reaches(facts.painBefore, Math.max(swapScore, top + 1)),
    observes: ['painBefore', 'usualPainTop'],
    threshold: () => 'before the session 5 or more and at least 1 over the top of usual pain',
    restsOn: 'source',
    citations: [
      {
        source: 'knee-swap-trial',
        locator: 'abstract: session swapped at 5 or more',
        mark: 'seen',
        remark: 'The trial swapped the session; it did not change the plan.',
      },
    ],
    settings: [],
  },
  {
    id: 'P3b',
    title: 'More pain than usual before the session',
    effect: { decision: 'hold' },
    silentWithoutUsualSince: 2,
    condition: (facts, { top }) => reaches(facts.painBefore, top + importantRise),
    observes: ['painBefore', 'usualPainTop'],
    threshold: () => 'before the session 2 or more over the top of usual pain',
    restsOn: 'source',
    citations: [
      {
        source: 'alghadir-2018',
        locator: 'detectable change 1.33',
        mark: 'seen',
        remark: 'On whole scores a rise of 2 exceeds the error in knee osteoarthritis.',
      },
      { source: 'farrar-2001', locator: 'important change about 2 points', mark: 'seen' },
    ],
    settings: [],
  },
  {
    id: 'P4',
    title: 'Pain during or after the session',
    effect: { decision: 'hold' },
    condition: (facts, { top }) => {
      const height = Math.max(raiseBelow, top + 1);
      return reaches(facts.painDuring, height) || reaches(facts.painAfter, height);
    },
    observes: ['painDuring', 'painAfter', 'usualPainTop'],
    threshold: () => 'during or after 5 or more and at least 1 over the top of usual pain',
    restsOn: 'source',
    citations: [
      {
        source: 'perry-2005',
        locator: 'load raised when pain is under 5 and the repetitions are done',
        mark: 'second-hand',
      },
    ],
    settings: [],
  },
] as const satisfies readonly Rule[];
