/** Pain at the top of the scale, far over usual, or severe twice running: no question of the load any more. */
import type { Facts } from '../../facts/facts.ts';
import type { EngineSettingValues } from '../../settings.ts';
import { type Derived, type Rule, reaches } from '../rule.ts';

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

export const p1x = {
  id: 'P1x',
  title: 'Severe pain far over usual, or twice running',
  since: 1,
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
  upTo: {
    1: {
      condition: (facts, derived, settings) =>
        farOverUsual(facts, derived, settings, [facts.painNextMorning]),
      observes: ['peak', 'painNextMorning', 'previousPeakEight', 'usualPain'],
      threshold: (settings) => farOverUsualInWords('next morning', settings),
    },
  },
} as const satisfies Rule;
