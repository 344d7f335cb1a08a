/** Things beside the load that blunt or bend the scores. They hold; they do not judge the load. Clinic choices. */
import type { Rule } from './rule.ts';

export const disturbanceRules = [
  {
    id: 'D1',
    title: 'Extra pain relief',
    effect: { decision: 'hold' },
    condition: (facts) => facts.extraPainRelief,
    observes: ['extraPainRelief'],
    threshold: () => 'extra pain relief taken, or not said',
    restsOn: 'clinic-choice',
    citations: [],
    settings: [],
  },
  {
    id: 'D2',
    title: 'Treatment changed lately',
    effect: { decision: 'hold', contact: 'routine' },
    condition: (facts, _derived, settings) =>
      facts.treatmentChangeDays !== null && facts.treatmentChangeDays <= settings['treatment-change-days'],
    observes: ['treatmentChangeDays'],
    threshold: (settings) =>
      `medicine change or joint injection within ${settings['treatment-change-days']} days`,
    restsOn: 'clinic-choice',
    citations: [],
    settings: ['treatment-change-days'],
  },
  {
    id: 'D3',
    title: 'More done than prescribed',
    effect: { decision: 'hold', contact: 'routine' },
    condition: (facts) => facts.overdone,
    observes: ['overdone'],
    threshold: (settings) =>
      `more than ${settings['overdone-percent']} % over the load, more than ${settings['overdone-repetitions']} % over the top of the band, or extra sets or sessions, or not said`,
    restsOn: 'clinic-choice',
    citations: [],
    settings: ['overdone-percent', 'overdone-repetitions'],
    version1: {
      threshold: (settings) =>
        `more than ${settings['overdone-percent']} % over the load, or extra sets or sessions, or not said`,
      settings: ['overdone-percent'],
    },
  },
  {
    id: 'D4',
    title: 'The joint gave way',
    effect: { decision: 'hold', contact: 'routine' },
    condition: (facts) => facts.gaveWay,
    observes: ['gaveWay'],
    threshold: () => 'the joint gave way, or not said',
    restsOn: 'clinic-choice',
    citations: [],
    settings: [],
  },
] as const satisfies readonly Rule[];
